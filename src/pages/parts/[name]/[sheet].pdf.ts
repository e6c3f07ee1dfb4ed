import { readBinder } from "../../../site/binder/binder.ts";
import { glossaryTexts } from "../../../site/binder/explained.ts";
import { siteMark } from "../../../site/binder/siteMark.ts";
import { sourceIds } from "../../../site/binder/sourceIds.ts";
import { staticSheets } from "../../../site/pdf/staticSheets.ts";

export const getStaticPaths = async () => {
  const binder = readBinder();
  const known = await sourceIds();
  const glossary = await glossaryTexts();
  const mark = siteMark();
  return binder.parts.flatMap((one) =>
    staticSheets(one, binder, { known, glossary, mark }).map(({ file, bytes }) => ({
      params: { name: one.report.part.name, sheet: file.replace(/\.pdf$/, "") },
      props: { bytes },
    })),
  );
};

/** Part card or work sheet, to be printed without a script. */
export const GET = ({ props }: { props: { bytes: () => Uint8Array<ArrayBuffer> } }): Response =>
  new Response(props.bytes(), { headers: { "content-type": "application/pdf" } });

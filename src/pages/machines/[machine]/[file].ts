import { readBinder } from "../../../site/binder/binder.ts";
import { projectFonts } from "../../../site/binder/projectFiles.ts";
import { siteMark } from "../../../site/binder/siteMark.ts";
import { sourceIds } from "../../../site/binder/sourceIds.ts";
import { cardFiles } from "../../../site/machines/cardFiles.ts";
import { slugs } from "../../../site/machines/slugs.ts";
import { machineCardPdf } from "../../../site/pdf/machineCardPdf.ts";

export const getStaticPaths = async () => {
  const binder = readBinder();
  const { shop } = binder;
  if (!shop) return [];
  const around = { fonts: projectFonts(), known: await sourceIds(), mark: siteMark() };
  return slugs(shop.machines).flatMap((machine, index) =>
    cardFiles(machine, shop.units).map(({ file, paper }) => ({
      params: { machine, file },
      props: { bytes: () => machineCardPdf({ ...binder, shop }, index, { ...around, paper }) },
    })),
  );
};

/** A machine's card, to be printed without a script and hung beside the machine. */
export const GET = ({ props }: { props: { bytes: () => Uint8Array<ArrayBuffer> } }): Response =>
  new Response(props.bytes(), { headers: { "content-type": "application/pdf" } });

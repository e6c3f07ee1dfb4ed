import { partFiles, type PartFile } from "../../../output/partFiles.ts";
import { readBinder } from "../../../site/binder/binder.ts";

export const getStaticPaths = () =>
  readBinder().parts.flatMap(({ report }) =>
    partFiles(report).map((file) => ({
      params: { name: report.part.name, file: file.name },
      props: { file },
    })),
  );

/** A file for the cutting table or the marking bench. */
export const GET = ({ props }: { props: { file: PartFile } }): Response =>
  new Response(props.file.print(), { headers: { "content-type": props.file.type } });

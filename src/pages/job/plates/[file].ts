import { allPlateFiles } from "../../../output/plateFiles.ts";
import type { PartFile } from "../../../output/partFiles.ts";
import { readBinder } from "../../../site/binder/binder.ts";
import { layJob } from "../../../site/job/layJob.ts";
import { unitsOf } from "../../../job/unitsOf.ts";

export const getStaticPaths = () => {
  const binder = readBinder();
  const sheets = layJob(binder).flatMap(({ plates }) => plates.map(({ sheet }) => sheet));
  return allPlateFiles(sheets, unitsOf(binder)).map(({ file }) => ({
    params: { file: file.name },
    props: { file },
  }));
};

/** A file of a plate for the cutting table, or the list of them all. */
export const GET = ({ props }: { props: { file: PartFile } }): Response =>
  new Response(props.file.print(), { headers: { "content-type": props.file.type } });

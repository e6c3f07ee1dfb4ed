import { readBinder } from "../../site/binder/binder.ts";
import { archiveBytes, archiveOf } from "../../site/job/cuttingFiles.ts";

export const getStaticPaths = () => [{ params: { archive: archiveOf(readBinder()) } }];

/** All cutting files of the job, packed. */
export const GET = (): Response =>
  new Response(archiveBytes(readBinder()), { headers: { "content-type": "application/zip" } });

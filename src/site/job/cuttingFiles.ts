import { jobFolder } from "../../job/jobFiles.ts";
import { archiveName } from "../../job/jobName.ts";
import { type Binder } from "../binder/binder.ts";
import { zipTexts } from "../bits/zip.ts";
import { layJob } from "./layJob.ts";

const titleOf = ({ job, folder }: Binder): string => job?.title ?? folder;

/** The archive of all cutting files of the binder's job. */
export const archiveOf = (binder: Binder): string => archiveName(titleOf(binder));

export const archiveBytes = (binder: Binder): Uint8Array<ArrayBuffer> =>
  zipTexts(jobFolder({ title: titleOf(binder), reference: binder.job?.reference }, binder, layJob(binder)));

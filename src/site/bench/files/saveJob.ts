import type { Tables } from "../../../input/context.ts";
import { jobSlug } from "../../../job/jobName.ts";
import type { Bench } from "../bench.svelte.ts";
import type { NamedTyped } from "../asTyped.ts";
import { readTypedPart } from "../readTyped.ts";
import type { Tray } from "../tray/tray.svelte.ts";
import { saveFile } from "./saveFile.ts";
import { partCount, type Told } from "./told.ts";
import { jobFolder, zipJob } from "./zipJob.ts";

/** The tray as a job's folder, packed; what would stop a binder is named. */
export function saveJob(bench: Bench, tray: Tray, tables: Tables): Told {
  const title = titleOf(tray.job);
  const shop = bench.shop.typed;
  const bytes = zipJob({ job: { ...tray.job, title }, shop, parts: tray.parts });
  const file = `${jobSlug(title)}.zip`;
  saveFile(file, bytes, "application/zip");
  const bad = tray.parts.filter(({ part }) => readTypedPart(part, tables).kind === "problems");
  const stops = [
    ...bad.map(({ name }) => `parts/${name}.yaml`),
    ...(bench.shop.problems.length > 0 ? ["shop.yaml"] : []),
  ];
  return {
    words:
      stops.length === 0
        ? `${file} went to the browser's downloads: ${partCount(tray.parts)}${shop ? " and the shop file" : ""}. Unpack it, and a binder is built from the folder ${jobFolder({ title })} in it.`
        : `${file} went to the browser's downloads. No binder is built from it until these files are put right:`,
    lines: stops,
    isWrong: stops.length > 0,
  };
}

/** What the job of the tray is called. */
export function titleOf({ title }: NamedTyped["part"]): string {
  return (typeof title === "string" ? title.trim() : "") || "Job";
}

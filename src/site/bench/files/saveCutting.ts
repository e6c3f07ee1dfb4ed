import type { Tables } from "../../../input/context.ts";
import type { JobPart } from "../../../job/job.ts";
import { notHere } from "../../../job/notHere.ts";
import { jobFolder } from "../../../job/jobFiles.ts";
import { archiveName } from "../../../job/jobName.ts";
import { platesOf } from "../../../job/plates.ts";
import { totalUse } from "../../../job/plateUse.ts";
import { zipTexts } from "../../bits/zip.ts";
import type { Bench } from "../bench.svelte.ts";
import type { Tray } from "../tray/tray.svelte.ts";
import { saveFile } from "./saveFile.ts";
import { titleOf } from "./saveJob.ts";
import { partCount, type Told } from "./told.ts";
import { trayPart } from "./trayPart.ts";

/** As long as the build searches, so that a job gives the same plates here as there. */
const EFFORT = 1;

/** Lets the page show what was said so far. */
const shown = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/**
 * The cutting files of all parts on the tray, packed as the build packs those of a job. All or nothing: a part that
 * nobody misses is found missing when the rest has been cut.
 *
 * @param say tells how far it has come
 */
export async function saveCutting(
  { bench, tray, tables }: { bench: Bench; tray: Tray; tables: Tables },
  say: (words: string) => void,
): Promise<Told> {
  if (bench.shop.problems.length > 0)
    return {
      words: "No cutting files were made: something is wrong in the shop file. Put it right first.",
      isWrong: true,
    };
  const shop = bench.shop.now;
  const parts: JobPart[] = [];
  const bad: string[] = [];
  const untried: string[] = [];
  for (const [i, one] of tray.parts.entries()) {
    say(`Working: ${one.name}, ${i + 1} of ${tray.parts.length} …`);
    await shown();
    const made = trayPart(one, shop, tables);
    if (made.kind === "wrong") bad.push(made.words);
    else parts.push(made.part);
    if (made.kind === "part" && made.told !== "") untried.push(`${one.name}: ${made.told}`);
  }
  if (bad.length > 0)
    return {
      words: "No cutting files were made. Put these parts right, or take them off the tray:",
      lines: bad,
      isWrong: true,
    };
  say("Working: laying the blanks on plates …");
  await shown();
  const job = { parts, shop };
  const groups = platesOf(job, EFFORT);
  const title = titleOf(tray.job);
  const { reference } = tray.job;
  const about = { title, ...(typeof reference === "string" && reference !== "" && { reference }) };
  const file = archiveName(title);
  saveFile(file, zipTexts(jobFolder(about, job, groups)), "application/zip");
  const miss = notHere(job);
  const { plates } = totalUse(groups);
  const laid = plates === 0 ? "" : ` on ${plates === 1 ? "1 plate" : `${plates} plates`}`;
  return {
    words: `${file} went to the browser's downloads: ${partCount(parts)}${laid}. Its read-me.txt and list.csv tell what each file is for. Check one length on the table before plate is cut.`,
    lines: [...(miss ? [miss.sentence] : []), ...untried],
  };
}

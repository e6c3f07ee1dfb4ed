import { readdirSync } from "node:fs";
import { apart } from "../job/apart.ts";
import { type FileOptions, partFiles, reportFile } from "../output/partFiles.ts";
import type { Report } from "../report/report.ts";
import { ifSystemLets } from "./ifSystemLets.ts";
import type { OutFile } from "./putFiles.ts";

/** The files of some parts side by side in one folder: reports, and what is cut and marked out by. */
export const filesOf = (reports: readonly Report[], options: FileOptions): OutFile[] =>
  apart(
    reports.flatMap((report) =>
      [reportFile(report), ...partFiles(report, options)].map((file) => ({
        ...file,
        part: report.part.name,
      })),
    ),
    ({ part }) => part,
  ).map(({ path, print }) => ({ name: path, text: print() }));

/** What a file of some part is called, so that those of an earlier run are known again. */
const FILE = /^(.+?)(?:-piece-\d+)?(?:-inches)?\.(?:json|dxf|svg|csv)$/;

/** Files in a folder that were some part's, by an earlier run's names. */
export function partFilesIn(folder: string): { readonly name: string; readonly part: string }[] {
  const names = namesIn(folder);
  const reports = new Set(names.filter((name) => name.endsWith(".json")));
  return names.flatMap((name) => {
    const whole = name.replace(/(?:-inches)?\.[a-z]+$/, "");
    // A part may be called as another part's piece is: then its own report lies beside it.
    if (FILE.test(name) && reports.has(`${whole}.json`)) return [{ name, part: whole }];
    const part = FILE.exec(name)?.[1];
    return part === undefined ? [] : [{ name, part }];
  });
}

function namesIn(folder: string): string[] {
  return ifSystemLets(() => readdirSync(folder), [])
    .filter((name) => !name.startsWith("."))
    .sort();
}

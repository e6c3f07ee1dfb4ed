import { thickness } from "../drawing/thickness.ts";
import { type FileOptions, type PartFile, partFiles, reportFile } from "../output/partFiles.ts";
import { allPlateFiles } from "../output/plateFiles.ts";
import { apart } from "./apart.ts";
import { fileList, LIST, READ_ME, readMe } from "./fileList.ts";
import type { JobParts } from "./job.ts";
import type { PlateGroup } from "./plates.ts";
import { unitsOf } from "./unitsOf.ts";
import { allGo, allToMind, goes, holds, liesOn, plateSize, toMind } from "./whereCut.ts";

/** A file of a job where it lies in the job's folder, with strokes between folders. */
export interface JobFile extends PartFile {
  readonly path: string;
  /** Name and title of the part; null where it is about a plate. */
  readonly part: { readonly name: string; readonly title: string } | null;
  /** Which plate it is cut from, or which plate it is: material and thickness, and its number. */
  readonly plate: string;
  /** Whether the part goes, or all that lies on the plate. */
  readonly goes: string;
  /** What asks for care, or why it does not go. */
  readonly mind: string;
  /** Which plates the part's blanks lie on; none for a plate. */
  readonly liesOn: string;
  /** What the plate holds, and how large it is; none for a part. */
  readonly holds: string;
  readonly size: string;
}

/** What the job is called. */
export interface JobAbout {
  readonly title: string;
  readonly reference?: string | undefined;
}

/** A text of a job's folder. */
export interface NamedText {
  readonly path: string;
  readonly text: string;
}

/** Files of all parts in one folder, those of all plates in another. */
export function jobFiles(job: JobParts, groups: readonly PlateGroup[], options: FileOptions = {}): JobFile[] {
  const sheets = groups.flatMap(({ plates }) => plates.map(({ sheet }) => sheet));
  const ofParts = job.parts.flatMap(({ report, material, gauge }) => {
    const { name, title, units } = report.part;
    const plate = `${material.name}, ${thickness(report.part.thickness, units, gauge).value}`;
    return [...partFiles(report, options), reportFile(report)].map((file) => ({
      ...file,
      part: { name, title },
      plate,
      goes: goes(report),
      mind: toMind(report),
      liesOn: job.shop ? liesOn(groups, name, file.piece) : "",
      holds: "",
      size: "",
    }));
  });
  const apartOnes = apart(ofParts, ({ part }) => part.name).map((file): JobFile => ({
    ...file,
    path: `parts/${file.path}`,
  }));
  const ofPlates = allPlateFiles(sheets, unitsOf(job), options).map(({ file, sheet }): JobFile => ({
    ...file,
    plate: sheet?.title ?? "all plates",
    goes: sheet ? allGo(sheet) : "",
    mind: sheet ? allToMind(sheet) : "",
    holds: sheet ? holds(sheet) : "",
    size: sheet ? plateSize(sheet, file.units) : "",
    path: `plates/${file.name}`,
    part: null,
    liesOn: "",
  }));
  return [...apartOnes, ...ofPlates];
}

/** Everything that a job's folder of cutting files holds: its files, the list of them, and what to know first. Sorted by name. */
export function jobFolder(
  about: JobAbout,
  job: JobParts,
  groups: readonly PlateGroup[],
  options: FileOptions = {},
): NamedText[] {
  const files = jobFiles(job, groups, options);
  return [
    { path: LIST, text: fileList(files) },
    { path: READ_ME, text: readMe(about, job, groups) },
    ...files.map(({ path, print }) => ({ path, text: print() })),
  ].toSorted((a, b) => (a.path < b.path ? -1 : 1));
}

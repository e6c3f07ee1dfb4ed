import { thickness } from "../drawing/thickness.ts";
import { type FileOptions, type PartFile, partFiles, reportFile } from "../output/partFiles.ts";
import { plateFiles, plateList } from "../output/plateFiles.ts";
import { fileList, readMe } from "./fileList.ts";
import type { JobParts } from "./job.ts";
import type { PlateGroup } from "./plates.ts";
import { unitsOf } from "./unitsOf.ts";

/** A file of a job where it lies in the job's folder, with strokes between folders. */
export interface JobFile extends PartFile {
  readonly path: string;
  /** Name and title of the part; null where it is about a plate. */
  readonly part: { readonly name: string; readonly title: string } | null;
  /** Which plate it is cut from, or which plate it is: material and thickness, and its number. */
  readonly plate: string;
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
    return [...partFiles(report, options), reportFile(report)].map((file): JobFile => ({
      ...file,
      path: `parts/${file.name}`,
      part: { name, title },
      plate,
    }));
  });
  const ofPlates = [
    ...(sheets.length > 0 ? [{ file: plateList(sheets, unitsOf(job)), plate: "all plates" }] : []),
    ...sheets.flatMap((sheet) => plateFiles(sheet, options).map((file) => ({ file, plate: sheet.title }))),
  ].map(({ file, plate }): JobFile => ({ ...file, path: `plates/${file.name}`, part: null, plate }));
  return [...apart(ofParts), ...ofPlates];
}

/**
 * A part may be called as another part's piece is; the files of the later one then lie in a folder of its own. Some
 * systems do not tell capitals apart.
 */
function apart(files: readonly JobFile[]): JobFile[] {
  const owners = new Map<string, string>();
  const clash = new Set<string>();
  for (const { path, part } of files) {
    const key = path.toLowerCase();
    const name = part?.name ?? "";
    const owner = owners.get(key);
    if (owner === undefined) owners.set(key, name);
    else if (owner !== name) clash.add(name);
  }
  return files.map((file) =>
    file.part && clash.has(file.part.name) ? { ...file, path: `parts/${file.part.name}/${file.name}` } : file,
  );
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
    { path: "list.csv", text: fileList(files) },
    { path: "read-me.txt", text: readMe(about, job, groups) },
    ...files.map(({ path, print }) => ({ path, text: print() })),
  ].toSorted((a, b) => (a.path < b.path ? -1 : 1));
}

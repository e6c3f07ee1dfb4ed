import type { Tables } from "./context.ts";
import type { Disk } from "./disk.ts";
import type { DocumentReading } from "./document.ts";
import { partName } from "./partName.ts";
import { fileProblem, type Problem } from "./problem.ts";
import { readPart, type PartReading } from "./readPart.ts";
import { readShop, type ShopReading } from "./readShop.ts";
import { NO_FILE, type Reading } from "./reading.ts";

/** A file on the disk, and what it is called in front of its problems. */
export interface NamedFile {
  readonly file: string;
  readonly path: string;
}

/** Reads one part file from the disk. */
export const readPartFile = ({ file, path }: NamedFile, tables: Tables, disk: Disk): PartReading =>
  partOfText(disk.text(file), path, tables);

/** The part of a text, or of a file whose text could not be had. */
export function partOfText(text: Reading<string>, path: string, tables: Tables): PartReading {
  if (text.kind === "read") return readPart(text.value, { path, ...tables });
  // Without the ending a folder may have been meant.
  const missing = text === NO_FILE && !/\.ya?ml$/i.test(path);
  const problem = missing ? `${text.problem} and no such folder` : text.problem;
  const { problems, locate } = noText(path, problem, text.remedy);
  if (missing) return { part: undefined, problems, locate };
  const name = partName(path);
  const bad = name.kind === "unreadable" ? [fileProblem(path, name.problem, name.remedy)] : [];
  return { part: undefined, problems: [...bad, ...problems], locate };
}

/** Reads one shop file from the disk. */
export function readShopFile({ file, path }: NamedFile, tables: Tables, disk: Disk): ShopReading {
  const text = disk.text(file);
  return text.kind === "read"
    ? readShop(text.value, { path, ...tables })
    : noText(path, text.problem, text.remedy);
}

/** For a file that could not be read at all. */
export function noText(path: string, problem: string, remedy: string): DocumentReading<never> {
  return {
    value: undefined,
    problems: [fileProblem(path, problem, remedy)],
    locate: () => ({ line: 1, column: 1 }),
  };
}

/** Files whose parts would have the same name, on a system that does not tell capitals apart either. */
export function sameNames(paths: readonly string[]): Problem[] {
  const first = new Map<string, string>();
  return paths.flatMap((path) => {
    const name = partName(path);
    if (name.kind === "unreadable") return [];
    const key = name.value.toLowerCase();
    const before = first.get(key);
    if (before === undefined) first.set(key, path);
    if (before === undefined) return [];
    if (before === path) return [fileProblem(path, "this file is named twice", "name it once")];
    return [
      fileProblem(path, `its part has the same name as that of ${before}`, "rename one of the two files"),
    ];
  });
}

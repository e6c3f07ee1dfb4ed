import { mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { systemCode } from "../input/readText.ts";

export interface OutFile {
  readonly name: string;
  readonly text: string;
}

/**
 * Writes files into a folder, which is made where it is missing. All are written under other names first, so that nobody
 * ever finds half a file under the right one, nor new files beside old ones where the disk is full.
 *
 * @param shown the folder as the user wrote it
 * @returns what went wrong, as a sentence; undefined where all went well
 */
export function writeFiles(folder: string, shown: string, files: readonly OutFile[]): string | undefined {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    return `the folder ${shown} cannot be made: ${why(error)}`;
  }
  const temporary = (name: string) => join(folder, `.${name}.${process.pid}.tmp`);
  // Only what was written here is cleared up again: something of that name may be in the way.
  const written: string[] = [];
  for (const step of [
    ({ name, text }: OutFile) => {
      writeFileSync(temporary(name), text);
      written.push(temporary(name));
    },
    ({ name }: OutFile) => renameSync(temporary(name), join(folder, name)),
  ]) {
    for (const file of files) {
      try {
        step(file);
      } catch (error) {
        for (const path of written) rmSync(path, { force: true });
        return `${join(shown, file.name)} cannot be written: ${why(error)}`;
      }
    }
  }
  return undefined;
}

/**
 * Takes away files of an earlier run that would pass for this one's.
 *
 * @returns a sentence for each that was there, whether it could be taken away or not
 */
export function takeAway(folder: string, shown: string, names: readonly string[]): string[] {
  return names.flatMap((name) => {
    const path = join(folder, name);
    if (!isFile(path)) return [];
    try {
      rmSync(path);
      return [`${join(shown, name)} was of an earlier run and is taken away`];
    } catch (error) {
      return [`${join(shown, name)} is of an earlier run and cannot be taken away: ${why(error)}`];
    }
  });
}

/** Reports in the folder that this run has nothing to do with. */
export function others(folder: string, names: readonly string[]): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith(".json") && !name.startsWith(".") && !names.includes(name))
      .sort();
  } catch (error) {
    if (systemCode(error) === undefined) throw error;
    return [];
  }
}

function isFile(path: string): boolean {
  try {
    return statSync(path).isFile();
  } catch (error) {
    if (systemCode(error) === undefined) throw error;
    return false;
  }
}

function why(error: unknown): string {
  const code = systemCode(error);
  switch (code) {
    case undefined:
      throw error;
    case "EEXIST":
    case "ENOTDIR":
      return "a file is in the way; give another folder";
    case "EISDIR":
    case "ENOTEMPTY":
      return "a folder of that name is in the way; give another folder";
    case "EACCES":
    case "EPERM":
    case "EROFS":
      return "you may not write there; give another folder";
    case "ENOSPC":
    case "EDQUOT":
      return "the disk is full; make room or give another folder";
    default:
      return `the system says ${code}; give another folder`;
  }
}

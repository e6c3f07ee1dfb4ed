import { mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { systemCode } from "../input/readText.ts";

export interface OutFile {
  readonly name: string;
  readonly text: string;
}

/**
 * Writes files into a folder, which is made where it is missing. Each is written under another name first, so that
 * nobody ever finds half a file under the right one.
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
  for (const { name, text } of files) {
    const temporary = join(folder, `.${name}.${process.pid}.tmp`);
    try {
      writeFileSync(temporary, text);
      renameSync(temporary, join(folder, name));
    } catch (error) {
      rmSync(temporary, { force: true });
      return `${join(shown, name)} cannot be written: ${why(error)}`;
    }
  }
  return undefined;
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

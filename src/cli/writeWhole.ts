import { existsSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { makeFolder } from "./makeFolder.ts";
import { allOrNothing } from "./undo.ts";
import { whyNot } from "./whyNot.ts";

/**
 * Writes one file under another name beside its place and then moves it there, so that nobody ever finds half of it, and
 * what stood there before stays where it goes wrong. Folders that are not there are made, and taken away again where it does.
 *
 * @param shown the file as the user wrote it
 * @returns what went wrong, as a sentence; undefined where all went well
 */
export function writeWhole(path: string, shown: string, bytes: Uint8Array): string | undefined {
  const temporary = join(dirname(path), `.${basename(path)}.${process.pid}.tmp`);
  const folder = existsSync(dirname(path));
  try {
    // Some systems would put a file in the place of an empty folder.
    if (statSync(path, { throwIfNoEntry: false })?.isDirectory())
      return `${shown} cannot be written: a folder of that name is in the way; give another name`;
    allOrNothing((takeBack) => {
      makeFolder(dirname(path), takeBack);
      // A disk that fills up shows itself only once the bytes have reached it.
      writeFileSync(temporary, "", { flag: "wx" });
      // Only what was begun here is cleared up again: something of that name may be in the way.
      takeBack(() => rmSync(temporary, { force: true }));
      writeFileSync(temporary, bytes, { flush: true });
      renameSync(temporary, path);
    });
    return undefined;
  } catch (error) {
    return `${shown} cannot be written: ${why(error, folder)}`;
  }
}

const why = (error: unknown, folder: boolean): string =>
  whyNot(error, "place", {
    // Folders that the system itself fills take no files, and some say so as if they were not there.
    ENOENT: folder
      ? "the system makes no files in that folder; give a folder on a disk"
      : "the system makes no folder there; give a folder on a disk",
    ENOTDIR: "what should be its folder is a file; give another place",
  });

import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { ifSystemLets } from "./ifSystemLets.ts";
import { makeFolder } from "./makeFolder.ts";
import { allOrNothing } from "./undo.ts";
import { whyNot } from "./whyNot.ts";

export interface OutFile {
  /** Where in the folder, with strokes between folders. */
  readonly name: string;
  readonly text: string;
}

/** The folder that is written into, and how the user wrote it. */
export interface Target {
  readonly folder: string;
  readonly shown: string;
}

export type Put =
  | { readonly kind: "put"; readonly takenAway: readonly string[] }
  | { readonly kind: "failed"; readonly sentence: string };

/** What cannot be done, in a sentence; thrown within this file alone. */
class Cannot extends Error {}

function attempt<T>(what: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw new Cannot(`${what}: ${whyNot(error)}`);
  }
}

/**
 * Writes files into a folder, which is made where it is missing, and takes old ones out of it: all of it or nothing. They are
 * written whole into a folder aside first, on the same disk. A new folder then gets its name in one step; into an old one
 * the files are moved, and where one cannot be, those before it are moved back and what they replaced is put back.
 *
 * @param old names of files of an earlier run that must not pass for this one's
 */
export function putFiles(target: Target, files: readonly OutFile[], old: readonly string[] = []): Put {
  try {
    return existsSync(target.folder) ? into(target, files, old) : asNew(target, files);
  } catch (error) {
    if (error instanceof Cannot) return { kind: "failed", sentence: error.message };
    throw error;
  }
}

/** All in a folder that was not there. */
function asNew({ folder, shown }: Target, files: readonly OutFile[]): Put {
  if (files.length === 0) return { kind: "put", takenAway: [] };
  return allOrNothing((takeBack) => {
    attempt(`the folder ${shown} cannot be made`, () => {
      makeFolder(dirname(folder), takeBack);
    });
    const aside = asideIn(
      dirname(folder),
      `.${basename(folder)}.`,
      `the folder ${shown} cannot be made`,
      takeBack,
    );
    write({ folder: join(aside, "new"), shown }, files);
    attempt(`the folder ${shown} cannot be made`, () => renameSync(join(aside, "new"), folder));
    clear(aside);
    return { kind: "put", takenAway: [] };
  });
}

/** Into a folder that holds other things too, which stay as they are. */
function into({ folder, shown }: Target, files: readonly OutFile[], old: readonly string[]): Put {
  const takenAway = old.filter((name) => isFile(join(folder, name)));
  if (!statSync(folder).isDirectory())
    throw new Cannot(`the folder ${shown} cannot be made: a file is in the way; give another folder`);
  if (files.length === 0 && takenAway.length === 0) return { kind: "put", takenAway };
  return allOrNothing((takeBack) => {
    const aside = asideIn(folder, ".develop.", `nothing can be written into ${shown}`, takeBack);
    write({ folder: join(aside, "new"), shown }, files);
    const kept = (name: string) => join(aside, "old", name);
    const setAside = (name: string): void => {
      makeFolder(dirname(kept(name)));
      renameSync(join(folder, name), kept(name));
      takeBack(() => renameSync(kept(name), join(folder, name)));
    };
    for (const { name } of files)
      attempt(`${join(shown, name)} cannot be written`, () => {
        const place = join(folder, name);
        makeFolder(dirname(place), takeBack);
        if (existsSync(place)) {
          if (!isFile(place)) throw Object.assign(new Error(place), { code: "EISDIR" });
          setAside(name);
        }
        renameSync(join(aside, "new", name), place);
        takeBack(() => renameSync(place, join(aside, "new", name)));
      });
    for (const name of takenAway)
      attempt(`${join(shown, name)} is of an earlier run and cannot be taken away`, () => setAside(name));
    clear(aside);
    return { kind: "put", takenAway };
  });
}

function write({ folder, shown }: Target, files: readonly OutFile[]): void {
  mkdirSync(folder);
  for (const { name, text } of files)
    attempt(`${join(shown, name)} cannot be written`, () => {
      makeFolder(dirname(join(folder, name)));
      writeFileSync(join(folder, name), text);
    });
}

/** A folder for what is on its way, which nobody else has. */
function asideIn(folder: string, name: string, what: string, takeBack: (step: () => void) => void): string {
  const aside = attempt(what, () => mkdtempSync(join(folder, name)));
  takeBack(() => {
    rmSync(join(aside, "new"), { recursive: true, force: true });
    // What could not be put back is not thrown away.
    if (!holdsFiles(join(aside, "old"))) rmSync(aside, { recursive: true, force: true });
  });
  return aside;
}

/** All is in its place: what lay aside may go, and where it cannot, nothing is lost but tidiness. */
function clear(aside: string): void {
  ifSystemLets(() => rmSync(aside, { recursive: true, force: true }), undefined);
}

const holdsFiles = (folder: string): boolean =>
  existsSync(folder) &&
  readdirSync(folder, { recursive: true, encoding: "utf8" }).some((name) => isFile(join(folder, name)));

function isFile(path: string): boolean {
  return ifSystemLets(() => statSync(path).isFile(), false);
}

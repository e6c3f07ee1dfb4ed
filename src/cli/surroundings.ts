import { read, unreadable, type Reading } from "../input/reading.ts";
import { ifSystemLets } from "./ifSystemLets.ts";

/** One line on standard error, and an exit code that says that it did not go well. */
export function fail(sentence: string, command = "develop"): void {
  process.exitCode = 1;
  process.stderr.write(`${command}: ${sentence}\n`);
}

/** The scripts of package.json that paths are given to. */
const SCRIPTS = ["develop", "binder"];

/** The folder that paths on the command line start from; it may have been taken away under one's feet. */
export function startFolder(): Reading<string> {
  // npm runs its scripts in the folder of package.json; paths mean what they mean where the user stands.
  const { npm_lifecycle_event: script, INIT_CWD: start } = process.env;
  if (SCRIPTS.includes(script ?? "") && start !== undefined) return read(start);
  return ifSystemLets<Reading<string>>(
    () => read(process.cwd()),
    unreadable("the folder that you stand in is no longer there", "change to another folder"),
  );
}

/** Why the report did not get out whole. */
export function cannotPrint(error: NodeJS.ErrnoException): string {
  const lost = "the report could not be printed whole";
  if (error.code === "EPIPE")
    return `${lost}: whoever was to read it stopped reading; give --out to keep it in a file`;
  if (error.code === "ENOSPC" || error.code === "EDQUOT")
    return `${lost}: the disk is full; make room, or print it elsewhere`;
  return `${lost}: the system says ${error.code ?? error.message}; print it elsewhere`;
}

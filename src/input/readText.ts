import { readFileSync, statSync } from "node:fs";
import { NO_FILE, unreadable, type Reading } from "./reading.ts";
import { decode, TOO_LARGE, MAX_SIZE } from "./text.ts";

/** The text of a file on the disk, or in plain words why it cannot be had. */
export function readText(path: string): Reading<string> {
  try {
    const stat = statSync(path);
    if (stat.isDirectory()) return unreadable("it is a folder", "name a file");
    // A pipe or a device might never end.
    if (!stat.isFile()) return unreadable("it is not a file", "name a file");
    if (stat.size > MAX_SIZE) return TOO_LARGE;
    return decode(readFileSync(path));
  } catch (error) {
    return whyNot(error);
  }
}

/** The error code of the operating system, e.g. "ENOENT". */
export function systemCode(error: unknown): string | undefined {
  return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : undefined;
}

function whyNot(error: unknown): Reading<never> {
  const code = systemCode(error);
  if (code === undefined) throw error;
  if (code === "ENOENT" || code === "ENOTDIR") return NO_FILE;
  if (code === "EACCES" || code === "EPERM")
    return unreadable("it may not be read", "ask whoever owns it for the right to");
  return unreadable(`it cannot be read (${code})`, "check the disk and the name");
}

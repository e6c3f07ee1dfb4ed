import { read, unreadable, type Reading } from "./reading.ts";

/** A part file is a page long; what is larger is another kind of file. [bytes, and characters] */
export const MAX_SIZE = 1_000_000;

export const TOO_LARGE = unreadable("it is larger than 1 MB", "check that this is the file you mean");
const NOT_TEXT = unreadable("it is not a text file", "check that this is the file you mean");

/** The text of a file as it lies on the disk: UTF-8, with or without the mark that some editors put in front. */
export function decode(bytes: Uint8Array): Reading<string> {
  if (bytes.length > MAX_SIZE) return TOO_LARGE;
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    return unreadable("it is saved as UTF-16", "save it as UTF-8 in the editor");
  }
  if (bytes.includes(0)) return NOT_TEXT;
  try {
    return read(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return unreadable("it is not a text file in UTF-8", "save it as UTF-8 in the editor");
  }
}

/** Text fit to be read as YAML: the mark in front taken off, so that columns count from the first visible sign. */
export function cleanText(text: string): Reading<string> {
  if (text.length > MAX_SIZE) return TOO_LARGE;
  if (text.includes("\u0000")) return NOT_TEXT;
  return read(text.replace(/^\ufeff/, ""));
}

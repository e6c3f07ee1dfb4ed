import { systemCode } from "../input/readText.ts";

/** What a caller knows better, by the system's code. */
type Own = Readonly<Partial<Record<string, string>>>;

/**
 * Why something could not be put on the disk, and what would help, for the end of a sentence.
 *
 * @param place what may be chosen anew: "folder" where many files go, "place" for one
 */
export function whyNot(error: unknown, place: "folder" | "place" = "folder", own: Own = {}): string {
  const code = systemCode(error);
  if (code === undefined) throw error;
  return own[code] ?? usual(code, place);
}

function usual(code: string, place: string): string {
  switch (code) {
    case "EEXIST":
    case "ENOTDIR":
      return `a file is in the way; give another ${place}`;
    case "EISDIR":
    case "ENOTEMPTY":
      return `a folder of that name is in the way; give another ${place}`;
    case "EACCES":
    case "EPERM":
    case "EROFS":
      return `you may not write there; give another ${place}`;
    case "ENOENT":
      return `the system makes no files or folders there; give a ${place} on a disk`;
    case "ENAMETOOLONG":
      return "its name is too long; give a shorter one";
    case "ENOSPC":
    case "EDQUOT":
      return `the disk is full; make room or give another ${place}`;
    case "EFBIG":
      return `the system allows no file so large; give a ${place} on another disk`;
    default:
      return `the system says ${code}; give another ${place}`;
  }
}

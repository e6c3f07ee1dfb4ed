import { systemCode } from "../input/readText.ts";

/** Why something could not be put on the disk, and what would help, for the end of a sentence. */
export function whyNot(error: unknown): string {
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
    case "ENOENT":
      return "the system makes no files or folders there; give a folder on a disk";
    case "ENAMETOOLONG":
      return "its name is too long; give a shorter one";
    case "ENOSPC":
    case "EDQUOT":
      return "the disk is full; make room or give another folder";
    case "EFBIG":
      return "the system allows no file so large; give a folder on another disk";
    default:
      return `the system says ${code}; give another folder`;
  }
}

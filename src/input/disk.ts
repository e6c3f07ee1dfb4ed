import type { Reading } from "./reading.ts";

/** Where files are read from: a disk, or an archive that holds a folder as a disk would. */
export interface Disk {
  /** Names in a folder, sorted by code unit; undefined where there is no such folder, or it may not be looked into. */
  readonly names: (folder: string) => string[] | undefined;
  readonly has: (path: string) => boolean;
  /** The text of a file, or in plain words why it cannot be had. */
  readonly text: (path: string) => Reading<string>;
}

import type { Tables } from "./context.ts";
import { readFolderOn, type FolderReading } from "./folder.ts";
import { diskFrom } from "./nodeDisk.ts";

/**
 * Reads a data folder of this machine's disk.
 *
 * @param from the folder that its path starts from, and so the paths of its problems
 */
export const readFolder = (folder: string, tables: Tables, from = "."): FolderReading =>
  readFolderOn(diskFrom(from), folder, tables);

import type { Tables } from "./context.ts";
import { readFolderOn, type FolderReading } from "./folder.ts";
import { nodeDisk } from "./nodeDisk.ts";

/** Reads a data folder of this machine's disk. */
export const readFolder = (folder: string, tables: Tables): FolderReading =>
  readFolderOn(nodeDisk, folder, tables);

import { existsSync, readdirSync } from "node:fs";
import { resolve } from "node:path";
import type { Disk } from "./disk.ts";
import { readText, systemCode } from "./readText.ts";

/** The disk of the machine that this runs on. */
export const nodeDisk: Disk = {
  names: (folder) => {
    try {
      return readdirSync(folder).sort();
    } catch (error) {
      if (systemCode(error) === undefined) throw error;
      return undefined;
    }
  },
  has: existsSync,
  text: readText,
};

/** The same, its paths starting from a folder. */
export const diskFrom = (folder: string): Disk => ({
  names: (path) => nodeDisk.names(resolve(folder, path)),
  has: (path) => nodeDisk.has(resolve(folder, path)),
  text: (path) => nodeDisk.text(resolve(folder, path)),
});

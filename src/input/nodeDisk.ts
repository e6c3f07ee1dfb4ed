import { existsSync, readdirSync } from "node:fs";
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

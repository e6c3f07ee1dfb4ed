import { systemCode } from "../input/readText.ts";

/** What comes of some work on the disk, or `otherwise` where the system does not let it be done; a caller's bug still throws. */
export function ifSystemLets<T>(work: () => T, otherwise: T): T {
  try {
    return work();
  } catch (error) {
    if (systemCode(error) === undefined) throw error;
    return otherwise;
  }
}

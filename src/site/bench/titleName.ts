import { betterName } from "../../input/partName.ts";
import type { Typed } from "../../input/typed.ts";

/**
 * The name that a title comes to, so that two parts that are cut on one day do not carry the mark of one example.
 *
 * @returns undefined where no letter of it goes into a name, and where it is too long for one
 * @example titleName("Hopper bottom, 2nd line") // → hopper-bottom-2nd-line
 */
export const titleName = (title: Typed | undefined): string | undefined =>
  typeof title === "string" ? betterName(title)?.toLowerCase() : undefined;

import { SECTIONS } from "../parts/sections.ts";
import { MARK } from "./link.ts";

/** Places of a bench that may not stand yet when its address is read. */
const LATER = new Set<string>(SECTIONS.map(({ id }) => id));

/**
 * Why what stands behind # in an address is no part; nothing where it is a place on the page.
 * @param isPlace is there anything of this id on the page, or was there when it was published?
 */
export function otherHash(hash: string, isPlace: (id: string) => boolean): string | undefined {
  const behind = hash.slice(1);
  if (behind === "") return undefined;
  // A link that was cut off before the part begins: "#part", "#pa".
  if (MARK.startsWith(hash)) return "it was cut off before the part itself";
  let id: string;
  try {
    id = decodeURIComponent(behind);
  } catch {
    return "what stands behind # was changed on its way";
  }
  return LATER.has(id) || isPlace(id) || isPlace(behind)
    ? undefined
    : "what stands behind # is neither a part nor a place on this page";
}

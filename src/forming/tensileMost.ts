import type { PartAsked } from "./asked.ts";

/** Thinner plate has a range of its own, which goes higher. [mm] */
const RANGE_FROM_MM = 3;

/**
 * Greatest tensile strength that plate of this grade may have; null where the source says none for this thickness. [MPa]
 *
 * @see en-10025-2, astm-a36, through the table of materials
 */
export function tensileMostMPa({ item }: Pick<PartAsked, "item">): number | null {
  const { tensileMostMPa: most } = item.material;
  return most !== undefined && item.thicknessMm >= RANGE_FROM_MM ? most : null;
}

import type { PartAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge } from "./judge.ts";

/** A gap wider than so many thicknesses is no root opening of any usual joint. [-] */
const MOST_THICKNESSES = 3;
/** Thin sheet is tacked with gaps that are many times its thickness. [mm] */
const ALWAYS_TAKEN_MM = 6;

/**
 * Is the gap at the seam one that is left for a weld? Asked only where it is wider: the whole of it is taken off the
 * plate, so a 5 typed for 1/8 makes the part that much too small. [mm]
 */
export function weldGap({ item, say }: PartAsked): Check | null {
  const value = item.seamGapMm ?? 0;
  const limit = Math.max(MOST_THICKNESSES * item.thicknessMm, ALWAYS_TAKEN_MM);
  if (value <= limit) return null;
  return judge({
    id: "weld-gap",
    title: "Gap for the weld",
    value,
    limit,
    sense: "at most",
    unit: "mm",
    beyond: "caution",
    basis: COMMON_PRACTICE,
    rule: `gap at the seam ≤ ${MOST_THICKNESSES} × thickness, or ${ALWAYS_TAKEN_MM} mm where that is more`,
    advice: () =>
      `A gap of ${say.length(value)} is taken off the plate at ${item.pieces === 1 ? "the seam" : "every seam"}, and a weld needs no more than a few millimetres: see that it is not typed wrongly.`,
  });
}

import { degrees } from "../geometry/angle.ts";
import type { PartAsked } from "./asked.ts";
import type { FormingCase } from "./case.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge } from "./judge.ts";

const FULL_TURN_DEG = 360;
/** Bent further round than this, a piece closes in behind the punch. */
export const HALF_TURN_DEG = 180;

/**
 * From here on up to half a turn it takes care: while the last bend is pressed the piece stands further round by what springs
 * back, a few degrees of that one bend. Derived here; a share of the limit as of a force would say nothing of an angle.
 */
const NEARLY_HALF_DEG = 175;
/** Bent further round than this, its edges meet behind the punch. Derived here: they stand a quarter of the width apart. */
const NEARLY_CLOSED_DEG = 330;

/** What all bends of the piece that is bent most come to; without known lines a full turn shared by the pieces, at most. [°] */
export function bentDeg({ bendZones, pieces }: Pick<FormingCase, "bendZones" | "pieces">): number {
  const sums = new Map<number, number>();
  for (const zone of bendZones ?? [])
    sums.set(zone.piece, (sums.get(zone.piece) ?? 0) + degrees(zone.turnedRad(zone.toRad)));
  return sums.size > 0 ? Math.max(...sums.values()) : FULL_TURN_DEG / pieces;
}

/**
 * Does the bent piece come off the punch? Bent by up to half a turn it lifts off; further it embraces the punch and its
 * holder, and comes off only at the end of the bed, if at all. [°, all bends of a piece together]
 */
export function offThePunch({ item }: PartAsked): Check {
  const value = bentDeg(item);
  return judge({
    id: "off-the-punch",
    title: "All bends of a piece together",
    value,
    limit: HALF_TURN_DEG,
    sense: "at most",
    unit: "°",
    beyond: "caution",
    nearShare: NEARLY_HALF_DEG / HALF_TURN_DEG,
    basis: COMMON_PRACTICE,
    rule: "bends of a piece ≤ 180°: bent by up to half a turn it lifts off the punch",
    advice: (verdict) =>
      verdict === "pass"
        ? "The bent piece lifts off the punch; in the last bends see that its edges clear punch and ram."
        : value <= HALF_TURN_DEG
          ? "It lifts off when it is released, but while the last bends are pressed it stands further round by what springs back: see before them that its edges go past punch, holder and ram."
          : value > NEARLY_CLOSED_DEG
            ? "Not in one piece: bent so far round its seam edges come together where punch and ram stand; make it in two halves, or leave out its last lines and pull it shut off the brake."
            : "In one piece it closes round the punch: make it in two halves, or see first that it slides off the open end of the punch.",
  });
}

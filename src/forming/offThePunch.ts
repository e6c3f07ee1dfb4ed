import type { PartAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge } from "./judge.ts";

const FULL_TURN_DEG = 360;
/** Bent further round than this, a piece closes in behind the punch. */
const HALF_TURN_DEG = 180;

/**
 * Does the bent piece come off the punch? Up to half way round it lifts off; further round it embraces the punch and
 * its holder, and comes off only at the end of the bed, if at all. [° of the round in plan]
 */
export function offThePunch({ item }: PartAsked): Check {
  const value = FULL_TURN_DEG / item.pieces;
  return judge({
    id: "off-the-punch",
    title: "How far round one piece goes",
    value,
    limit: HALF_TURN_DEG,
    sense: "at most",
    unit: "°",
    beyond: "caution",
    basis: COMMON_PRACTICE,
    rule: "360° / pieces ≤ 180°: a piece up to half way round lifts off the punch",
    advice: (verdict) =>
      verdict === "pass"
        ? "The bent piece lifts off the punch; in the last bends see that its edges clear punch and ram."
        : "In one piece it closes round the punch: make it in two halves, or see first that it slides off the open end of the punch.",
  });
}

import type { RollAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, DERIVED, judge, state } from "./judge.ts";
import { closesOnItself, isPipe, isPointed } from "./skin.ts";

const POINT = "A cone to a point is usually rolled with a small end and capped, or formed on the press brake";

/**
 * Does the top roll fit inside? It lies along the wall, so the small end's plane cuts it in an ellipse:
 *
 *   whole part  inside diameter ≥ top roll diameter / cos(lean)
 *   segment     2·(R − t/2) ≥ top roll diameter, R the middle radius square to the element
 *
 * A segment (pieces > 1) does not close round the roll and comes off sideways, so only its curve must clear. [mm]
 */
export function smallEnd({ item, roll, say }: RollAsked): Check {
  const whole = closesOnItself(item);
  const pointed = isPointed(item);
  const top = roll.rolls.topDiameter;
  const need = top / Math.cos(item.leanRad);
  const curve = 2 * (item.tightestRadiusMm?.small ?? 0) - item.thicknessMm;
  const value = whole ? item.insideDiameterMm.small : Math.max(0, curve);
  const limit = whole ? need : top;
  const end = isPipe(item) ? "end" : "small end";
  const fits = whole
    ? `The top roll, ${say.length(top)}, passes through the ${end} with ${say.length(value - limit)} to spare.`
    : `Each piece clears the top roll and comes off sideways: it does not close round it.`;
  const tooSmall = whole
    ? `The top roll does not pass through the ${end}: leave at least ${say.length(need)} inside, make the part in 2 pieces, or use the press brake.`
    : `The ${end} is curved more tightly than the top roll, ${say.length(top)}: use a smaller roll, or the press brake.`;
  return judge({
    id: "small-end",
    title: whole ? "Small end over the top roll" : "Curve of the small end over the top roll",
    value,
    limit,
    sense: "at least",
    unit: "mm",
    beyond: "fail",
    basis: DERIVED,
    rule: whole
      ? "inside diameter ≥ top roll diameter / cos(lean), for the roll lies along the wall"
      : "twice the inside radius square to the element ≥ top roll diameter; a piece comes off sideways",
    advice: (verdict) =>
      verdict === "pass"
        ? fits
        : pointed
          ? `${POINT}: here the roll needs a small end of at least ${say.length(need)} inside.`
          : tooSmall,
  });
}

/** Smallest inside diameter the machine closes, by its own handbook. A segment is not closed on the machine. [mm] */
export function smallestClosed({ item, roll, say }: RollAsked): Check | null {
  if (!closesOnItself(item)) return null;
  const value = item.insideDiameterMm.small;
  const words = {
    id: "smallest-closed",
    title: "Smallest diameter the roll closes",
    sense: "at least" as const,
    unit: "mm",
    basis: COMMON_PRACTICE,
    rule: "inside diameter of the small end ≥ the smallest that the machine closes, by its handbook",
  };
  const limit = roll.smallestDiameter;
  if (limit === undefined)
    return state({
      ...words,
      value,
      verdict: "caution",
      advice: `Find in the handbook, or by measuring a finished shell, the smallest inside diameter this roll closes: the part has ${say.length(value)}.`,
    });
  return judge({
    ...words,
    value,
    limit,
    beyond: "fail",
    advice: (verdict) =>
      verdict === "pass"
        ? `The roll closes down to ${say.length(limit)} inside, and the part has ${say.length(value)}.`
        : isPointed(item)
          ? `${POINT}: this roll closes no less than ${say.length(limit)} inside.`
          : `Below the ${say.length(limit)} that this roll closes: make the part in 2 pieces, or use the press brake.`,
  });
}

import { MM_PER_INCH, type Units } from "../geometry/units.ts";

export { type Units };

/** Four figures are enough for a limit in a message; rounded inwards, so that the figure named is itself allowed. */
const FIGURES = 4;

/**
 * A limit in the file's own units, for messages: "20000 mm", "787.4 in".
 * @param inwards "down" for an upper limit, "up" for a lower one
 */
export function showLength(mm: number, units: Units, inwards: "up" | "down"): string {
  const value = units === "mm" ? mm : mm / MM_PER_INCH;
  return `${roundFigures(value, inwards)} ${units}`;
}

function roundFigures(value: number, inwards: "up" | "down"): number {
  if (Number.isInteger(value)) return value;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - FIGURES);
  const steps = value / step;
  // A limit that is round in itself (0.2 mm) must not be pushed a step further by its last binary digit.
  const nearest = Math.round(steps);
  const rounded = Number(nearest.toPrecision(FIGURES)) * step;
  const exact = Math.abs(rounded - value) <= Math.abs(value) * Number.EPSILON * 4;
  const kept = exact ? nearest : inwards === "up" ? Math.ceil(steps) : Math.floor(steps);
  return Number((kept * step).toPrecision(FIGURES));
}

import { MM_PER_INCH, type Units } from "../geometry/units.ts";
import type { Given, Loose } from "./loose.ts";
import type { Refusal } from "./refusal.ts";

export { type Units };

/** A length for a message, in the units of the part file and without trailing noughts: "12.5 mm", "0.492 in". */
export const shown = (mm: number, units: Units): string =>
  units === "in" ? `${Number((mm / MM_PER_INCH).toFixed(3))} in` : `${Number(mm.toFixed(2))} mm`;

/** A length rounded one way to what `shown` shows of it, so that the length in a message itself serves. [mm] */
export function roundedIn(mm: number, units: Units, way: "up" | "down"): number {
  const step = units === "in" ? MM_PER_INCH / 1000 : 0.01;
  const steps = way === "down" ? Math.floor(mm / step) : Math.ceil(mm / step);
  // Decimal digits of the file's own units, as a reader of the file would take them.
  return units === "in" ? Number((steps / 1000).toFixed(3)) * MM_PER_INCH : Number((steps * step).toFixed(2));
}

/** The wall does not fit into the bend. How thin it would have to be is found by trying. */
export function wallTooThick(place: string, thicknessMm: number, units: Units): Refusal {
  return {
    path: ["thickness"],
    problem: `${shown(thicknessMm, units)} plate is thicker than ${place} allows`,
    remedy: "check the sizes and how each end is measured",
    otherwise: "make that end larger",
  };
}

/** Measured is needed wherever an end has a size. */
const notMeasured: Refusal = {
  path: ["smallEnd", "measured"],
  problem: "measured is missing",
  remedy: "say whether the diameter is measured inside, outside or at the middle",
};

const swapEnds: Refusal = {
  path: ["largeEnd", "diameter"],
  problem: "the large end is smaller than the small end",
  remedy: "swap them",
};

/** Sizes that are in order as they are typed, and are not on the middle of the wall. */
export const swapMiddles: Refusal = {
  path: ["smallEnd", "measured"],
  problem: "measured so, the middle of the small end is larger than that of the large end",
  remedy: "swap the ends, or check how each is measured",
};

interface RoundEnds {
  readonly largeEnd: { readonly diameter: number };
  readonly smallEnd: { readonly diameter: number };
}

/** What is wrong between two round ends, as far as the file is right. */
export function endProblems({ largeEnd, smallEnd }: Loose<RoundEnds>, given: Given): Refusal[] {
  const issues: Refusal[] = [];
  const [large, small] = [largeEnd?.diameter, smallEnd?.diameter];
  if (large !== undefined && small !== undefined && small > large) issues.push(swapEnds);
  if (small !== undefined && small > 0 && !given(["smallEnd", "measured"])) issues.push(notMeasured);
  return issues;
}

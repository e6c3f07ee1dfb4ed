import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import type { PartAsked } from "./asked.ts";
import type { BrakeBends } from "./brakeBends.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge } from "./judge.ts";
import type { PressBrake } from "./machine.ts";

/** Air bending leaves about a sixth of the opening as inside radius in mild steel. Common practice, no source. [-] */
const RADIUS_OF_DIE = 1 / 6;
/** Smallest inside radius in thicknesses: structural plate to 50 mm, line square to the rolling direction. [-] */
const LEAST_RADIUS_STEEL = 1.5;
/** The same for the aluminium of the catalogue. [-] */
const LEAST_RADIUS_ALUMINIUM = 2.5;

/** Inside radius that air bending over a die leaves by itself, about. [mm] */
export const insideRadiusMm = (dieMm: number): number => RADIUS_OF_DIE * dieMm;

/** Smallest inside radius that a plate is bent to, and where that comes from. [mm] */
export function leastRadius({ item }: Pick<PartAsked, "item">): { radius: number; basis: string } {
  const radius = LEAST_RADIUS_STEEL * item.thicknessMm;
  return item.material.family === "steel" || item.material.family === "galvanised"
    ? { radius, basis: "astm-a6-x4-2" }
    : item.material.family === "aluminium"
      ? { radius: LEAST_RADIUS_ALUMINIUM * item.thicknessMm, basis: "en-485-2" }
      : { radius, basis: COMMON_PRACTICE };
}

type Rack = Pick<PressBrake, "dies"> | undefined;

/** How wide a die a sharp fold wants for the least inside radius, and which of the rack that is, if any. [mm] */
export function wideDieFor(
  { item }: Pick<PartAsked, "item">,
  brake: Rack,
): { leastMm: number; wideMm: number | null } {
  const leastMm = leastRadius({ item }).radius / RADIUS_OF_DIE;
  const wideMm = brake?.dies?.toSorted((a, b) => a - b).find((die) => die >= leastMm);
  return { leastMm, wideMm: wideMm ?? null };
}

/** The same in words. */
export function widerDie({ item, say }: PartAsked, brake: Rack): string {
  const { leastMm, wideMm } = wideDieFor({ item }, brake);
  const least = `a die of ${say.length(leastMm)} or more`;
  return wideMm === null ? least : `${least}, here ${say.shops(wideMm)}`;
}

/** What a fold is bent over; the die is the least for the thickness where nobody has named one. */
interface FoldAsked extends PartAsked {
  readonly dieMm: number;
  readonly bends: Pick<BrakeBends, "zones"> | null;
  readonly brake?: Pick<PressBrake, "dies"> | undefined;
}

/**
 * Are the folds at the tips of the corners, where all lines of a corner meet, rounder than what the plate is bent to
 * without cracking? Not asked where there is no tip: a hit of a few degrees is not in question. [mm, inside radius]
 */
export function sharpFold({ item, say, dieMm, bends, brake }: FoldAsked): Check | null {
  const tips = bends?.zones.some(({ spacingMm }) => spacingMm.narrow < SAME_POINT_MM);
  if (item.tightestRadiusMm !== null || !tips) return null;
  const { radius: limit, basis } = leastRadius({ item });
  const value = insideRadiusMm(dieMm);
  return judge({
    id: "sharp-fold",
    title: "Inside radius of the sharp folds at the tips",
    value,
    limit,
    sense: "at least",
    unit: "mm",
    beyond: "caution",
    basis,
    rule: "a sixth of the die opening (common practice, no source) ≥ the least inside radius advised for the plate",
    advice: (verdict) =>
      verdict === "pass"
        ? `Over the ${say.shops(dieMm)} die a sharp fold comes out near ${say.length(value)} inside; no less than ${say.length(limit)} is advised.`
        : `Over the ${say.shops(dieMm)} die a sharp fold comes out near ${say.length(value)} inside, less than the ${say.length(limit)} advised, and may crack: fold the tips over a wider die, ${widerDie({ item, say }, brake)}.`,
  });
}

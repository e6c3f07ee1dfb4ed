import { AT_LIMIT_REL } from "../geometry/tolerance.ts";
import { longestAirBendMm, NEAR_FORCE } from "./brakeForce.ts";
import { capacityLimit } from "./capacity.ts";
import type { Verdict } from "./check.ts";
import { diesFor, thickestOverMm } from "./dieOpening.ts";
import type { PlateRoll, PressBrake } from "./machine.ts";
import type { Strength } from "./ratedThickness.ts";
import { greatestThicknessMm } from "./thicknessLimit.ts";
import { greatestSlantMm } from "./workingWidth.ts";

/** What a roll takes as a cone, in plate of one strength: the numbers that its capacity chart is drawn from. */
export interface RollLimits {
  /** Greatest thickness times slant, and above which it is near the limit. [mm²] */
  readonly coneMm2: number;
  readonly nearMm2: number;
  /** Greatest thickness however short, and longest slant however thin. [mm] */
  readonly thicknessMm: number;
  readonly slantMm: number;
}

/** The limits of the checks of capacity, thickness and working width, put together. */
export function rollLimits(plate: Strength, roll: PlateRoll): RollLimits {
  const { coneMm2, nearShare } = capacityLimit(plate, roll);
  return {
    coneMm2,
    nearMm2: nearShare * coneMm2,
    thicknessMm: greatestThicknessMm(plate, roll),
    slantMm: greatestSlantMm(roll),
  };
}

const above = (value: number, limit: number): boolean => value > limit * (1 + AT_LIMIT_REL);

/** Where a cone lies on the chart: it passes, is near the limit (caution), or beyond it (fail). */
export function rollRegion(
  limits: RollLimits,
  { thicknessMm, slantMm }: { readonly thicknessMm: number; readonly slantMm: number },
): Verdict {
  const product = thicknessMm * slantMm;
  if (above(thicknessMm, limits.thicknessMm) || above(slantMm, limits.slantMm)) return "fail";
  if (above(product, limits.coneMm2)) return "fail";
  return above(product, limits.nearMm2) ? "caution" : "pass";
}

/** Thickness that a slant may have at most, and from which on it is near the limit; 0 beyond the longest slant. [mm] */
export function thicknessAtMm(limits: RollLimits, slantMm: number): { nearMm: number; limitMm: number } {
  if (above(slantMm, limits.slantMm)) return { nearMm: 0, limitMm: 0 };
  const most = (product: number) => Math.min(limits.thicknessMm, product / slantMm);
  return { nearMm: most(limits.nearMm2), limitMm: most(limits.coneMm2) };
}

/** A die of the rack and the plate that is bent over it: the narrowest die that opens far enough. [mm] */
export interface DieSpan {
  readonly dieMm: number;
  readonly aboveMm: number;
  readonly upToMm: number;
}

/** Which die serves which thickness, the narrowest first; plate thicker than the last has none. */
export function dieSpans({ dies }: PressBrake): DieSpan[] {
  const rising = [...new Set(dies)].toSorted((a, b) => a - b);
  return rising.flatMap((dieMm, i) => {
    const before = rising[i - 1];
    const span = {
      dieMm,
      aboveMm: before === undefined ? 0 : thickestOverMm(before),
      upToMm: thickestOverMm(dieMm),
    };
    return span.upToMm > span.aboveMm ? [span] : [];
  });
}

type Tensile = Strength["material"]["tensileMPa"];

/** Longest line that a brake air-bends over a die, and from which on its force is near the limit; both within the bed. [mm] */
export function lineOverMm(
  { tensileMPa, thicknessMm, dieMm }: { tensileMPa: Tensile; thicknessMm: number; dieMm: number },
  { bedLength, forceKN }: PressBrake,
): { nearMm: number; limitMm: number } {
  const most = (kN: number) =>
    Math.min(bedLength, longestAirBendMm({ tensileMPa, thicknessMm, dieMm, forceN: 1000 * kN }));
  return { nearMm: most(NEAR_FORCE * forceKN), limitMm: most(forceKN) };
}

/** Where a bend line lies on a brake's chart, over the narrowest die that opens far enough for its plate. */
export function brakeRegion(
  { tensileMPa, thicknessMm, lineMm }: { tensileMPa: Tensile; thicknessMm: number; lineMm: number },
  brake: PressBrake,
): Verdict {
  const [dieMm] = diesFor(thicknessMm, brake);
  if (dieMm === undefined || above(thicknessMm, thickestOverMm(dieMm))) return "fail";
  const { nearMm, limitMm } = lineOverMm({ tensileMPa, thicknessMm, dieMm }, brake);
  if (above(lineMm, limitMm)) return "fail";
  return above(lineMm, nearMm) ? "caution" : "pass";
}

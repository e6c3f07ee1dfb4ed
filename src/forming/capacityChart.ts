import { AT_LIMIT_REL } from "../geometry/tolerance.ts";
import { longestAirBendMm } from "./airBend.ts";
import { UNLISTED } from "./brakeForce.ts";
import { capacityLimit } from "./capacity.ts";
import type { Verdict } from "./check.ts";
import { diesFor, leastOpeningMm, thickestOverMm } from "./dieOpening.ts";
import { NEAR_LIMIT } from "./judge.ts";
import type { PlateRoll, PressBrake } from "./machine.ts";
import type { Strength } from "./ratedThickness.ts";
import { greatestThicknessMm } from "./thicknessLimit.ts";
import { greatestSlantMm } from "./workingWidth.ts";

/** What a roll takes as a cone, in plate of one strength: the numbers that its capacity chart is drawn from. */
export interface RollLimits {
  /** Greatest thickness times slant, and above which it is near the limit. [mm²] */
  readonly coneMm2: number;
  readonly nearMm2: number;
  /** Greatest thickness however short, above which it is near the limit, and longest slant however thin. [mm] */
  readonly thicknessMm: number;
  readonly nearThicknessMm: number;
  readonly slantMm: number;
}

/**
 * The limits of the checks of capacity, thickness and working width, put together. What the shop file leaves out makes a
 * check careful; the chart shows the plain limits, and the machine's card names what was left out.
 */
export function rollLimits(plate: Strength, roll: PlateRoll): RollLimits {
  const { coneMm2, nearShare, strength } = capacityLimit(plate, roll);
  const [near, thicknessMm] = [strength ? nearShare : NEAR_LIMIT, greatestThicknessMm(plate, roll)];
  return {
    coneMm2,
    nearMm2: near * coneMm2,
    thicknessMm,
    nearThicknessMm: near * thicknessMm,
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
  return above(product, limits.nearMm2) || above(thicknessMm, limits.nearThicknessMm) ? "caution" : "pass";
}

/** Thickness that a slant may have at most, and from which on it is near the limit; 0 beyond the longest slant. [mm] */
export function thicknessAtMm(limits: RollLimits, slantMm: number): { nearMm: number; limitMm: number } {
  if (above(slantMm, limits.slantMm)) return { nearMm: 0, limitMm: 0 };
  const most = (thicknessMm: number, product: number) =>
    slantMm === 0 ? thicknessMm : Math.min(thicknessMm, product / slantMm);
  return {
    nearMm: most(limits.nearThicknessMm, limits.nearMm2),
    limitMm: most(limits.thicknessMm, limits.coneMm2),
  };
}

/** A curve as places (x, y) in rising x. [mm] */
export type Curve = readonly (readonly [number, number])[];

/** Points of a curve from end to end. */
const STEPS = 64;

/** Even steps from one number to another, both included, and some places between that must not be missed. */
function steps(from: number, to: number, also: readonly number[] = []): number[] {
  const even = Array.from({ length: STEPS + 1 }, (_, i) => from + ((to - from) * i) / STEPS);
  return [...even, ...also.filter((one) => one > from && one < to)].toSorted((a, b) => a - b);
}

/** Thickness against slant, from no slant to `toMm`; both curves over the same slants. */
export function rollCurves(limits: RollLimits, toMm: number): { near: Curve; limit: Curve } {
  const end = Math.min(limits.slantMm, toMm);
  const kinks = [limits.nearMm2 / limits.nearThicknessMm, limits.coneMm2 / limits.thicknessMm];
  const slants = steps(0, end, kinks);
  const curve = (which: "nearMm" | "limitMm"): Curve => [
    ...slants.map((slant): [number, number] => [slant, thicknessAtMm(limits, slant)[which]]),
    [end, 0],
    [toMm, 0],
  ];
  return { near: curve("nearMm"), limit: curve("limitMm") };
}

/** A die of the rack and the plate that is bent over it: the narrowest die that opens far enough. [mm] */
export interface DieSpan {
  readonly dieMm: number;
  readonly aboveMm: number;
  readonly upToMm: number;
}

/** Which die serves which thickness, the narrowest first; plate thicker than the last has none. Nothing where no dies are listed. */
export function dieSpans({ dies = [] }: PressBrake): DieSpan[] {
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
  return { nearMm: most(NEAR_LIMIT * forceKN), limitMm: most(forceKN) };
}

/** Where a bend line lies on a brake's chart, over the narrowest die that opens far enough for its plate. */
export function brakeRegion(
  { tensileMPa, thicknessMm, lineMm }: { tensileMPa: Tensile; thicknessMm: number; lineMm: number },
  brake: PressBrake,
): Verdict {
  const [dieMm] = diesFor(thicknessMm, brake);
  if (above(thicknessMm, thickestOverMm(dieMm))) return "fail";
  const { nearMm, limitMm } = lineOverMm({ tensileMPa, thicknessMm, dieMm }, brake);
  // Over a die that nobody has listed a wider one takes less.
  const twice = longestAirBendMm({ tensileMPa, thicknessMm, dieMm, forceN: 1000 * UNLISTED * brake.forceKN });
  const reach = brake.dies ? limitMm : Math.min(brake.bedLength, twice);
  if (above(lineMm, reach)) return "fail";
  return above(lineMm, nearMm) ? "caution" : "pass";
}

/** Is the limit over the widest die a line of its own: further than over the die that serves, and not the bed all along? */
export function widestReaches(tensileMPa: Tensile, brake: PressBrake): boolean {
  const widestMm = Math.max(...(brake.dies ?? []));
  // At its thickest the plate of a die asks for most force.
  return dieSpans(brake).some(({ dieMm, upToMm: thicknessMm }) => {
    const over = (mm: number) => lineOverMm({ tensileMPa, thicknessMm, dieMm: mm }, brake).limitMm;
    return above(over(widestMm), over(dieMm)) && above(brake.bedLength, over(widestMm));
  });
}

/** Length against thickness up to `toMm`, die after die; `widest` is the limit over the widest die, whatever the thickness. */
export function brakeCurves(
  { tensileMPa, toMm }: { tensileMPa: Tensile; toMm: number },
  brake: PressBrake,
): { near: Curve; limit: Curve; widest: Curve } {
  const spans = dieSpans(brake);
  const end = brake.dies ? (spans.at(-1)?.upToMm ?? 0) : toMm;
  const wide = brake.dies && Math.max(...brake.dies);
  const whole = { aboveMm: 0, upToMm: end };
  const over = (dieMm: number, thicknessMm: number) =>
    // Plate of no thickness needs no force: the bed alone is its limit.
    thicknessMm === 0
      ? { nearMm: brake.bedLength, limitMm: brake.bedLength }
      : lineOverMm({ tensileMPa, thicknessMm, dieMm }, brake);
  const curve = (which: "nearMm" | "limitMm"): Curve => [
    ...(brake.dies ? spans : [whole]).flatMap(({ aboveMm, upToMm, ...span }) =>
      steps(aboveMm, upToMm).map((t): [number, number] => [
        t,
        over("dieMm" in span ? span.dieMm : leastOpeningMm(t), t)[which],
      ]),
    ),
    [end, 0],
    [Math.max(end, toMm), 0],
  ];
  return {
    near: curve("nearMm"),
    limit: curve("limitMm"),
    widest: steps(0, end).map((t): [number, number] => [t, over(wide ?? leastOpeningMm(t), t).limitMm]),
  };
}

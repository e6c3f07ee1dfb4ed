import { AT_LIMIT_REL } from "../geometry/tolerance.ts";
import type { BrakeAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge, state } from "./judge.ts";
import { ofShop } from "./ofShop.ts";
import type { PressBrake } from "./machine.ts";

/** Up to this thickness the die opens 8 t, above it 10 t. [mm] */
const THICK_MM = 10;
const [TIMES_THIN, TIMES_THICK] = [8, 10];

/**
 * Least die opening for air bending: 8 t up to 10 mm, 10 t above.
 *
 * @see common practice, no source
 * @example leastOpeningMm(6) // → 48
 * @example leastOpeningMm(12) // → 120
 */
export function leastOpeningMm(thicknessMm: number): number {
  return (thicknessMm <= THICK_MM ? TIMES_THIN : TIMES_THICK) * thicknessMm;
}

/**
 * The way back: thickest plate that an opening serves. [mm]
 *
 * @example thickestOverMm(48) // → 6
 * @example thickestOverMm(90) // → 10
 * @example thickestOverMm(120) // → 12
 */
export function thickestOverMm(dieMm: number): number {
  return Math.max(Math.min(THICK_MM, dieMm / TIMES_THIN), dieMm / TIMES_THICK);
}

/**
 * The dies of the rack that open far enough, narrowest first; the widest of all where none does. Where the shop does not
 * list its dies, the least opening that the thickness wants: what is asked over it holds if there is such a die. [mm]
 */
export function diesFor(thicknessMm: number, { dies }: PressBrake): readonly [number, ...number[]] {
  if (!dies) return [leastOpeningMm(thicknessMm)];
  const least = leastOpeningMm(thicknessMm) * (1 - AT_LIMIT_REL);
  const [narrowest, ...wider] = dies.filter((die) => die >= least).toSorted((a, b) => a - b);
  return narrowest === undefined ? [Math.max(...dies)] : [narrowest, ...wider];
}

/** Does the rack have a die for this thickness? [mm] */
export function dieOpening({ item, brake, dieMm, say }: BrakeAsked): Check {
  const least = leastOpeningMm(item.thicknessMm);
  const words = {
    id: "die-opening",
    title: "Die opening",
    sense: "at least" as const,
    unit: "mm",
    basis: COMMON_PRACTICE,
    rule: `die opening ≥ 8 × thickness, above ${say.length(THICK_MM)} 10 × thickness`,
  };
  if (!brake.dies)
    return state({
      ...words,
      verdict: "caution",
      advice: `The shop file lists no dies for this brake: look in the rack for one that opens ${say.length(least)} or more; force and spacing are told for ${say.length(least)}.`,
    });
  return judge({
    ...words,
    value: dieMm,
    limit: least,
    ...ofShop(say, "value"),
    beyond: "fail",
    advice: (verdict) =>
      verdict === "pass"
        ? `Bend over the ${say.shops(dieMm)} die; this thickness wants at least ${say.length(least)}.`
        : `The widest die opens ${say.shops(dieMm)}, and ${say.length(item.thicknessMm)} plate wants at least ${say.length(least)}: get a wider die, or have it bent.`,
  });
}

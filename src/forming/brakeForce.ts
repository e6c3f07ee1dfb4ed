import type { BrakeAsked } from "./asked.ts";
import { longestLineMm } from "./brakeBed.ts";
import type { Check } from "./check.ts";
import { judge } from "./judge.ts";

/** Constant of the force formula for a V die, and the highest that is in use: books and shops differ by a fifth. [-] */
const V_DIE = 1.33;
const V_DIE_HIGHEST = 1.6;
/** Above this share of the brake's force it is near the limit: the spread of the constants alone may reach it. [-] */
export const NEAR_FORCE = 0.8;
const N_PER_KN = 1000;

export interface AirBend {
  readonly tensileMPa: number;
  readonly lineMm: number;
  readonly thicknessMm: number;
  readonly dieMm: number;
  readonly constant?: number;
}

/**
 * Greatest force of one air bend over a V die: F = K·TS·w·t²/V, K = 1.33.
 *
 * @param bend tensile strength [MPa], line w, thickness t, die opening V [mm]
 * @returns [N]
 * @see groover-memory; the constants in use run from 1.33 to 1.6
 * @example airBendForceN({ tensileMPa: 450, lineMm: 44.5, thicknessMm: 3.2, dieMm: 25 }) // → 10908.979
 */
export function airBendForceN({ tensileMPa, lineMm, thicknessMm, dieMm, constant = V_DIE }: AirBend): number {
  return (constant * tensileMPa * lineMm * thicknessMm * thicknessMm) / dieMm;
}

/**
 * The way back: the longest line that this force bends. [mm]
 *
 * @example longestAirBendMm({ tensileMPa: 450, thicknessMm: 3.2, dieMm: 25, forceN: 10908.979 }) // → 44.500
 */
export function longestAirBendMm(bend: Omit<AirBend, "lineMm"> & { readonly forceN: number }): number {
  return bend.forceN / airBendForceN({ ...bend, lineMm: 1 });
}

/** Where no dies are listed one twice as wide may be in the rack, and takes half the force; a wider one no longer forms the plate. Derived here. [-] */
export const UNLISTED = 2;

/** Has the brake the force for its longest line? Over a die that nobody has named a wider one takes less: refused beyond twice. [kN] */
export function brakeForce({ item, brake, dieMm, say }: BrakeAsked): Check {
  const bend = {
    tensileMPa: item.material.tensileMPa,
    lineMm: longestLineMm(item),
    thicknessMm: item.thicknessMm,
    dieMm,
  };
  const value = airBendForceN(bend) / N_PER_KN;
  const high = airBendForceN({ ...bend, constant: V_DIE_HIGHEST }) / N_PER_KN;
  const limit = brake.forceKN;
  const force = `${say.force(value)} to ${say.force(high)} a hit over the ${say.length(dieMm)} die`;
  const advice = {
    pass: `About ${force}, as the constant is taken (1.33 to 1.6); the brake has ${say.force(limit)}.`,
    caution:
      value > limit
        ? `About ${force}, more than the ${say.force(limit)} of the brake: use a wider die, with at least ${say.length((dieMm * value) / limit)}, or shorter courses.`
        : `About ${force}, near the ${say.force(limit)} of the brake: plate is often stronger than its grade, so ask the brake's manual and try the shortest line first.`,
    fail: `About ${force}, more than the ${say.force(limit)} of the brake: use a wider die or shorter courses, or have it bent.`,
  };
  return judge({
    id: "brake-force",
    title: "Force of a hit",
    value,
    limit,
    sense: "at most",
    unit: "kN",
    beyond: brake.dies || value > UNLISTED * limit ? "fail" : "caution",
    nearShare: NEAR_FORCE,
    basis: "groover-memory",
    rule: "1.33 × tensile strength × line length × thickness² / die opening ≤ force of the brake",
    advice: (verdict) => advice[verdict],
  });
}

import { airBendForceN, V_DIE_HIGHEST } from "./airBend.ts";
import type { BrakeAsked } from "./asked.ts";
import { longestLineMm } from "./brakeBed.ts";
import type { Check } from "./check.ts";
import { judge, NEAR_LIMIT } from "./judge.ts";

const N_PER_KN = 1000;

/** Where no dies are listed one twice as wide may be in the rack, and takes half the force; a wider one no longer forms the plate. Derived here. [-] */
export const UNLISTED = 2;

/** The longest hit: of the lines the length that is bent, else a line from end to end. [mm] */
function bentMm(item: BrakeAsked["item"], bends: BrakeAsked["bends"]): number {
  const bent = (bends?.hits ?? []).map(({ lengthMm, stopsShortMm }) => lengthMm - stopsShortMm);
  return bent.length > 0 ? Math.max(...bent) : longestLineMm(item);
}

/** Has the brake the force for its longest line? Over a die that nobody has named a wider one takes less: refused beyond twice. [kN] */
export function brakeForce({ item, brake, dieMm, bends, say }: BrakeAsked): Check {
  const bend = {
    tensileMPa: item.material.tensileMPa,
    lineMm: bentMm(item, bends),
    thicknessMm: item.thicknessMm,
    dieMm,
  };
  const value = airBendForceN(bend) / N_PER_KN;
  const high = airBendForceN({ ...bend, constant: V_DIE_HIGHEST }) / N_PER_KN;
  const limit = brake.forceKN;
  const force = `${say.force(value)} to ${say.force(high)} a hit over the ${say.shops(dieMm)} die`;
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
    nearShare: NEAR_LIMIT,
    basis: "groover-memory",
    rule: "1.33 × tensile strength × bent length × thickness² / die opening ≤ force of the brake",
    advice: (verdict) => advice[verdict],
  });
}

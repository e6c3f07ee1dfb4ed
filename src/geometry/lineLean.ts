import { circleRim } from "./rim.ts";
import { type Lean, leanAt } from "./skin.ts";
import { direction, length2, dot2, type Vec2, type Vec3 } from "./vector.ts";

/**
 * How the plane leans that touches a skin along one line: what lies between its tangents at both ends in plan, over the
 * height, tan β = (A − B)·n/H.
 *
 * @param a lower end of the line, b its upper end [mm]
 * @param planRad normal angle of the line [rad]
 * @returns from upright, positive where the wall comes in towards end B [rad]
 */
export function leanOfLine(a: Vec3, b: Vec3, planRad: number): number {
  const inward: Vec2 = [a[0] - b[0], a[1] - b[1]];
  return Math.atan2(dot2(inward, direction(planRad)), b[2] - a[2]);
}

/** The same and its change with the normal angle for two round ends, from their centres in plan and radii. [mm, rad] */
export function leanOfRounds(
  a: { readonly centre: Vec2; readonly radiusMm: number },
  b: { readonly centre: Vec2; readonly radiusMm: number },
  { heightMm, planRad }: { readonly heightMm: number; readonly planRad: number },
): Lean {
  const [lower, upper] = [circleRim(a.centre, a.radiusMm), circleRim(b.centre, b.radiusMm)];
  return leanAt({ a: lower, b: upper, baseMm: 0, heightMm }, planRad, 1);
}

/** Speed of the touching plane at a mean lean, √((Δθ cos β)² + Δβ²): nearly what it turns between two lines. [rad] */
export const turnNearlyRad = (planRad: number, meanLeanRad: number, leanChangeRad: number): number =>
  length2([planRad * Math.cos(meanLeanRad), leanChangeRad]);

/** The point of a curve that lies farthest towards a direction in plan; undefined of a curve without points. */
export function farthestTowards(curve: readonly Vec3[], planRad: number): Vec3 | undefined {
  const towards = direction(planRad);
  const reach = ([x, y]: Vec3) => dot2([x, y], towards);
  return curve.toSorted((p, q) => reach(q) - reach(p))[0];
}

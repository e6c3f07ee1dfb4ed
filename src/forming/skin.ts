import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import type { FormingCase } from "./case.ts";

/** Are the element lines parallel, so that it is rolled as a cylinder: a pipe, upright or leaning? */
export function isPipe({ rimsMm }: FormingCase): boolean {
  return rimsMm.large - rimsMm.small <= SAME_POINT_MM;
}

/** Does it run to a point, so that there is no small edge? */
export function isPointed({ rimsMm }: FormingCase): boolean {
  return rimsMm.small <= SAME_POINT_MM;
}

/**
 * Half angle of the right cone of the same rims and mean slant: its own for a right cone, 0 for a pipe, upright or
 * leaning. sin α = (U − u)/(2π s), s half-way between the longest and the shortest element. [rad]
 *
 * @see derived here
 */
export function meanHalfAngleRad({ cone, rimsMm, slantMm }: FormingCase): number {
  if (cone) return cone.halfAngleRad;
  const mean = (slantMm.longest + slantMm.shortest) / 2;
  return Math.asin(Math.min(1, Math.max(0, (rimsMm.large - rimsMm.small) / (2 * Math.PI * mean))));
}

/** Does a blank close on itself round a roll or a punch, or is it a segment that comes off sideways? */
export function closesOnItself({ pieces }: FormingCase): boolean {
  return pieces === 1;
}

/**
 * Tightest radius of the middle surface square to an element, over both ends. A point has none. [mm]
 * Null where an end is not round, or where both ends are points.
 */
export function tightestRadiusMm({ tightestRadiusMm: radius }: FormingCase): number | null {
  if (!radius) return null;
  const round = [radius.large, radius.small].filter((one) => one > SAME_POINT_MM);
  return round.length > 0 ? Math.min(...round) : null;
}

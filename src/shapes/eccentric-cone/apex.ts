import { allRound } from "../../geometry/measure.ts";
import { leanAt, planeNormal, type Skin } from "../../geometry/skin.ts";
import { cross3, dot3, type Vec3 } from "../../geometry/vector.ts";

/** Where the tip of a parallel surface goes. */
export interface MovedApex {
  /** Direction and size of its move for each mm of distance along the normal. [mm/mm] */
  readonly perMm: Vec3;
  /** Greatest departure from the exact parallel planes for each mm of distance. [mm/mm] */
  readonly departure: number;
}

/**
 * The tip of an oblique cone has no exact place on a parallel surface: planes a distance d from the old ones no longer
 * meet in one point, unless the cone is a right one. The best point is P + d v with v from least squares on N·v = 1
 * over the tangent planes all round. Derived here.
 */
export function movedApex(cone: Skin): MovedApex {
  const normals = allRound().map((theta) => planeNormal(theta, leanAt(cone, theta, 1).beta));
  const sum = (f: (n: Vec3) => number) => normals.reduce((total, n) => total + f(n), 0);
  const row = (i: 0 | 1 | 2): Vec3 => [
    sum((n) => n[i] * n[0]),
    sum((n) => n[i] * n[1]),
    sum((n) => n[i] * n[2]),
  ];
  const [p, q, r] = [row(0), row(1), row(2)];
  const right: Vec3 = [sum((n) => n[0]), sum((n) => n[1]), sum((n) => n[2])];
  const whole = dot3(p, cross3(q, r)); // Cramer's rule: the matrix is symmetric, so rows serve as columns
  const perMm: Vec3 = [
    dot3(right, cross3(q, r)) / whole,
    dot3(p, cross3(right, r)) / whole,
    dot3(p, cross3(q, right)) / whole,
  ];
  return { perMm, departure: Math.max(...normals.map((n) => Math.abs(dot3(n, perMm) - 1))) };
}

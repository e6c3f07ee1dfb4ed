import { SAME_ANGLE, SAME_POINT_MM } from "./tolerance.ts";
import { add2, between2, cross2, distance2, dot2, left2, scale2, sub2, unit2, type Vec2 } from "./vector.ts";

/** A straight line without end: a point on it, and its direction of length 1. */
export interface StraightLine {
  readonly at: Vec2;
  readonly dir: Vec2;
}

export const lineThrough = (p: Vec2, q: Vec2): StraightLine => ({ at: p, dir: unit2(sub2(q, p)) });

/** How far a point lies to the left of a line. [mm] */
export const leftOf = ({ at, dir }: StraightLine, p: Vec2): number => cross2(dir, sub2(p, at));

/** What lies on one side of a line comes to lie as far on the other. */
export const mirroredAt = (line: StraightLine, p: Vec2): Vec2 =>
  add2(p, scale2(left2(line.dir), -2 * leftOf(line, p)));

/** The line that turns one line over onto the other, both going the same way; undefined where they go opposite ways. */
export function halfWay(one: StraightLine, other: StraightLine): StraightLine | undefined {
  const sum = add2(one.dir, other.dir);
  if (dot2(sum, sum) < SAME_ANGLE) return undefined;
  const dir = unit2(sum);
  const turn = cross2(one.dir, other.dir);
  // Where they meet; lines in step meet nowhere, and any point half-way between them does.
  const reach = cross2(sub2(other.at, one.at), other.dir) / turn;
  const far = Math.abs(turn) < SAME_ANGLE;
  const foot = add2(other.at, scale2(other.dir, dot2(sub2(one.at, other.at), other.dir)));
  return { at: far ? between2(one.at, foot, 1 / 2) : add2(one.at, scale2(one.dir, reach)), dir };
}

/** Where a row of points crosses a line, and behind which of them; undefined where it does so not once exactly. */
export function crossing(
  points: readonly Vec2[],
  line: StraightLine,
): { readonly at: Vec2; readonly behind: number } | undefined {
  const found: { at: Vec2; behind: number }[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    const [p, q] = [points[i] as Vec2, points[i + 1] as Vec2];
    const [a, b] = [leftOf(line, p), leftOf(line, q)];
    if ((a > 0 && b > 0) || (a < 0 && b < 0)) continue;
    const at = a === b ? p : between2(p, q, a / (a - b));
    if (found.every((one) => distance2(one.at, at) > SAME_POINT_MM)) found.push({ at, behind: i });
  }
  return found.length === 1 ? found[0] : undefined;
}

import { NO_LENGTH_MM } from "./tolerance.ts";
import { add2, cross2, distance2, left2, scale2, sub2, unit2, type Vec2 } from "./vector.ts";

/** The two developed ends of a blank, both from seam 1 to seam 2. One of them may be a single point. [mm] */
export interface Ends {
  readonly a: readonly Vec2[];
  readonly b: readonly Vec2[];
}

/** A straight line on the sheet with its left side, directed from end A to end B. */
interface Line {
  readonly at: Vec2;
  readonly along: Vec2;
}

const lineThrough = (from: Vec2, to: Vec2): Line => ({ at: from, along: unit2(sub2(to, from)) });
const leftOf = (line: Line, p: Vec2): number => cross2(line.along, sub2(p, line.at));

/** Is the whole end one point, as at the apex of a cone? */
export const isPoint = (path: readonly Vec2[]): boolean =>
  path.every((p) => distance2(p, path[0] as Vec2) <= NO_LENGTH_MM);

interface Crossing {
  /** The path point just after it. */
  readonly index: number;
  readonly point: Vec2;
}

/** Where a path first gets as far away as `reach`, by a distance that is less than that at its start. */
function firstReach(path: readonly Vec2[], far: (p: Vec2) => number, reach: number): Crossing | undefined {
  for (let index = 1; index < path.length; index++) {
    const [p, q] = [path[index - 1] as Vec2, path[index] as Vec2];
    const [before, after] = [far(p) - reach, far(q) - reach];
    if (before < 0 && after >= 0) {
      const share = before / (before - after);
      return { index, point: add2(p, scale2(sub2(q, p), share)) };
    }
  }
  return undefined;
}

const reversed = (path: readonly Vec2[]): Vec2[] => [...path].reverse();

/** The path without its beginning, which lies nearer than `reach`. */
function withoutStart(path: readonly Vec2[], far: (p: Vec2) => number, reach: number): Vec2[] | undefined {
  const crossing = firstReach(path, far, reach);
  return crossing && [crossing.point, ...path.slice(crossing.index)];
}

/** Where the two seam edges of a blank that ends in a point meet after each has given up half the gap. */
function apexAfterGap(apex: Vec2, first: Vec2, last: Vec2, half: number): Vec2 {
  const u = unit2(sub2(first, apex));
  const v = unit2(sub2(last, apex));
  const turn = Math.atan2(cross2(v, u), v[0] * u[0] + v[1] * u[1]); // from seam 2 counter-clockwise to seam 1
  const sector = turn > 0 ? turn : turn + 2 * Math.PI;
  const [sin, cos] = [Math.sin(sector / 2), Math.cos(sector / 2)];
  const bisector: Vec2 = [v[0] * cos - v[1] * sin, v[0] * sin + v[1] * cos];
  return add2(apex, scale2(bisector, half / sin));
}

/**
 * Takes half the gap off each seam edge, parallel to it.
 * @returns undefined where the gap is wider than an end
 */
export function withGap(ends: Ends, gapMm: number): Ends | undefined {
  if (gapMm <= 0) return ends;
  const half = gapMm / 2;
  const [a0, b0] = [ends.a[0] as Vec2, ends.b[0] as Vec2];
  const [aN, bN] = [ends.a.at(-1) as Vec2, ends.b.at(-1) as Vec2];
  const seam1 = lineThrough(a0, b0);
  const seam2 = lineThrough(aN, bN);
  const trimmed = (path: readonly Vec2[]): Vec2[] | undefined => {
    if (isPoint(path)) return path === ends.b ? [apexAfterGap(b0, a0, aN, half)] : undefined;
    const rest = withoutStart(path, (p) => leftOf(seam1, p), half);
    const turned = rest && withoutStart(reversed(rest), (p) => -leftOf(seam2, p), half);
    return turned && reversed(turned);
  };
  const [a, b] = [trimmed(ends.a), trimmed(ends.b)];
  return a && b && { a, b };
}

/**
 * Cuts a development that was continued past seam 2 along a parallel to that seam. At a point the lap is cut off
 * square to the seam.
 *
 * @param seamIndex station of seam 2 in both paths
 * @returns undefined where the development ends before the parallel is reached
 */
export function withLap(ends: Ends, seamIndex: number, lapMm: number): Ends | undefined {
  const [foot, head] = [ends.a[seamIndex] as Vec2, ends.b[seamIndex] as Vec2];
  const seam2 = lineThrough(foot, head);
  const extended = (path: readonly Vec2[]): Vec2[] | undefined => {
    const tail = path.slice(seamIndex);
    if (isPoint(path)) return [head, add2(head, scale2(left2(seam2.along), lapMm))];
    const end = firstReach(tail, (p) => leftOf(seam2, p), lapMm);
    return end && [...path.slice(0, seamIndex + end.index), end.point];
  };
  const [a, b] = [extended(ends.a), extended(ends.b)];
  return a && b && { a, b };
}

/** How far past seam 2 the end of a continued development reaches, the nearer of the two ends. [mm] */
export function lapReach(ends: Ends, seamIndex: number): number {
  const seam2 = lineThrough(ends.a[seamIndex] as Vec2, ends.b[seamIndex] as Vec2);
  const reaches = [ends.a, ends.b]
    .filter((path) => !isPoint(path))
    .map((path) => leftOf(seam2, path.at(-1) as Vec2));
  return Math.min(...reaches);
}

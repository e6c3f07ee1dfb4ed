import { LAY_TOUCH_MM } from "../geometry/tolerance.ts";
import { cross2, distance2, dot2, sub2, type Vec2 } from "../geometry/vector.ts";
import { outlineSides, type Walks, walksOf, windingOf } from "./walks.ts";

/** An outline with its upright rectangle. [mm] */
interface Boxed {
  readonly walks: Walks;
  readonly corners: readonly Vec2[];
  readonly low: Vec2;
  readonly high: Vec2;
}

/**
 * Do outlines lie at least so far apart, each from each, to within `LAY_TOUCH_MM`? Asked of every laying before it is
 * shown; it measures distances and knows nothing of how they were laid. [mm]
 */
export function liesApart(outlines: readonly (readonly Vec2[])[], spacingMm: number): boolean {
  const all = outlines.map(boxed);
  return all.every((one, i) => all.slice(i + 1).every((other) => isPairApart(one, other, spacingMm)));
}

/** Is every point of a ring at least so far outside an outline, to within `LAY_TOUCH_MM`? */
export const holdsClear = (ring: readonly Vec2[], outline: readonly Vec2[], byMm: number): boolean => {
  const [round, within] = [boxed(ring), boxed(outline)];
  const isWithin = within.corners.every(([x, y]) => windingOf(round.walks, x, y) !== 0);
  return isWithin && isFarAlong(round, within, byMm) && isFarAlong(within, round, byMm);
};

function boxed(outline: readonly Vec2[]): Boxed {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  outline.forEach(([x, y]) => {
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [bottom, top] = [Math.min(bottom, y), Math.max(top, y)];
  });
  return { walks: walksOf(outlineSides(outline)), corners: outline, low: [left, bottom], high: [right, top] };
}

function isPairApart(p: Boxed, q: Boxed, spacingMm: number): boolean {
  const gap = Math.max(
    p.low[0] - q.high[0],
    q.low[0] - p.high[0],
    p.low[1] - q.high[1],
    q.low[1] - p.high[1],
  );
  if (gap >= spacingMm) return true;
  // Outlines that touch may reach into each other by a hair.
  if (spacingMm <= LAY_TOUCH_MM) return !reachesInto(p, q) && !reachesInto(q, p) && !cross(p, q);
  const outside = (one: Boxed, other: Boxed) => {
    const [x, y] = one.corners[0] as Vec2;
    return windingOf(other.walks, x, y) === 0;
  };
  return (
    outside(p, q) &&
    outside(q, p) &&
    !cross(p, q) &&
    isFarAlong(p, q, spacingMm) &&
    isFarAlong(q, p, spacingMm)
  );
}

/** Is every corner of the one so far from the sides of the other? */
const isFarAlong = (one: Boxed, other: Boxed, byMm: number): boolean =>
  one.corners.every((p) => distanceTo(p, other, byMm) >= byMm - LAY_TOUCH_MM);

/** Does a corner of the one lie in the other, deeper than a hair? */
const reachesInto = (one: Boxed, other: Boxed): boolean =>
  one.corners.some(
    (p) => windingOf(other.walks, p[0], p[1]) !== 0 && distanceTo(p, other, LAY_TOUCH_MM) > LAY_TOUCH_MM,
  );

/** Distance to an outline; what is further than `most` is only told as such. */
function distanceTo(p: Vec2, { corners }: Boxed, most: number): number {
  let least = Infinity;
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] as Vec2;
    if (Math.min(a[0], b[0]) - p[0] > most || p[0] - Math.max(a[0], b[0]) > most) return;
    if (Math.min(a[1], b[1]) - p[1] > most || p[1] - Math.max(a[1], b[1]) > most) return;
    const side = sub2(b, a);
    const long = dot2(side, side);
    const share = long === 0 ? 0 : Math.min(1, Math.max(0, dot2(sub2(p, a), side) / long));
    least = Math.min(least, distance2(p, [a[0] + share * side[0], a[1] + share * side[1]]));
  });
  return least;
}

/** Do two sides cross with all four ends clear of the other side? So do bars laid crosswise, without a corner in each other. */
function cross(p: Boxed, q: Boxed): boolean {
  return p.corners.some((a, i) => {
    const b = p.corners[(i + 1) % p.corners.length] as Vec2;
    return q.corners.some((c, j) => {
      const d = q.corners[(j + 1) % q.corners.length] as Vec2;
      const apart = (from: Vec2, to: Vec2, r: Vec2, s: Vec2): boolean => {
        const side = sub2(to, from);
        const clear = LAY_TOUCH_MM * distance2(from, to);
        const [one, other] = [cross2(side, sub2(r, from)), cross2(side, sub2(s, from))];
        return Math.min(one, other) < -clear && Math.max(one, other) > clear;
      };
      return apart(a, b, c, d) && apart(c, d, a, b);
    });
  });
}

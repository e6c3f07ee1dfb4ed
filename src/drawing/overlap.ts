import { cross2, dot2, sub2, unit2, type Vec2 } from "../geometry/vector.ts";

/** A rectangle at any angle, by its corners in order. */
export type Rectangle = readonly [Vec2, Vec2, Vec2, Vec2];

/** Do two rectangles share any area? They do unless a side of one keeps them apart (separating axis). */
export function rectanglesOverlap(p: Rectangle, q: Rectangle): boolean {
  return !keepsApart(p, q) && !keepsApart(q, p);
}

function keepsApart(p: Rectangle, q: Rectangle): boolean {
  for (const side of [sub2(p[1], p[0]), sub2(p[3], p[0])]) {
    const reach = (r: Rectangle) => r.map((corner) => dot2(corner, side));
    const [a, b] = [reach(p), reach(q)];
    if (Math.max(...a) <= Math.min(...b) || Math.max(...b) <= Math.min(...a)) return true;
  }
  return false;
}

/** Does a straight line run through a rectangle? Liang and Barsky's clipping, in the rectangle's own axes. */
export function segmentMeets(from: Vec2, to: Vec2, rectangle: Rectangle): boolean {
  const [origin, right, , up] = rectangle;
  const [u, v] = [unit2(sub2(right, origin)), unit2(sub2(up, origin))];
  const [long, high] = [dot2(sub2(right, origin), u), dot2(sub2(up, origin), v)];
  const start: Vec2 = [dot2(sub2(from, origin), u), dot2(sub2(from, origin), v)];
  const run: Vec2 = [dot2(sub2(to, from), u), dot2(sub2(to, from), v)];
  let [enter, leave] = [0, 1];
  for (const [step, room] of [
    [-run[0], start[0]],
    [run[0], long - start[0]],
    [-run[1], start[1]],
    [run[1], high - start[1]],
  ] as const) {
    if (step === 0) {
      if (room <= 0) return false;
    } else if (step < 0) enter = Math.max(enter, room / step);
    else leave = Math.min(leave, room / step);
  }
  return enter < leave;
}

/** Do two straight lines cross, touching not counted? */
export function segmentsCross(p: Vec2, q: Vec2, r: Vec2, s: Vec2): boolean {
  const side = (a: Vec2, b: Vec2, c: Vec2) => Math.sign(cross2(sub2(b, a), sub2(c, a)));
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
}

import { distance2, dot2, sub2, type Vec2 } from "../geometry/vector.ts";

/** A rectangle at any angle, by its corners in order. */
export type Rectangle = readonly [Vec2, Vec2, Vec2, Vec2];

/** A label's corners with clear room all round. */
export function roomRound([a, b, c, d]: Rectangle, clear: number): Rectangle {
  const long = distance2(a, b);
  const [ux, uy] = [((b[0] - a[0]) / long) * clear, ((b[1] - a[1]) / long) * clear];
  return [
    [a[0] - ux + uy, a[1] - uy - ux],
    [b[0] + ux + uy, b[1] + uy - ux],
    [c[0] + ux - uy, c[1] + uy + ux],
    [d[0] - ux - uy, d[1] - uy + ux],
  ];
}

/** Do two rectangles share any area? They do unless a side of one keeps them apart (separating axis). */
export function rectanglesOverlap(p: Rectangle, q: Rectangle): boolean {
  return !keepsApart(p, q) && !keepsApart(q, p);
}

function keepsApart(p: Rectangle, q: Rectangle): boolean {
  return keepsApartAlong(p, q, sub2(p[1], p[0])) || keepsApartAlong(p, q, sub2(p[3], p[0]));
}

function keepsApartAlong(p: Rectangle, q: Rectangle, side: Vec2): boolean {
  // One by one: a drawing asks it of every label for many places, and lists of reaches would be thrown away at once.
  const a0 = dot2(p[0], side);
  const a1 = dot2(p[1], side);
  const a2 = dot2(p[2], side);
  const a3 = dot2(p[3], side);
  const b0 = dot2(q[0], side);
  const b1 = dot2(q[1], side);
  const b2 = dot2(q[2], side);
  const b3 = dot2(q[3], side);
  return (
    Math.max(a0, a1, a2, a3) <= Math.min(b0, b1, b2, b3) ||
    Math.max(b0, b1, b2, b3) <= Math.min(a0, a1, a2, a3)
  );
}

/**
 * Does a straight line run through a rectangle? Ready to be asked of many lines, for a drawing asks it thousands of times.
 * Liang and Barsky's clipping, in the rectangle's own axes.
 */
export function meeting(rectangle: Rectangle): (from: Vec2, to: Vec2) => boolean {
  const [[ox, oy], right, , up] = rectangle;
  const [rx, ry, vx, vy] = [right[0] - ox, right[1] - oy, up[0] - ox, up[1] - oy];
  const [long, high] = [Math.sqrt(rx * rx + ry * ry), Math.sqrt(vx * vx + vy * vy)];
  const [ux, uy, wx, wy] = [rx / long, ry / long, vx / high, vy / high];
  return (from, to) => {
    const x = from[0] - ox;
    const y = from[1] - oy;
    const dx = to[0] - from[0];
    const dy = to[1] - from[1];
    const along = dx * ux + dy * uy;
    const across = dx * wx + dy * wy;
    const start = x * ux + y * uy;
    const height = x * wx + y * wy;
    // Nearly all lines that are asked of pass by with both of their ends beyond one side.
    if ((start <= 0 && start + along <= 0) || (height <= 0 && height + across <= 0)) return false;
    if (along === 0 && !(start > 0 && start < long)) return false;
    if (across === 0 && !(height > 0 && height < high)) return false;
    let enter = 0;
    let leave = 1;
    if (along > 0) {
      enter = Math.max(enter, -start / along);
      leave = Math.min(leave, (long - start) / along);
    } else if (along < 0) {
      enter = Math.max(enter, (long - start) / along);
      leave = Math.min(leave, -start / along);
    }
    if (across > 0) {
      enter = Math.max(enter, -height / across);
      leave = Math.min(leave, (high - height) / across);
    } else if (across < 0) {
      enter = Math.max(enter, (high - height) / across);
      leave = Math.min(leave, -height / across);
    }
    return enter < leave;
  };
}

/** On which side of a line from one point to another a third lies; nought on it. */
const side = (a: Vec2, b: Vec2, c: Vec2): number =>
  Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));

/** Do two straight lines cross, touching not counted? */
export const segmentsCross = (p: Vec2, q: Vec2, r: Vec2, s: Vec2): boolean =>
  side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;

/** Do two straight lines whose upright boxes touch have a point in common? A line through the corner of an outline does. */
export const segmentsMeet = (p: Vec2, q: Vec2, r: Vec2, s: Vec2): boolean =>
  side(p, q, r) * side(p, q, s) <= 0 && side(r, s, p) * side(r, s, q) <= 0;

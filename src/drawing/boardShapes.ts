import type { Vec2 } from "../geometry/vector.ts";
import { flatten } from "./flatten.ts";
import type { Box, Stroke } from "./model.ts";
import type { Rectangle } from "./overlap.ts";
import { thin } from "./thin.ts";

/** Outlines of many points are drawn at one scale after another until one fits; each is thinned once for each scale. */
const thinned = new WeakMap<readonly Vec2[], Map<number, readonly Vec2[]>>();
const MANY = 50;

/** A line as it is tested for crossings: thinned to within so much. */
export function coarse(shape: Stroke["shape"], within: number): readonly Vec2[] {
  if (shape.type !== "path" || shape.points.length < MANY) return thin(flatten(shape), within);
  const known = thinned.get(shape.points) ?? new Map<number, readonly Vec2[]>();
  thinned.set(shape.points, known);
  const points = known.get(within) ?? thin(flatten(shape), within);
  known.set(within, points);
  return points;
}

/** The box of a line from one point to another. */
export const boxOfTwo = ([x, y]: Vec2, [u, v]: Vec2): Box => ({
  left: Math.min(x, u),
  right: Math.max(x, u),
  bottom: Math.min(y, v),
  top: Math.max(y, v),
});

/** A label's corners with clear room all round. */
export function roomRound([a, b, c, d]: Rectangle, clear: number): Rectangle {
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [((b[0] - a[0]) / long) * clear, ((b[1] - a[1]) / long) * clear];
  return [
    [a[0] - ux + uy, a[1] - uy - ux],
    [b[0] + ux + uy, b[1] + uy - ux],
    [c[0] + ux - uy, c[1] + uy + ux],
    [d[0] - ux - uy, d[1] - uy + ux],
  ];
}

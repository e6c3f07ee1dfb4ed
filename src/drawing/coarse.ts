import type { Vec2 } from "../geometry/vector.ts";
import { flatten } from "./flatten.ts";
import type { Stroke } from "./model.ts";
import { thin } from "./thin.ts";

/** Outlines of many points are drawn at one scale after another until one fits; each is thinned once for each scale. */
const thinned = new WeakMap<readonly Vec2[], Map<number, readonly Vec2[]>>();
const MANY = 50;

/** The corners of a shape, those left out that lie within so much of the line without them. [mm] */
export function coarse(shape: Stroke["shape"], within: number): readonly Vec2[] {
  if (shape.type !== "path" || shape.points.length < MANY) return thin(flatten(shape), within);
  const known = thinned.get(shape.points) ?? new Map<number, readonly Vec2[]>();
  thinned.set(shape.points, known);
  const points = known.get(within) ?? thin(flatten(shape), within);
  known.set(within, points);
  return points;
}

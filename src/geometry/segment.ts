import { cross2, distance2, dot2, length2, sub2, type Vec2 } from "./vector.ts";

/** How far a point lies from the nearest point of a straight piece. [mm] */
export function toSegment(p: Vec2, from: Vec2, to: Vec2): number {
  const run = sub2(to, from);
  const long = length2(run);
  const out = sub2(p, from);
  const along = dot2(out, run);
  if (long === 0 || along < 0) return length2(out);
  if (along > long * long) return distance2(p, to);
  return Math.abs(cross2(run, out)) / long;
}

/** Distance from a point to a row of points joined by straight lines. [mm] */
export function toPath(p: Vec2, path: readonly Vec2[]): number {
  let least = Infinity;
  for (let i = 0; i + 1 < path.length; i++)
    least = Math.min(least, toSegment(p, path[i] as Vec2, path[i + 1] as Vec2));
  return least;
}

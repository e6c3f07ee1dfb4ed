import { cross2, distance2, dot2, length2, sub2, type Vec2 } from "../geometry/vector.ts";

/** How far a point lies from a straight piece. [mm] */
export function away(p: Vec2, from: Vec2, to: Vec2): number {
  const run = sub2(to, from);
  const long = length2(run);
  const out = sub2(p, from);
  const along = dot2(out, run);
  if (long === 0 || along < 0) return length2(out);
  if (along > long * long) return distance2(p, to);
  return Math.abs(cross2(run, out)) / long;
}

/** Leave out points that lie within `within` of the line without them (Douglas and Peucker); the ends stay. [mm] */
export function thin(points: readonly Vec2[], within: number): Vec2[] {
  if (points.length < 3) return [...points];
  const keep = new Set([0, points.length - 1]);
  const spans: [number, number][] = [[0, points.length - 1]];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [from, to] = span;
    let [worst, at] = [within, -1];
    for (let i = from + 1; i < to; i++) {
      const gap = away(points[i] as Vec2, points[from] as Vec2, points[to] as Vec2);
      if (gap > worst) [worst, at] = [gap, i];
    }
    if (at < 0) continue;
    keep.add(at);
    spans.push([from, at], [at, to]);
  }
  return points.filter((_, i) => keep.has(i));
}

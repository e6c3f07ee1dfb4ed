import { fromSegment } from "../geometry/segment.ts";
import type { Vec2 } from "../geometry/vector.ts";

/** Leave out points that lie within `within` of the line without them (Douglas and Peucker); the ends stay. [mm] */
export function thin(points: readonly Vec2[], within: number): Vec2[] {
  if (points.length < 3) return [...points];
  const keep = new Uint8Array(points.length);
  keep[0] = keep[points.length - 1] = 1;
  // Two numbers a stretch: from where, and to where.
  const spans = [0, points.length - 1];
  while (spans.length > 0) {
    const to = spans.pop() as number;
    const from = spans.pop() as number;
    const gapOf = fromSegment(points[from] as Vec2, points[to] as Vec2);
    let worst = within;
    let at = -1;
    for (let i = from + 1; i < to; i++) {
      const gap = gapOf(points[i] as Vec2);
      if (gap > worst) {
        worst = gap;
        at = i;
      }
    }
    if (at < 0) continue;
    keep[at] = 1;
    spans.push(from, at, at, to);
  }
  return points.filter((_, i) => keep[i] === 1);
}

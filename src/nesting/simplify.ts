import { crossesItself } from "../geometry/polygon.ts";
import { add2, cross2, distance2, scale2, sub2, type Vec2 } from "../geometry/vector.ts";

/** One corner fewer: the corners from `at` on, so many, become one or none, at a cost of plate that lies so far out. [mm] */
interface Step {
  readonly at: number;
  readonly corners: number;
  readonly by: readonly Vec2[];
  readonly outMm: number;
}

/**
 * An outline with fewer corners that still encloses the first, counter-clockwise: hollow corners are cut across, and
 * sides between bulging corners give way to the crossing of their neighbours. The steps that add least come first, until
 * no more than `most` corners are left.
 */
export function simplified(outline: readonly Vec2[], most: number): readonly Vec2[] {
  let points = [...outline];
  while (points.length > most) {
    let best: Step | undefined;
    for (let i = 0; i < points.length; i++)
      for (const step of stepsAt(points, i)) if (!best || step.outMm < best.outMm) best = step;
    if (!best) break;
    const { at, corners, by } = best;
    // Turned so that the step does not run over the end of the row.
    const turned = [...points.slice(at), ...points.slice(0, at)];
    points = [...by, ...turned.slice(corners)];
  }
  return crossesItself(points) ? outline : points;
}

function stepsAt(points: readonly Vec2[], i: number): Step[] {
  const point = (k: number) => points[(i + k + points.length) % points.length] as Vec2;
  const [before, p, q, after] = [point(-1), point(0), point(1), point(2)];
  const turnAt = (a: Vec2, b: Vec2, c: Vec2) => cross2(sub2(b, a), sub2(c, b));
  if (turnAt(before, p, q) <= 0) {
    const chord = distance2(before, q);
    const outMm = chord > 0 ? -turnAt(before, p, q) / chord : Infinity;
    return [{ at: i, corners: 1, by: [], outMm }];
  }
  if (turnAt(p, q, after) <= 0) return [];
  const [come, go] = [sub2(p, before), sub2(after, q)];
  const together = cross2(come, go);
  // Turned by half a round or more the neighbours do not meet beyond this side.
  if (together <= 0) return [];
  const meet = add2(p, scale2(come, cross2(sub2(q, p), go) / together));
  const side = distance2(p, q);
  return side > 0 ? [{ at: i, corners: 2, by: [meet], outMm: cross2(sub2(meet, p), sub2(q, p)) / side }] : [];
}

import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { cross2, distance2, dot2, sub2, unit2, type Vec2 } from "../geometry/vector.ts";
import type { Drawing } from "./model.ts";

/** Where an outline turns by more than this it has a corner. Its cosine. [-] */
const CORNER = Math.cos(Math.PI / 12);

/** Points of a drawing that a tape would be held to, corners of outlines and ends of element lines first. */
export interface SnapPoints {
  readonly main: readonly Vec2[];
  /** Every further point of an outline. */
  readonly others: readonly Vec2[];
}

export function snapPoints({ strokes }: Pick<Drawing, "strokes">): SnapPoints {
  const main: Vec2[] = [];
  const others: Vec2[] = [];
  for (const { kind, shape, elements } of strokes) {
    if (shape.type !== "path") continue;
    const { points } = shape;
    if (elements) main.push(...points);
    if (kind !== "outline" || elements) continue;
    for (const [i, p] of points.entries()) {
      const before = points[i - 1] ?? (shape.closed ? points.at(-1) : undefined);
      const after = points[i + 1] ?? (shape.closed ? points[0] : undefined);
      (before && after && !turns(before, p, after) ? others : main).push(p);
    }
  }
  return { main: main.filter((p, i) => main.findIndex((q) => distance2(p, q) === 0) === i), others };
}

function turns(before: Vec2, p: Vec2, after: Vec2): boolean {
  const [to, on] = [sub2(p, before), sub2(after, p)];
  return distance2(before, p) > 0 && distance2(p, after) > 0 && dot2(unit2(to), unit2(on)) < CORNER;
}

/** Steps aside count so much more than steps on. [-] */
const ASIDE = 2;

/** The main point that comes next in a direction, for those who go by keys; the same where there is none. */
export function nextPoint({ main }: SnapPoints, from: Vec2 | undefined, way: Vec2): Vec2 | undefined {
  if (!from)
    return main.reduce<Vec2 | undefined>(
      (low, p) => (low && low[0] + low[1] <= p[0] + p[1] ? low : p),
      undefined,
    );
  let best = from;
  let least = Infinity;
  for (const p of main) {
    const run = sub2(p, from);
    const on = dot2(run, way);
    const cost = on + ASIDE * Math.abs(cross2(run, way));
    if (on > SAME_POINT_MM && cost < least) [best, least] = [p, cost];
  }
  return best;
}

/** The point meant by somebody who touched near it: a main one within reach, else the nearest of any; none beyond reach. */
export function snapped({ main, others }: SnapPoints, touched: Vec2, reach: number): Vec2 | undefined {
  const nearest = (points: readonly Vec2[]): Vec2 | undefined => {
    let best: Vec2 | undefined;
    let least = reach;
    for (const p of points) {
      const away = distance2(p, touched);
      if (away <= least) [best, least] = [p, away];
    }
    return best;
  };
  return nearest(main) ?? nearest(others);
}

import { Clipper, EndType, JoinType } from "clipper2-ts";
import { turnOf } from "../geometry/placed.ts";
import { hull } from "../geometry/polygon.ts";
import { LAY_GRID_MM } from "../geometry/tolerance.ts";
import type { Vec2 } from "../geometry/vector.ts";
import { holdsClear } from "./apart.ts";

/** A corner on the grid: whole numbers, so that which side of a line it lies on is exact. [grid steps] */
export interface GridPoint {
  readonly x: number;
  readonly y: number;
}
/** A closed outline on the grid, counter-clockwise, the first corner not repeated. */
export type Ring = readonly GridPoint[];

/** Where a miter is longer than this many spacings it is cut off square, still outside the round offset. [-] */
const MITER = 2;

const toGrid = (mm: number): number => Math.round(mm / LAY_GRID_MM) + 0;

/** An outline turned counter-clockwise about its origin, on the grid. Quarter turns are exact. */
export function gridRing(outline: readonly Vec2[], turnDeg: number): Ring {
  const [c, s] = turnOf(turnDeg);
  return withTurns(outline.map(([x, y]) => ({ x: toGrid(c * x - s * y), y: toGrid(s * x + c * y) })));
}

/** Only corners that turn: none twice, none within a straight side, and no spike of no width. */
function withTurns(points: readonly GridPoint[]): Ring {
  const apart = points.filter((p, i) => {
    const before = points.at(i - 1);
    return before?.x !== p.x || before.y !== p.y;
  });
  const turning = apart.filter((p, i) => {
    const before = apart.at(i - 1) ?? p;
    const after = apart[(i + 1) % apart.length] ?? p;
    return (p.x - before.x) * (after.y - p.y) !== (p.y - before.y) * (after.x - p.x);
  });
  // What was taken away may leave its neighbours in one line.
  return turning.length === points.length ? points : withTurns(turning);
}

/**
 * The outline grown all round by a distance, corners kept sharp: it holds everything nearer than that. [mm]
 * What the library gives is measured; where it were to fail, the hull grown in the same way holds it for certain.
 */
export function grown(ring: Ring, byMm: number): Ring {
  if (byMm === 0) return ring;
  const grow = (one: Ring): Ring =>
    outermost(Clipper.inflatePaths([[...one]], byMm / LAY_GRID_MM, JoinType.Miter, EndType.Polygon, MITER));
  const round = grow(ring);
  if (holdsClear(ringMm(round), ringMm(ring), byMm)) return round;
  return grow(gridRing(hull(ringMm(ring)), 0));
}

/** The largest outline of several: what is left of a hole within it is no place for anything. */
function outermost(paths: readonly Ring[]): Ring {
  let [best, most] = [paths[0] ?? [], -Infinity];
  for (const path of paths) {
    const area = ringArea(path);
    if (area > most) [best, most] = [path, area];
  }
  return best;
}

/** Area, positive counter-clockwise. [grid steps²] */
function ringArea(ring: Ring): number {
  let twice = 0;
  const origin = ring[0];
  if (!origin) return 0;
  for (let i = 1; i + 1 < ring.length; i++) {
    const [p, q] = [ring[i] as GridPoint, ring[i + 1] as GridPoint];
    twice += (p.x - origin.x) * (q.y - origin.y) - (p.y - origin.y) * (q.x - origin.x);
  }
  return twice / 2;
}

/** Back to millimetres. */
export const ringMm = (ring: Ring): Vec2[] =>
  ring.map(({ x, y }): Vec2 => [x * LAY_GRID_MM, y * LAY_GRID_MM]);

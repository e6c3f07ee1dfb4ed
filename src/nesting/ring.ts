import { Clipper, EndType, FillRule, JoinType } from "clipper2-ts";
import { LAY_GRID_MM } from "../geometry/tolerance.ts";
import type { Vec2 } from "../geometry/vector.ts";

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
  const ring: GridPoint[] = [];
  for (const [x, y] of outline) {
    const at = { x: toGrid(c * x - s * y), y: toGrid(s * x + c * y) };
    const last = ring.at(-1);
    if (last?.x !== at.x || last.y !== at.y) ring.push(at);
  }
  const [first, last] = [ring[0], ring.at(-1)];
  if (ring.length > 1 && first?.x === last?.x && first?.y === last?.y) ring.pop();
  return ring;
}

/** Cosine and sine of a turn, exact at quarter turns. */
export function turnOf(turnDeg: number): Vec2 {
  const quarters = turnDeg / 90;
  if (Number.isInteger(quarters))
    return (
      [
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ] as const
    )[(((quarters % 4) + 4) % 4) as 0 | 1 | 2 | 3];
  const turn = (turnDeg * Math.PI) / 180;
  return [Math.cos(turn), Math.sin(turn)];
}

/** The outline grown all round by a distance, corners kept sharp: it holds everything nearer than that. [mm] */
export function grown(ring: Ring, byMm: number): Ring {
  if (byMm === 0) return ring;
  const paths = Clipper.inflatePaths(
    [[...ring]],
    byMm / LAY_GRID_MM,
    JoinType.Miter,
    EndType.Polygon,
    MITER,
  );
  return outermost(paths);
}

/** The largest outline of several: what is left of a hole within it is no place for anything. */
export function outermost(paths: readonly Ring[]): Ring {
  let [best, most] = [paths[0] ?? [], -Infinity];
  for (const path of paths) {
    const area = ringArea(path);
    if (area > most) [best, most] = [path, area];
  }
  return best;
}

/** A hole narrower than this is none, but what rounding to the grid left between two sides. [mm] */
const LEAST_HOLE_MM = 10 * LAY_GRID_MM;

/**
 * What closed walks in one place go round, as one outline (counter-clockwise) and its holes (clockwise). Slivers that the
 * library's rounding leaves are taken away: a place within one would count as free.
 */
export function merged(walks: readonly Ring[]): readonly Ring[] {
  const rings = Clipper.union(
    walks.map((walk) => [...walk]),
    FillRule.NonZero,
  );
  const outline = outermost(rings);
  // A strip of a width w has an area of w times half its girth.
  const isHole = (ring: Ring) => -2 * ringArea(ring) > (LEAST_HOLE_MM / LAY_GRID_MM) * girth(ring);
  return [outline, ...rings.filter(isHole)];
}

const girth = (ring: Ring): number =>
  ring.reduce((sum, p, i) => {
    const q = ring[(i + 1) % ring.length] as GridPoint;
    return sum + Math.sqrt((q.x - p.x) ** 2 + (q.y - p.y) ** 2);
  }, 0);

/** Area, positive counter-clockwise. [grid steps²] */
export function ringArea(ring: Ring): number {
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
export const ringMm = (ring: Ring): Vec2[] => ring.map(({ x, y }): Vec2 => [x * LAY_GRID_MM, y * LAY_GRID_MM]);

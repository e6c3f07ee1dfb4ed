import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { add2, cross2, distance2, left2, scale2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank } from "../../report/report.ts";
import type { Board, Placing } from "../board.ts";
import { boxOf, boxOfTwo, grow, touch } from "../box.ts";
import { slope } from "../dimension/angular.ts";
import { labelCorners } from "../lettering.ts";
import type { Label } from "../model.ts";
import { toSegment } from "../../geometry/segment.ts";
import { changed, lazily, type Ways } from "../ways.ts";

/** One edge of a blank with its points, the first of the next edge included. */
export interface EdgePath {
  readonly name: string;
  readonly lengthMm: number;
  readonly points: readonly Vec2[];
}

/** The outline cut at its corners, counter-clockwise. */
export function edgePaths(blank: Blank): EdgePath[] {
  const { outline, edges } = blank;
  return edges.map((edge, i) => {
    const next = edges[(i + 1) % edges.length]?.start ?? 0;
    const count = (next - edge.start + outline.length) % outline.length || outline.length;
    const points = Array.from(
      { length: count + 1 },
      (_, k) => outline[(edge.start + k) % outline.length] as Vec2,
    );
    return { name: edge.name, lengthMm: edge.lengthMm, points };
  });
}

/** How far along its path each point of an edge lies, worked out once for each: names and sizes try many places. [mm] */
const reaches = new WeakMap<readonly Vec2[], readonly number[]>();

function reachOf(points: readonly Vec2[]): readonly number[] {
  const known = reaches.get(points);
  if (known) return known;
  let sum = 0;
  const reach = points.map((p, i) => (sum += i === 0 ? 0 : distance2(points[i - 1] as Vec2, p)));
  reaches.set(points, reach);
  return reach;
}

/** Point and direction at a share of a path's length. */
export function along(points: readonly Vec2[], share: number): { at: Vec2; dir: Vec2 } {
  const reach = reachOf(points);
  const whole = reach.at(-1) ?? 0;
  if (whole === 0) throw new RangeError(`an edge without length: ${points.length} points`);
  const wanted = share * whole;
  // The first piece that ends there or beyond, and has a length; rounding may leave the very end a hair short.
  let low = 1;
  for (let high = points.length - 1; low < high;) {
    const half = (low + high) >> 1;
    if ((reach[half] as number) >= wanted) high = half;
    else low = half + 1;
  }
  while (low < points.length - 1 && reach[low] === reach[low - 1]) low++;
  while (low > 1 && reach[low] === reach[low - 1]) low--;
  const [p, q] = [points[low - 1] as Vec2, points[low] as Vec2];
  const before = reach[low - 1] as number;
  const long = (reach[low] as number) - before;
  return {
    at: add2(p, scale2(sub2(q, p), Math.min(1, Math.max(0, (wanted - before) / long)))),
    dir: unit2(sub2(q, p)),
  };
}

/** Corners of a path: where straight sides meet. Pieces in one line are joined. */
export function straightSides(points: readonly Vec2[]): (readonly [Vec2, Vec2])[] {
  const corners: Vec2[] = [];
  for (const p of points) {
    const [last, before] = [corners.at(-1), corners.at(-2)];
    if (last && distance2(last, p) < SAME_POINT_MM) continue;
    if (last && before && Math.abs(cross2(unit2(sub2(last, before)), sub2(p, last))) < SAME_POINT_MM)
      corners.pop();
    corners.push(p);
  }
  return corners.slice(1).map((q, i) => [corners[i] as Vec2, q] as const);
}

/** What the side costs more on which a name is not expected, in the board's measure. */
const OTHER_SIDE = 12;

/**
 * Ways to write an edge's name along it: inside the blank where it is wide enough to tell whose name it is, else outside.
 * @param clearMm inside positive, outside negative [mm of paper]
 */
export function nameAlong(
  board: Board,
  edge: EdgePath,
  { clearMm, insideToo }: { clearMm: readonly number[]; insideToo: boolean },
): Iterable<Placing> {
  const cap = board.paper.capsMm.small;
  const shares = [0.5, 0.42, 0.58, 0.35, 0.65, 0.28, 0.72, 0.2, 0.8];
  return lazily(function* () {
    for (const clear of clearMm)
      for (const share of shares) {
        const { at, dir } = along(edge.points, share);
        // The outline runs counter-clockwise, so the blank lies to the left.
        const away = Math.sign(clear) * (Math.abs(clear) + cap / 2);
        const place = add2(at, scale2(left2(dir), board.mm(away)));
        yield {
          strokes: [],
          extra: clear < 0 === insideToo ? OTHER_SIDE : 0,
          labels: [board.label(edge.name, place, { role: "name", size: "small", alongDeg: slope(dir) })],
        };
      }
  });
}

/** A name over the point where lines meet hides where to mark; what that costs, in the board's measure. */
const OVER_TIP = 8;
/** So much clear of such a point. [mm of paper] */
const TIP_CLEAR = 3;

/** Names that stand over points of the outline are liked less. */
export function clearOf(board: Board, ways: Ways, tips: readonly Vec2[]): Ways {
  const clear = board.mm(TIP_CLEAR);
  const isOver = (label: Label): boolean => {
    const corners = labelCorners(label);
    const room = grow(boxOf(corners), clear);
    const near = tips.filter((tip) => touch(room, boxOfTwo(tip, tip)));
    const sides = corners.map((p, i) => [p, corners[(i + 1) % corners.length] as Vec2] as const);
    return near.some((tip) => sides.some(([p, q]) => toSegment(tip, p, q) < clear));
  };
  return changed(ways, (way) =>
    way.labels.some(isOver) ? { ...way, extra: (way.extra ?? 0) + OVER_TIP } : way,
  );
}

export const isSeam = (edge: Pick<EdgePath, "name">): boolean => edge.name.startsWith("seam");

/** End A, and end B where it is not a point. */
export function endsOf(edges: readonly EdgePath[]): readonly [EdgePath | undefined, EdgePath | undefined] {
  const ends = edges.filter((edge) => !isSeam(edge));
  // The outline begins at end A's corner of seam 1, or with end A itself where it is mirrored.
  const a = edges[0] && isSeam(edges[0]) ? ends.at(-1) : ends[0];
  return [a, ends.find((edge) => edge !== a)];
}

import { along, type EdgePath, edgePaths, isSeam } from "../../drawing/pattern/edges.ts";
import { toPath } from "../../geometry/segment.ts";
import { add2, distance2, middle2, scale2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank, Report } from "../../report/report.ts";
import { isStraightSided } from "../cutCorners.ts";
import { hitLines, lineText } from "./numberedLines.ts";
import { ALIKE_MM } from "./share.ts";

/** A point of the edge that is marked on the plate: a corner of the outline, or the end of a line. */
export interface MarkingPoint {
  /** "P2", "5", "P1 · 1": the corner, the numbers of the lines that end there. */
  readonly mark: string;
  /** The same with the edge that it lies on: "5 large end". */
  readonly name: string;
  /** From the base line, as the marking table has it. [mm] */
  readonly at: Vec2;
  /** Which way the edge runs there, counter-clockwise; null on a straight side, which shows it, and where such sides meet. */
  readonly tangent: Vec2 | null;
  /** To the next point round the outline, straight across; does that line run along the edge, or nearly? [mm] */
  readonly next: { readonly at: Vec2; readonly mark: string; readonly mm: number; readonly isNear: boolean };
}

/** The edge is looked at so far to both sides for its direction. [mm] */
const REACH_MM = 4;
/** A line nearer to the edge than this blurs it. [mm] */
const CLEAR_MM = 2;
/** Numbers of more lines than this that end in one point are told by the first and the last. */
const MOST_NUMBERS = 3;

interface Place {
  readonly edge: EdgePath;
  /** Which edge of the outline, and how far along it. [mm] */
  readonly index: number;
  readonly reachMm: number;
  readonly wholeMm: number;
}
interface Found {
  readonly at: Vec2;
  readonly corner: number | undefined;
  readonly numbers: readonly number[];
  readonly place: Place;
}

/**
 * The points of one pattern that are marked, once round the outline from its first corner: all corners, and where bend lines
 * or else element lines end on the edge. A line that ends off the plate, as at a seam before its gap is taken off, has none.
 */
export function markingPoints(report: Report, blank: Blank): readonly MarkingPoint[] {
  const edges = edgePaths(blank);
  const all = found(report, blank, edges);
  return all.map((one, i) => {
    const next = all[(i + 1) % all.length] as Found;
    const half = middle2(one.at, next.at);
    return {
      mark: markOf(one),
      name: one.corner === undefined ? `${markOf(one)} ${one.place.edge.name}` : markOf(one),
      at: one.at,
      tangent: tangentOf(one.place),
      next: {
        at: next.at,
        mark: markOf(next),
        mm: distance2(one.at, next.at),
        isNear: edges.some(({ points }) => toPath(half, points) < CLEAR_MM),
      },
    };
  });
}

function found(report: Report, blank: Blank, edges: readonly EdgePath[]): Found[] {
  const corners = edges
    .filter(({ lengthMm }) => lengthMm > 0)
    .flatMap(({ points: [at] }, i): Found[] => {
      const place = at && placeOf(edges, at);
      return at && place ? [{ at, place, corner: i + 1, numbers: [] }] : [];
    });
  const points = [...corners];
  for (const { at, number } of lineEnds(report, blank)) {
    const same = points.findIndex((one) => distance2(one.at, at) < ALIKE_MM);
    const other = points[same];
    const place = placeOf(edges, at);
    // Where both are one, the marking table's own figures stand.
    if (other) points[same] = { ...other, at, numbers: [...other.numbers, number] };
    else if (place) points.push({ at, place, corner: undefined, numbers: [number] });
  }
  return points.toSorted((p, q) => roundOf(p, edges) - roundOf(q, edges));
}

/** Both ends of every line: those of the brake's plan where there is one, else those of the marking table. */
function lineEnds(report: Report, blank: Blank): { readonly at: Vec2; readonly number: number }[] {
  const lines =
    hitLines(report, blank) ??
    report.hand.rows
      .filter(({ piece }) => piece === blank.piece)
      .map(({ a, b, number }) => ({ from: a, to: b, number }));
  return lines.flatMap(({ from, to, number }) => [from, to].map((at) => ({ at, number })));
}

/** Where on the outline a point lies; its ends go before its seams. Undefined off the outline. */
function placeOf(edges: readonly EdgePath[], at: Vec2): Place | undefined {
  const order = edges
    .map((edge, index) => ({ edge, index }))
    .toSorted((p, q) => +isSeam(p.edge) - +isSeam(q.edge));
  for (const { edge, index } of order) {
    if (edge.lengthMm === 0 || toPath(at, edge.points) >= ALIKE_MM) continue;
    return { edge, index, ...reachOf(edge.points, at) };
  }
  return undefined;
}

/** How far along a path the place nearest to a point lies. [mm] */
function reachOf(points: readonly Vec2[], at: Vec2): { readonly reachMm: number; readonly wholeMm: number } {
  let [best, reachMm, wholeMm] = [Infinity, 0, 0];
  for (let i = 1; i < points.length; i++) {
    const side = [points[i - 1] as Vec2, points[i] as Vec2] as const;
    const long = distance2(...side);
    const off = toPath(at, side);
    if (off < best) [best, reachMm] = [off, wholeMm + Math.min(long, distance2(side[0], at))];
    wholeMm += long;
  }
  return { reachMm, wholeMm };
}

/** How far round the outline a point lies, from its first corner. [mm] */
function roundOf({ corner, place }: Found, edges: readonly EdgePath[]): number {
  const lengths = edges.map(({ lengthMm }) => lengthMm);
  const before = (index: number) => lengths.slice(0, index).reduce((sum, one) => sum + one, 0);
  if (corner === undefined) return before(place.index) + place.reachMm;
  return before(edges.indexOf(edges.filter(({ lengthMm }) => lengthMm > 0)[corner - 1] as EdgePath));
}

function markOf({ corner, numbers }: Found): string {
  const shown =
    numbers.length > MOST_NUMBERS
      ? `${lineText([Math.min(...numbers)], undefined)} to ${lineText([Math.max(...numbers)], undefined)}`
      : lineText(numbers, undefined);
  return [...(corner === undefined ? [] : [`P${corner}`]), ...(numbers.length === 0 ? [] : [shown])].join(
    " · ",
  );
}

/** Direction of a curved edge, from places on it as far before as behind; at its ends from two places further on. */
function tangentOf({ edge: { points }, reachMm, wholeMm }: Place): Vec2 | null {
  if (isStraightSided(points)) return null;
  const step = Math.min(REACH_MM, wholeMm / 4);
  const on = (mm: number): Vec2 => along(points, mm / wholeMm).at;
  if (reachMm >= step && reachMm <= wholeMm - step)
    return unit2(sub2(on(reachMm + step), on(reachMm - step)));
  const way = reachMm < step ? 1 : -1;
  const [near, far] = [1, 2].map((steps) => sub2(on(reachMm + way * steps * step), on(reachMm))) as [
    Vec2,
    Vec2,
  ];
  return unit2(scale2(add2(scale2(near, 4), scale2(far, -1)), way));
}

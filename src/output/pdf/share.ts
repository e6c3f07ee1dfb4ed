import { type EdgePath, edgePaths, endsOf } from "../../drawing/pattern/edges.ts";
import {
  crossing,
  halfWay,
  leftOf,
  lineThrough,
  mirroredAt,
  type StraightLine,
} from "../../geometry/mirrorLine.ts";
import { degrees } from "../../geometry/angle.ts";
import { toPath } from "../../geometry/segment.ts";
import { NO_LENGTH_MM, SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { distance2, left2, middle2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank, MarkingRow, Report } from "../../report/report.ts";
import { WITHIN_MM } from "../contour.ts";

export type ShareKind = "half" | "quarter";

/** A stretch of a pattern that makes the whole by being turned over about its straight edges. */
export interface Share {
  readonly kind: ShareKind;
  /** Counter-clockwise: along end A, up the outer edge, back along end B, and down the middle of the pattern. */
  readonly edges: readonly EdgePath[];
  /** What it is turned over about: the middle of the pattern, and on a quarter its outer edge before that. */
  readonly middle: StraightLine;
  readonly outer: StraightLine | null;
  /** On a quarter, where the seam comes to lie on the outermost ones; null where that is their edge. */
  readonly seam: readonly [Vec2, Vec2] | null;
  /** From the share to each of its places in the pattern, itself first, in the order in which they are drawn. */
  readonly places: readonly ((p: Vec2) => Vec2)[];
}

/** Turned over, a share has to come to lie this near to the pattern: as near as a cut contour lies to it. [mm] */
export const ALIKE_MM = 2 * WITHIN_MM;
/** So many points of a path show what it does. */
const TRIED = 60;
/** What a share's straight edges are called. */
export const [MIDDLE, OUTER] = ["middle of the pattern", "turn over here"];

/** A pattern by its ends, from end A round: the seam on its right hand, end B (or a point), the seam on its left. */
interface Round {
  readonly a: EdgePath;
  readonly first: EdgePath;
  readonly b: EdgePath | undefined;
  readonly second: EdgePath;
}

function roundOf(blank: Blank): Round | undefined {
  const edges = edgePaths(blank).filter(({ points }) => points.length > 1);
  const [a, b] = endsOf(edges);
  if (!a) return undefined;
  const from = edges.indexOf(a);
  const [, first, ...rest] = edges.map((_, i) => edges[(from + i) % edges.length] as EdgePath);
  const second = rest.at(-1);
  return first && second && rest.length === (b ? 2 : 1) ? { a, first, b, second } : undefined;
}

/** A half, and where there is one a quarter, of a pattern that has such; none of one that lies askew. */
export function sharesOf({ hand }: Report, blank: Blank): readonly Share[] {
  const round = roundOf(blank);
  if (!round) return [];
  const middle = middleOf(round);
  const half = middle && halfOf(round, middle);
  if (!half) return [];
  const quarter = quarterOf(
    round,
    half,
    hand.rows.filter(({ piece }) => piece === blank.piece),
  );
  return quarter ? [half, quarter] : [half];
}

/** The line half-way between both corners of end A, upwards. */
function middleOf({ a }: Round): StraightLine | undefined {
  const [p, q] = [a.points[0] as Vec2, a.points.at(-1) as Vec2];
  if (distance2(p, q) < SAME_POINT_MM) return undefined;
  return { at: middle2(p, q), dir: left2(unit2(sub2(q, p))) };
}

/** The part of a path before or behind where a line crosses it. */
function cutAt(
  path: EdgePath,
  line: StraightLine,
  side: "before" | "behind",
): { readonly edge: EdgePath; readonly at: Vec2 } | undefined {
  const cut = crossing(path.points, line);
  if (!cut) return undefined;
  const points =
    side === "before"
      ? [...path.points.slice(0, cut.behind + 1), cut.at]
      : [cut.at, ...path.points.slice(cut.behind + 1)];
  return { edge: edgeOf(path.name, points), at: cut.at };
}

/** Points that fall together are one. */
function edgeOf(name: string, all: readonly Vec2[]): EdgePath {
  const points = all.filter((p, i) => i === 0 || distance2(p, all[i - 1] as Vec2) > NO_LENGTH_MM);
  const lengthMm = points.reduce((sum, p, i) => sum + (i === 0 ? 0 : distance2(points[i - 1] as Vec2, p)), 0);
  return { name, lengthMm, points };
}

/** How far a share is turned so that its end A lies level, which takes the fewest sheets as a rule. [degrees] */
export function uprightDeg({ edges }: Share): number {
  const points = edges[0]?.points ?? [];
  const [from, to] = [points[0], points.at(-1)];
  if (!from || !to) return 0;
  return -degrees(Math.atan2(to[1] - from[1], to[0] - from[0]));
}

/** The share as a blank of its own, so that it is drawn as one; its lines are those of the pattern that run on it. */
export function shareBlank(blank: Blank, { edges }: Share, lines: Blank["lines"]): Blank {
  const outline: Vec2[] = [];
  const starts = edges.map(({ name, lengthMm, points }) => {
    const start = outline.length;
    outline.push(...points.slice(0, -1));
    return { name, lengthMm, start };
  });
  return { ...blank, outline, edges: starts, lines };
}

/** Does every point tried lie on the path? */
function lieOn(points: readonly Vec2[], path: readonly Vec2[]): boolean {
  const step = Math.max(1, Math.floor(points.length / TRIED));
  return points.every((p, i) => (i % step !== 0 && i !== points.length - 1) || toPath(p, path) < ALIKE_MM);
}

function halfOf({ a, first, b, second }: Round, middle: StraightLine): Share | undefined {
  const over = (p: Vec2): Vec2 => mirroredAt(middle, p);
  const [endA, endB] = [cutAt(a, middle, "behind"), b && cutAt(b, middle, "before")];
  const tip = first.points.at(-1) as Vec2;
  if (!endA || (b && !endB) || (!b && Math.abs(leftOf(middle, tip)) > ALIKE_MM)) return undefined;
  const alike =
    lieOn(first.points.map(over), second.points) &&
    lieOn(endA.edge.points.map(over), a.points) &&
    (!b || !endB || lieOn(endB.edge.points.map(over), b.points));
  if (!alike) return undefined;
  const top = endB?.at ?? tip;
  return {
    kind: "half",
    edges: [endA.edge, first, ...(endB ? [endB.edge] : []), edgeOf(MIDDLE, [top, endA.at])],
    middle,
    outer: null,
    seam: null,
    places: [(p) => p, over],
  };
}

/** Half a half, where its ends are alike on both sides of a line and only the seam's joint is not. */
function quarterOf({ a, first, b }: Round, half: Share, rows: readonly MarkingRow[]): Share | undefined {
  const { middle } = half;
  const [from, to] = [first.points[0] as Vec2, first.points.at(-1) as Vec2];
  const seam = seamLine(rows, from);
  const outer = seam && halfWay(middle, seam);
  if (!outer) return undefined;
  const over = (p: Vec2): Vec2 => mirroredAt(outer, p);
  const [endA] = half.edges;
  const endB = b && half.edges[2];
  if (!endA) return undefined;
  const [inner, beyond] = [cutAt(endA, outer, "before"), cutAt(endA, outer, "behind")];
  const [innerB, beyondB] = [endB && cutAt(endB, outer, "behind"), endB && cutAt(endB, outer, "before")];
  if (!inner || !beyond || (b && (!innerB || !beyondB))) return undefined;
  if (!b && Math.abs(leftOf(outer, to)) > ALIKE_MM) return undefined;
  const alike =
    lieOn(beyond.edge.points.map(over), a.points) &&
    (!b || !beyondB || lieOn(beyondB.edge.points.map(over), b.points));
  if (!alike) return undefined;
  const top = innerB?.at ?? to;
  const image: readonly [Vec2, Vec2] = [over(from), over(to)];
  const middleEdge = half.edges.at(-1) as EdgePath;
  return {
    kind: "quarter",
    edges: [inner.edge, edgeOf(OUTER, [inner.at, top]), ...(innerB ? [innerB.edge] : []), middleEdge],
    middle,
    outer,
    seam: image.every((p) => Math.abs(leftOf(middle, p)) < ALIKE_MM) ? null : image,
    places: [(p) => p, over, (p) => mirroredAt(middle, p), (p) => mirroredAt(middle, over(p))],
  };
}

/** Where the seam would run without gap or lap, which only shift it: a line of the marking table. */
function seamLine(rows: readonly MarkingRow[], near: Vec2): StraightLine | undefined {
  const [one, other] = [rows[0], rows.at(-1)];
  if (!one || !other || rows.length < 2) return undefined;
  const { a, b } = distance2(one.a, near) < distance2(other.a, near) ? one : other;
  return lineThrough(a, b);
}

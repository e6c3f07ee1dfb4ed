import { type Development, developBetween } from "./develop.ts";
import { rimLength, skinArea } from "./measure.ts";
import { onSheet, type Placing } from "./placing.ts";
import {
  crossesItself,
  hull,
  pathLength,
  polygonArea,
  smallestBox,
  type TurnedBox,
  uprightBox,
} from "./polygon.ts";
import { type Ends, isPoint, lapReach, withGap, withLap } from "./seam.ts";
import type { Skin } from "./skin.ts";
import { type Span, stationsBetween } from "./station.ts";
import { layFlat } from "./strip.ts";
import { OUTLINE_MM, RIM_REL, SAME_ANGLE } from "./tolerance.ts";
import { withTrim } from "./trim.ts";
import { distance2, type Vec2 } from "./vector.ts";

/** What one blank is to be like. Lengths in mm, angles in radians. */
export interface BlankOrder {
  readonly span: Span;
  readonly joint:
    { readonly kind: "butt"; readonly gapMm: number } | { readonly kind: "lap"; readonly lapMm: number };
  /** Normal angles of the element lines wanted on the pattern. */
  readonly knots: readonly number[];
  /** Present where the edges get an allowance for being dressed level. */
  readonly trimThicknessMm?: number;
  readonly mirror: boolean;
}

export type EdgeOf = "a" | "b" | "seam 1" | "seam 2";

interface BlankEdge {
  readonly of: EdgeOf;
  /** Index of its first outline point. */
  readonly start: number;
  readonly lengthMm: number;
}

/** A blank as cut: outline counter-clockwise from where seam 1 meets end A, first point not repeated. */
export interface FlatBlank {
  readonly kind: "blank";
  readonly outline: readonly Vec2[];
  readonly edges: readonly BlankEdge[];
  readonly areaMm2: number;
  /** Convex hull of the outline, counter-clockwise. */
  readonly hull: readonly Vec2[];
  /** The smallest rectangle at any angle, and the upright one as it lies. */
  readonly box: TurnedBox;
  readonly upright: { readonly xMm: number; readonly yMm: number };
  /** Before gap, lap and allowance. */
  readonly development: Development;
  /** The developed ends before allowance, gap and lap, as they lie on the sheet. */
  readonly net: Ends;
  /** Ends and area of the development as laid, against the exact skin's. */
  readonly check: { readonly rimMm: number; readonly areaRel: number };
}

/** Why there is no such blank. */
export interface NoBlank {
  readonly kind: "none";
  readonly because: "gap too wide" | "lap too wide" | "overlaps itself" | "allowance crosses" | "too extreme";
}

/** Steps by which a lap's continuation is tried, as normal angle past seam 2. [rad] */
const LAP_STEPS = [0.02, 0.05, 0.1, 0.2, 0.4, 0.8, 1.6, 3];

/** How far past seam 2 the development has to be continued so that a lap can be cut from it. */
function lapTurn(skin: Skin, span: Span, lapMm: number): number | undefined {
  return LAP_STEPS.find((extra) => {
    const stations = stationsBetween(skin, { from: span.from, to: span.to + extra }, { cuts: [span.to] });
    const seam = stations.findIndex((s) => s.theta >= span.to - SAME_ANGLE);
    const tail = layFlat(stations.slice(seamStation(stations, span.to, seam)));
    return lapReach(tail, 0) > lapMm;
  });
}

/** The station that is seam 2 itself: the middle one where the seam divides a flat. */
function seamStation(stations: readonly { readonly theta: number }[], at: number, first: number): number {
  const same = stations.slice(first).filter((s) => Math.abs(s.theta - at) <= SAME_ANGLE).length;
  return first + Math.floor(same / 2);
}

/** Joins the ends to an outline, counter-clockwise from seam 1 at end A, and says where each edge begins. */
function outlineOf(
  ends: Ends,
  mirror: boolean,
): { outline: Vec2[]; starts: { of: EdgeOf; start: number }[] } {
  const path = (end: "a" | "b") => (isPoint(ends[end]) ? ends[end].slice(0, 1) : ends[end]);
  const back = (end: "a" | "b") => [...path(end)].reverse();
  // Inside face up seam 1 is the right edge; mirrored it is the left one, and the way round begins along end A.
  const outline = mirror
    ? [...path("a"), ...back("b")]
    : [...path("a").slice(0, 1), ...path("b"), ...back("a")];
  if (!mirror) outline.pop();
  const [a, b] = [path("a").length, path("b").length];
  const starts: { of: EdgeOf; start: number }[] = mirror
    ? [
        { of: "a", start: 0 },
        { of: "seam 2", start: a - 1 },
        { of: "b", start: a },
        { of: "seam 1", start: a + b - 1 },
      ]
    : [
        { of: "seam 1", start: 0 },
        { of: "b", start: 1 },
        { of: "seam 2", start: b },
        { of: "a", start: b + 1 },
      ];
  return { outline, starts: starts.filter(({ of }) => of !== "b" || b > 1) };
}

/** A few points of a long outline, edges' ends kept: enough to see whether it crosses itself. */
function thinned(outline: readonly Vec2[], starts: readonly { start: number }[]): Vec2[] {
  const every = Math.max(1, Math.ceil(outline.length / 240));
  const kept = new Set(starts.map(({ start }) => start));
  return outline.filter((_, i) => i % every === 0 || kept.has(i));
}

/** Lays out one blank. */
export function cutBlank(skin: Skin, order: BlankOrder): FlatBlank | NoBlank {
  const { span, joint } = order;
  const extra = joint.kind === "lap" ? lapTurn(skin, span, joint.lapMm) : 0;
  if (extra === undefined) return { kind: "none", because: "lap too wide" };
  const middle = (span.from + span.to) / 2;
  const development = developBetween(
    skin,
    { from: span.from, to: span.to + extra },
    { knots: [...order.knots, middle], cuts: [span.to] },
  );
  if (!development.settled) return { kind: "none", because: "too extreme" };
  const { stations } = development;
  const first = stations.findIndex((s) => s.theta >= span.to - SAME_ANGLE);
  const seam = seamStation(stations, span.to, first);
  const upToSeam = (ends: Ends): Ends => ({ a: ends.a.slice(0, seam + 1), b: ends.b.slice(0, seam + 1) });
  const net = upToSeam(development.flat);
  const bare = joint.kind === "lap" ? development.flat : net;
  const laid = order.trimThicknessMm
    ? withTrim(stations, bare, { thicknessMm: order.trimThicknessMm, open: joint.kind === "lap" })
    : bare;
  if (!laid) return { kind: "none", because: "allowance crosses" };
  const cut = joint.kind === "lap" ? withLap(laid, seam, joint.lapMm) : withGap(laid, joint.gapMm);
  if (!cut) return { kind: "none", because: joint.kind === "lap" ? "lap too wide" : "gap too wide" };
  const placing = onSheet({ stations, net, cut, middle, mirror: order.mirror });
  return assemble(skin, order, development, placing);
}

function assemble(
  skin: Skin,
  order: BlankOrder,
  development: Development,
  placing: Placing,
): FlatBlank | NoBlank {
  const { outline, starts } = outlineOf(placing.cut, order.mirror);
  if (crossesItself(thinned(outline, starts))) return { kind: "none", because: "overlaps itself" };
  // An allowance may make loops of a few millimetres, which a thinned outline would step over.
  if (order.trimThicknessMm !== undefined && crossesItself(outline))
    return { kind: "none", because: "allowance crosses" };
  const exact = exactOver(skin, order.span);
  const end = development.stations.at(-1)?.theta ?? order.span.to;
  // Without a lap the development is as long as the blank, and the same lengths serve for both.
  const whole = end === order.span.to ? exact : exactOver(skin, { from: order.span.from, to: end });
  const check = checked(whole, development);
  if (check.rimMm > OUTLINE_MM + RIM_REL * (exact.a + exact.b))
    return { kind: "none", because: "too extreme" };
  const { net, cut } = placing;
  const flatEnd = (end: "a" | "b") => development.flat[end].slice(0, net[end].length);
  // The polyline only tells what gap, lap and allowance add or take; the length itself is the exact rim's.
  const rim = (end: "a" | "b") => exact[end] + pathLength(cut[end]) - pathLength(flatEnd(end));
  const lengths: Record<EdgeOf, number> = {
    a: rim("a"),
    b: rim("b"),
    "seam 1": distance2(cut.a[0] as Vec2, cut.b[0] as Vec2),
    "seam 2": distance2(cut.a.at(-1) as Vec2, cut.b.at(-1) as Vec2),
  };
  const netArea = Math.abs(polygonArea([...flatEnd("a")].reverse().concat(flatEnd("b"))));
  const area = exact.areaMm2 + Math.abs(polygonArea(outline)) - netArea;
  const round = hull(outline);
  return {
    kind: "blank",
    outline,
    edges: starts.map((edge) => ({ ...edge, lengthMm: lengths[edge.of] })),
    areaMm2: area,
    hull: round,
    box: smallestBox(round),
    upright: uprightBox(outline),
    development,
    net,
    check,
  };
}

/** Lengths of both ends and area of the exact skin over a span. [mm, mm²] */
const exactOver = (skin: Skin, span: Span): Development["measured"] => ({
  a: rimLength(skin, "a", span),
  b: rimLength(skin, "b", span),
  areaMm2: skinArea(skin, span),
});

function checked(exact: Development["measured"], { measured }: Development): FlatBlank["check"] {
  const off = (end: "a" | "b") => Math.abs(measured[end] - exact[end]);
  return {
    rimMm: Math.max(off("a"), off("b")),
    areaRel: Math.abs(measured.areaMm2 / exact.areaMm2 - 1),
  };
}

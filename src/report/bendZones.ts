import { degrees, wrap } from "../geometry/angle.ts";
import { antiderivative } from "../geometry/antiderivative.ts";
import { turning } from "../geometry/measure.ts";
import { leanAt, planeNormal, type Skin, turningRate } from "../geometry/skin.ts";
import { toSegment } from "../geometry/segment.ts";
import { squareRadii } from "../geometry/squareRadius.ts";
import { elementMm, isFlat } from "../geometry/station.ts";
import { SAME_ANGLE, SAME_POINT_MM } from "../geometry/tolerance.ts";
import {
  between2,
  cross2,
  cross3,
  distance2,
  dot3,
  length3,
  sub2,
  unit2,
  type Vec2,
} from "../geometry/vector.ts";
import type { BendZone } from "../forming/bendZone.ts";
import type { LaidBlank } from "./blanks.ts";

/** Length of a path up to each of its points. */
function lengthsTo(path: readonly Vec2[]): number[] {
  let sum = 0;
  return path.map((point, i) => (sum += i === 0 ? 0 : distance2(path[i - 1] as Vec2, point)));
}

/** What a butt gap takes off an end's edge at a seam (its first point 0, or its last −1): half the gap over the sine between edge and seam. [mm] */
function gapOff({ order, flat }: LaidBlank, end: "a" | "b", at: 0 | -1): number {
  if (order.joint.kind !== "butt") return 0;
  const { a, b } = flat.net;
  const path = flat.net[end];
  const first = path.at(at);
  const away = (point: Vec2) => first !== undefined && distance2(first, point) > SAME_POINT_MM;
  const next = at === 0 ? path.find(away) : path.findLast(away);
  const seam = sub2(b.at(at) as Vec2, a.at(at) as Vec2);
  if (!first || !next) return 0;
  const edge = sub2(next, first);
  const sine = Math.abs(cross2(seam, edge)) / (Math.hypot(...seam) * Math.hypot(...edge));
  return order.joint.gapMm / 2 / sine;
}

/** Both seams, and on which side of each the plate lies, inside face up: left of the first. */
const SEAMS = [
  { by: "seam 1", at: 0, side: 1 },
  { by: "seam 2", at: -1, side: -1 },
] as const;

/** A seam that a gap has been taken off. */
interface GapSeam {
  readonly by: "seam 1" | "seam 2";
  readonly foot: Vec2;
  readonly head: Vec2;
  /** How deep a point lies within the plate as cut; below 0 in the gap. [mm] */
  readonly depth: (p: Vec2) => number;
  /** How far the gap runs along the edges of both ends. [mm] */
  readonly besideMm: { readonly a: number; readonly b: number };
}

/** Both seams of a blank where a gap has been taken off them; none where not. */
function gapSeams(laid: LaidBlank): GapSeam[] {
  const { order, flat } = laid;
  if (order.joint.kind !== "butt" || order.joint.gapMm === 0) return [];
  const half = order.joint.gapMm / 2;
  const hand = order.mirror ? -1 : 1;
  return SEAMS.map(({ by, at, side }) => {
    const [foot, head] = [flat.net.a.at(at) as Vec2, flat.net.b.at(at) as Vec2];
    const seam = unit2(sub2(head, foot));
    const beside = (end: "a" | "b") => Math.max(half, gapOff(laid, end, at)) + SAME_POINT_MM;
    return {
      by,
      foot,
      head,
      depth: (p) => hand * side * cross2(seam, sub2(p, foot)) - half,
      besideMm: { a: beside("a"), b: beside("b") },
    };
  });
}

/** Where a line begins or ends, as a share from end A to end B, and which seam cut it there. */
interface Cut {
  readonly share: number;
  readonly by: "seam 1" | "seam 2" | null;
}

/**
 * Which part of an element line is left on the plate when a gap has been taken off its seams: in a corner all lines meet
 * at a tip, which the gap cuts off where a seam runs into it.
 */
function onPlate(seams: readonly GapSeam[], from: Vec2, to: Vec2): { enter: Cut; leave: Cut } {
  let enter: Cut = { share: 0, by: null };
  let leave: Cut = { share: 1, by: null };
  for (const { by, foot, head, depth, besideMm } of seams) {
    const [p, q] = [depth(from), depth(to)];
    if (p >= 0 && q >= 0) continue;
    // A pattern turns far enough for its other end to lie behind the seam's line carried on: only beside the seam itself
    // is anything taken off, at the ends as far as the gap runs along their edges.
    const isBeside = (end: "a" | "b") => toSegment(end === "a" ? from : to, foot, head) <= besideMm[end];
    const share = p / (p - q);
    // All of it lies in the gap: there is no plate under it.
    if (p < 0 && q < 0 && isBeside("a") && isBeside("b"))
      return { enter: { share: 1, by }, leave: { share: 1, by } };
    if (p < 0 && q > 0 && share > enter.share && isBeside("a")) enter = { share, by };
    if (q < 0 && p > 0 && share < leave.share && isBeside("b")) leave = { share, by };
  }
  return { enter, leave };
}

/** Angle between the planes that touch the skin at two normal angles, each on the side of what lies between. [rad] */
function acrossRad(skin: Skin, from: number, to: number): number {
  const [p, q] = [planeNormal(from, leanAt(skin, from, 1).beta), planeNormal(to, leanAt(skin, to, -1).beta)];
  return Math.atan2(length3(cross3(p, q)), dot3(p, q));
}

/**
 * Turning of the plate from where a curved stretch begins to any normal angle of it. Bends are shared out by asking it
 * hundreds of times, so it is added up once, at the first question.
 */
function turnedFrom(skin: Skin, from: number, to: number): (theta: number) => number {
  let turned: ((theta: number) => number) | undefined;
  return (theta) => {
    turned ??=
      antiderivative((at) => turningRate(skin, at, at < to ? 1 : -1), from, to) ??
      ((at) => turning(skin, { from, to: at }));
    return turned(theta);
  };
}

/** The curved stretches of one blank, from seam 1 to seam 2. */
function zonesOfBlank(skin: Skin, laid: LaidBlank): BendZone[] {
  const { flat, blank } = laid;
  const count = flat.net.a.length;
  const stations = flat.development.stations.slice(0, count);
  const along = { a: lengthsTo(flat.net.a), b: lengthsTo(flat.net.b) };
  const off = { a: gapOff(laid, "a", 0), b: gapOff(laid, "b", 0) };
  /** Length of each end's edge of the plate as cut. */
  const wholeOf = (end: "a" | "b") =>
    Math.max(0, (along[end].at(-1) as number) - off[end] - gapOff(laid, end, -1));
  const whole = { a: wholeOf("a"), b: wholeOf("b") };
  const seams = gapSeams(laid);
  const theta = (i: number) => (stations[i] as (typeof stations)[number]).theta;
  const flatAt = (i: number) => {
    const [p, q] = [stations[i], stations[i + 1]];
    return p !== undefined && q !== undefined && isFlat(p, q);
  };

  /** The element at one normal angle, between the stations first … last. */
  const place = (at: number, first: number, last: number) => {
    let [i, beyond] = [first, last];
    while (beyond - i > 1) {
      const middle = (i + beyond) >> 1;
      if (theta(middle) <= at) i = middle;
      else beyond = middle;
    }
    const share = Math.min(1, Math.max(0, (at - theta(i)) / (theta(i + 1) - theta(i))));
    const on = (end: "a" | "b") => between2(flat.net[end][i] as Vec2, flat.net[end][i + 1] as Vec2, share);
    const reach = (end: "a" | "b") => {
      const [p, q] = [along[end][i] as number, along[end][i + 1] as number];
      return Math.max(0, p + share * (q - p) - off[end]);
    };
    const lengthMm = elementMm(skin, at, at >= theta(last) - SAME_ANGLE ? -1 : 1);
    const [foot, head] = [on("a"), on("b")];
    const { enter, leave } = onPlate(seams, foot, head);
    const cut = { a: enter.by, b: leave.by };
    // A line whose end the gap has cut off begins on a seam's edge: at the corner of that edge, told along the end.
    const alongOf = (end: "a" | "b") =>
      cut[end] === "seam 1" ? 0 : cut[end] === "seam 2" ? whole[end] : Math.min(reach(end), whole[end]);
    return {
      planDeg: degrees(wrap(at)),
      lengthMm: (leave.share - enter.share) * lengthMm,
      alongMm: { a: alongOf("a"), b: alongOf("b") },
      from: between2(foot, head, enter.share),
      to: between2(foot, head, leave.share),
    };
  };

  const zones: BendZone[] = [];
  let first = 0;
  for (let i = 0; i < count; i++) {
    if (i < count - 1 && !flatAt(i)) continue;
    if (i > first) {
      const [start, last] = [first, i];
      const [fromRad, toRad] = [theta(start), theta(last)];
      const edge = (end: "a" | "b") => (along[end][last] as number) - (along[end][start] as number);
      const edgeMm = { a: edge("a"), b: edge("b") };
      const wide = edgeMm.a > edgeMm.b ? "a" : "b";
      zones.push({
        piece: blank.piece,
        fromRad,
        toRad,
        afterFlat: flatAt(start - 1),
        beforeFlat: flatAt(last),
        turnedRad: turnedFrom(skin, fromRad, toRad),
        acrossRad: acrossRad(skin, fromRad, toRad),
        edgeMm,
        wideRadiusMm: (at) => squareRadii(skin, at, 1)[wide],
        place: (at) => place(at, start, last),
      });
    }
    first = i + 1;
  }
  return zones;
}

/** The curved stretches of all blanks of a part. */
export function bendZones(skin: Skin, laid: readonly LaidBlank[]): BendZone[] {
  return laid.flatMap((one) => zonesOfBlank(skin, one));
}

import { add3, cross3, dot3, distance3, length3, scale3, sub3, type Vec3 } from "./vector.ts";

/** A stretch of a rim that is bent alike: how long it is in the blank, and its radius in the plane of a rim bent so all round. [mm] */
export interface RimSpan {
  readonly arcMm: number;
  /** Infinity where it is straight. */
  readonly levelMm: number;
}

/** The end of a blank whose seam edges meet in one point, or are parallel. */
interface SpannedRim {
  /** From the point where the seam edges meet, along them, to the rim; Infinity where they are parallel. [mm] */
  readonly reachMm: number;
  readonly spans: readonly RimSpan[];
}

/** Parallel edges are taken to meet this many radii away: nothing of it shows in a length. */
const FAR = 1e4;

/** Along the seam edges, along the rim, and square to the plate. */
type Frame = readonly [Vec3, Vec3, Vec3];

/** Turned about a line through the origin by an angle. */
function rotated(point: Vec3, axis: Vec3, angleRad: number): Vec3 {
  const [cos, sin] = [Math.cos(angleRad), Math.sin(angleRad)];
  return add3(
    add3(scale3(point, cos), scale3(cross3(axis, point), sin)),
    scale3(axis, dot3(axis, point) * (1 - cos)),
  );
}

/** What a frame turns about while it goes along a stretch with this bend on the unit sphere, and how fast. */
function turning([along, , normal]: Frame, bend: number): { readonly axis: Vec3; readonly speed: number } {
  const spin = add3(scale3(along, bend), normal);
  const speed = length3(spin);
  return { axis: scale3(spin, 1 / speed), speed };
}

/** Cotangent of the half angle of the cone that a rim bent so all round would be the end of. */
const bendOf = (levelMm: number, reachMm: number): number =>
  levelMm >= reachMm ? 0 : Math.sqrt((reachMm - levelMm) * (reachMm + levelMm)) / levelMm;

/** Both corners of such a rim, and the axis of the stretch that is bent most. [mm] */
interface RimCorners {
  readonly first: Vec3;
  readonly last: Vec3;
  /** Of length 1. */
  readonly axis: Vec3;
}

/**
 * On the unit sphere about the point where the seam edges meet the rim is a curve as long as its angle in the blank, whose
 * geodesic curvature is cot a where the blank is bent to a half angle a, and 0 where it is straight: stretch by stretch it
 * turns about a line that stands still.
 *
 * @param nearerMm by how much the corners lie nearer to the axis than the middle, level with it
 */
function cornersOf({ reachMm, spans }: SpannedRim, nearerMm: number): RimCorners {
  const tightest = spans.reduce((one, other) => (other.levelMm < one.levelMm ? other : one));
  const reach = Math.min(reachMm, FAR * Math.min(tightest.levelMm, 1e9));
  const start: Frame = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  let [frame, axis]: [Frame, Vec3] = [start, start[2]];
  for (const span of spans) {
    const turn = turning(frame, bendOf(span.levelMm, reach));
    if (span === tightest) axis = turn.axis;
    const by = (point: Vec3) => rotated(point, turn.axis, (turn.speed * span.arcMm) / reach);
    frame = [by(frame[0]), by(frame[1]), by(frame[2])];
  }
  const corner = ([along, , normal]: Frame): Vec3 => {
    const level = sub3(normal, scale3(axis, dot3(normal, axis)));
    const inwards = length3(level) > 0 ? scale3(level, nearerMm / length3(level)) : level;
    return add3(scale3(along, reach), inwards);
  };
  return { first: corner(start), last: corner(frame), axis };
}

/**
 * Straight across from one end of such a rim to the other, between corners that lie so far in from the middle.
 *
 * @returns [mm]
 * @see derived here
 * @example acrossSpansMm({ reachMm: 1000, spans: [{ arcMm: 1000 * Math.PI, levelMm: Infinity }] }, 0) // → 2000
 */
export function acrossSpansMm(rim: SpannedRim, nearerMm: number): number {
  const { first, last } = cornersOf(rim, nearerMm);
  return distance3(first, last);
}

/** Where the last corner of a rim stands to its first, seen along the axis. [mm] */
export interface RimEnd {
  /** Farther from the axis. */
  readonly outsideMm: number;
  /** Past it along the round; below 0 where it falls short. */
  readonly pastMm: number;
}

/**
 * Where the rim of a whole turn, or nearly, ends beside where it began.
 *
 * @see derived here
 */
export function rimEnd(rim: SpannedRim): RimEnd {
  const { first, last, axis } = cornersOf(rim, 0);
  const level = (point: Vec3) => sub3(point, scale3(axis, dot3(point, axis)));
  const [one, other] = [level(first), level(last)];
  const radiusMm = length3(one);
  const turned = Math.atan2(dot3(cross3(one, other), axis), dot3(one, other));
  return { outsideMm: length3(other) - radiusMm, pastMm: turned * radiusMm };
}

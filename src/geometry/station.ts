import { TURN, wrap } from "./angle.ts";
import type { Rim, Side } from "./rim.ts";
import { leanAt, planeNormal, type Skin } from "./skin.ts";
import { SAME_ANGLE } from "./tolerance.ts";
import { distance3, dot3, middle3, type Vec2, type Vec3 } from "./vector.ts";

/** One element of a skin: the straight line between two points that share an outward normal. */
export interface Station {
  /** Outward normal angle in plan; may pass 2π where a skin is followed round. [rad] */
  readonly theta: number;
  readonly a: Vec3;
  readonly b: Vec3;
  /** Of the tangent plane along the element. */
  readonly normal: Vec3;
}

const WIDEST_STEP = TURN / 32;
const DEEPEST = 40;
/** Beyond this many stations a part is too extreme to be one. */
export const MOST_STATIONS = 1 << 14;

function pointAt(rim: Rim, level: number, theta: number, side: Side): Vec3 {
  const [x, y]: Vec2 = rim.point(theta, side);
  return [x, y, level];
}

/** The element at one normal angle; at a break the limit from one side. */
export function stationAt(skin: Skin, theta: number, side: Side): Station {
  const at = wrap(theta); // round by round the very same numbers
  return {
    theta,
    a: pointAt(skin.a, skin.baseMm, at, side),
    b: pointAt(skin.b, skin.baseMm + skin.heightMm, at, side),
    normal: planeNormal(at, leanAt(skin, at, side).beta),
  };
}

/** Length of that element, where nothing else of it is asked. [mm] */
export function elementMm(skin: Skin, theta: number, side: Side): number {
  const at = wrap(theta);
  return distance3(pointAt(skin.a, 0, at, side), pointAt(skin.b, skin.heightMm, at, side));
}

/** The line down the middle of a flat: from the middle of one side to the middle of the other, or to its corner. */
function middleOfFlat(before: Station, after: Station): Station {
  return { ...before, a: middle3(before.a, after.a), b: middle3(before.b, after.b) };
}

const coincide = (p: Station, q: Station): boolean => distance3(p.a, q.a) === 0 && distance3(p.b, q.b) === 0;

/** Normal angles within from … to at which either end has a break, whole turns added as needed, in no order. */
export function breaksBetween(skin: Skin, from: number, to: number): number[] {
  const found: number[] = [];
  for (const at of [...skin.a.breaks, ...skin.b.breaks]) {
    const first = at + Math.ceil((from - SAME_ANGLE - at) / TURN) * TURN;
    for (let theta = first; theta <= to + SAME_ANGLE; theta += TURN) found.push(theta);
  }
  return found;
}

function risingAndApart(thetas: readonly number[]): number[] {
  const sorted = [...thetas].sort((p, q) => p - q);
  return sorted.filter((theta, i) => i === 0 || theta - (sorted[i - 1] as number) > SAME_ANGLE);
}

/** Elements at both limits of one knot: a flat between them, or one element twice where nothing breaks. */
function limits(skin: Skin, theta: number): readonly [Station, Station] {
  return [stationAt(skin, theta, -1), stationAt(skin, theta, 1)];
}

function turnedFar(p: Station, q: Station): boolean {
  return q.theta - p.theta > WIDEST_STEP || dot3(p.normal, q.normal) < Math.cos(WIDEST_STEP);
}

/**
 * Stations strictly between two, close enough that the tangent plane turns little from one to the next; no more than a part
 * may have, for a plane that lies level to rounding turns from any station to any other.
 */
function fill(skin: Skin, p: Station, q: Station, out: Station[], depth = 0): void {
  const middle = stationAt(skin, (p.theta + q.theta) / 2, 1);
  if (depth >= DEEPEST || out.length > MOST_STATIONS) return;
  if (!(turnedFar(p, q) || turnedFar(p, middle) || turnedFar(middle, q))) return;
  fill(skin, p, middle, out, depth + 1);
  out.push(middle);
  fill(skin, middle, q, out, depth + 1);
}

/** A stretch of normal angles, followed counter-clockwise in plan. [rad] */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Normal angles that must be stations: knots as elements, cuts also down the middle of a flat they fall on. [rad] */
export interface Wanted {
  readonly knots?: readonly number[];
  readonly cuts?: readonly number[];
}

/**
 * The elements of a skin from one normal angle round to another: at every knot asked for, at both limits of every
 * break, and between them often enough that the plane turns by no more than a 32nd of a turn from one to the next.
 * A start or end that falls on a flat lies in the middle of that flat.
 */
export function stationsBetween(skin: Skin, span: Span, { knots = [], cuts = [] }: Wanted = {}): Station[] {
  const { from, to } = span;
  const inside = [...breaksBetween(skin, from, to), ...cuts, ...knots].filter(
    (theta) => theta > from + SAME_ANGLE && theta < to - SAME_ANGLE,
  );
  const stations: Station[] = [];
  for (const theta of [from, ...risingAndApart(inside), to]) {
    const [before, after] = limits(skin, theta);
    const previous = stations.at(-1);
    if (previous) fill(skin, previous, before, stations);
    if (coincide(before, after)) stations.push(after);
    else if (theta === from) stations.push(middleOfFlat(before, after), after);
    else if (theta === to) stations.push(before, middleOfFlat(before, after));
    else if (isAmong(cuts, theta)) stations.push(before, middleOfFlat(before, after), after);
    else stations.push(before, after);
  }
  return stations;
}

const isAmong = (thetas: readonly number[], theta: number): boolean =>
  thetas.some((one) => Math.abs(one - theta) <= SAME_ANGLE);

/** Is the strip between two neighbours flat, so that nothing lies between them? */
export const isFlat = (p: Station, q: Station): boolean => q.theta - p.theta <= SAME_ANGLE;

/** Twice as many: one more station in the middle of each curved space; old ones stay the very same. */
export function halved(skin: Skin, stations: readonly Station[]): Station[] {
  const out: Station[] = [];
  stations.forEach((station, i) => {
    const previous = stations[i - 1];
    if (previous && !isFlat(previous, station))
      out.push(stationAt(skin, (previous.theta + station.theta) / 2, 1));
    out.push(station);
  });
  return out;
}

/** Where each station of a coarser list stands in the list that `halved` made of it. */
export function placesAfterHalving(stations: readonly Station[]): number[] {
  const places: number[] = [];
  stations.forEach((station, i) => {
    const previous = stations[i - 1];
    const last = places.at(-1) ?? -1;
    places.push(last + (previous && !isFlat(previous, station) ? 2 : 1));
  });
  return places;
}

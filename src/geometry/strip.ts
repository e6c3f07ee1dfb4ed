import type { Station } from "./station.ts";
import { NO_LENGTH_MM } from "./tolerance.ts";
import { distance2, distance3, type Vec2, type Vec3 } from "./vector.ts";

/** A strip laid flat: for each station its two ends on the sheet. Inside face up, end B up the sheet. [mm] */
export interface FlatStrip {
  readonly a: readonly Vec2[];
  readonly b: readonly Vec2[];
}

/** An edge that stands both in space and on the sheet. */
interface Edge {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly flatFrom: Vec2;
  readonly flatTo: Vec2;
}

/** On which side of the edge the new corner goes: normal angles grow to the left. */
type Hand = 1 | -1;

/**
 * Third corner of a triangle laid into the sheet beside an edge that lies there already:
 * along = v·e, across = |v × e|. Unlike the law of cosines this keeps its digits on slivers.
 */
function thirdCorner(edge: Edge, corner: Vec3, hand: Hand): Vec2 {
  const { from, to, flatFrom, flatTo } = edge;
  // Number by number, for this is what a development is made of: thousands of triangles with every key at the bench.
  const ex = to[0] - from[0];
  const ey = to[1] - from[1];
  const ez = to[2] - from[2];
  const vx = corner[0] - from[0];
  const vy = corner[1] - from[1];
  const vz = corner[2] - from[2];
  const length = Math.sqrt(ex * ex + ey * ey + ez * ez);
  const along = (vx * ex + vy * ey + vz * ez) / length;
  const cx = vy * ez - vz * ey;
  const cy = vz * ex - vx * ez;
  const cz = vx * ey - vy * ex;
  const across = (hand * Math.sqrt(cx * cx + cy * cy + cz * cz)) / length;
  const x = (flatTo[0] - flatFrom[0]) / length;
  const y = (flatTo[1] - flatFrom[1]) / length;
  return [flatFrom[0] + along * x - across * y, flatFrom[1] + along * y + across * x];
}

/** An element that lies on the sheet. */
export interface LaidStation {
  readonly station: Station;
  readonly a: Vec2;
  readonly b: Vec2;
}

/** Lays one more element beside one that lies there: two triangles, or one where a side has no length. */
export function layNext(here: LaidStation, next: Station, hand: Hand): LaidStation {
  const { station, a: flatA, b: flatB } = here;
  const element = { from: station.a, to: station.b, flatFrom: flatA, flatTo: flatB };
  const b = distance3(station.b, next.b) > NO_LENGTH_MM ? thirdCorner(element, next.b, hand) : flatB;
  const diagonal = { from: station.a, to: next.b, flatFrom: flatA, flatTo: b };
  const a = distance3(station.a, next.a) > NO_LENGTH_MM ? thirdCorner(diagonal, next.a, hand) : flatA;
  return { station: next, a, b };
}

/**
 * Lays the strip between stations into the plane, space after space. The first element stands upright on the origin;
 * normal angles grow to the left.
 */
export function layFlat(stations: readonly Station[]): FlatStrip {
  const first = stations[0];
  if (!first) throw new RangeError("a strip needs a station");
  let here: LaidStation = { station: first, a: [0, 0], b: [0, distance3(first.a, first.b)] };
  const laid = { a: [here.a], b: [here.b] };
  for (let i = 1; i < stations.length; i++) {
    here = layNext(here, stations[i] as Station, 1);
    laid.a.push(here.a);
    laid.b.push(here.b);
  }
  return laid;
}

/** Greatest change in the length of an element or of a step along an edge, between space and sheet: rounding only. [mm] */
export function stretch(stations: readonly Station[], strip: FlatStrip): number {
  let worst = 0;
  const compare = (p: Vec3, q: Vec3, flatP: Vec2 | undefined, flatQ: Vec2 | undefined) => {
    if (flatP && flatQ) worst = Math.max(worst, Math.abs(distance3(p, q) - distance2(flatP, flatQ)));
  };
  stations.forEach((station, i) => {
    compare(station.a, station.b, strip.a[i], strip.b[i]);
    const next = stations[i + 1];
    if (!next) return;
    compare(station.a, next.a, strip.a[i], strip.a[i + 1]);
    compare(station.b, next.b, strip.b[i], strip.b[i + 1]);
  });
  return worst;
}

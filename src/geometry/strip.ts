import { type Station } from "./station.ts";
import { NO_LENGTH_MM } from "./tolerance.ts";
import { cross3, distance2, distance3, dot3, length3, sub3, type Vec2, type Vec3 } from "./vector.ts";

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

/**
 * Third corner of a triangle laid into the sheet to the left of an edge that lies there already:
 * along = v·e, across = |v × e|. Unlike the law of cosines this keeps its digits on slivers.
 */
function thirdCorner(edge: Edge, corner: Vec3): Vec2 {
  const e = sub3(edge.to, edge.from);
  const v = sub3(corner, edge.from);
  const length = length3(e);
  const along = dot3(v, e) / length;
  const across = length3(cross3(v, e)) / length;
  const x = (edge.flatTo[0] - edge.flatFrom[0]) / length;
  const y = (edge.flatTo[1] - edge.flatFrom[1]) / length;
  return [edge.flatFrom[0] + along * x - across * y, edge.flatFrom[1] + along * y + across * x];
}

/**
 * Lays the strip between stations into the plane, two triangles a space (one where a side has no length), each from
 * the edge it shares with the one before. The first element stands upright on the origin; normal angles grow to the left.
 */
export function layFlat(stations: readonly Station[]): FlatStrip {
  const first = stations[0];
  if (!first) throw new RangeError("a strip needs a station");
  const a: Vec2[] = [[0, 0]];
  const b: Vec2[] = [[0, distance3(first.a, first.b)]];
  for (let i = 1; i < stations.length; i++) {
    const here = stations[i - 1] as Station;
    const next = stations[i] as Station;
    const flatA = a[i - 1] as Vec2;
    let flatB = b[i - 1] as Vec2;
    const element = { from: here.a, to: here.b, flatFrom: flatA, flatTo: flatB };
    if (distance3(here.b, next.b) > NO_LENGTH_MM) flatB = thirdCorner(element, next.b);
    const diagonal = { from: here.a, to: next.b, flatFrom: flatA, flatTo: flatB };
    a.push(distance3(here.a, next.a) > NO_LENGTH_MM ? thirdCorner(diagonal, next.a) : flatA);
    b.push(flatB);
  }
  return { a, b };
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

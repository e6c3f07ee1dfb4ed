import { type FlatStrip } from "./strip.ts";
import { type Station } from "./station.ts";
import { NO_LENGTH_MM, SAME_ANGLE } from "./tolerance.ts";
import {
  add2,
  cross2,
  cross3,
  distance2,
  length3,
  middle2,
  scale2,
  sub2,
  sub3,
  unit2,
  type Vec2,
  type Vec3,
} from "./vector.ts";

/**
 * What must be added along an element so that an edge cut square to the plate still reaches the end plane over its
 * full thickness: (t/2) tan β square to the edge, divided by the sine of the angle between element and edge. [mm]
 */
function allowance(station: Station, thicknessMm: number): number {
  const [x, y, z] = station.normal;
  const level = Math.hypot(x, y);
  const element = sub3(station.b, station.a);
  const alongRim: Vec3 = [-y / level, x / level, 0];
  const sine = length3(cross3(element, alongRim)) / length3(element);
  return ((thicknessMm / 2) * Math.abs(z / level)) / sine;
}

/** Where two straight lines meet; the middle of their starts where they are parallel. */
function meeting(p: Vec2, u: Vec2, q: Vec2, v: Vec2): Vec2 {
  const across = cross2(u, v);
  if (Math.abs(across) < SAME_ANGLE) return middle2(p, q);
  return add2(p, scale2(u, cross2(sub2(q, p), v) / across));
}

/**
 * At a corner the elements fan out from one point, and extended backwards they would cross. There the edges of the two
 * flats are moved out and meet in a mitre; where a seam lies in the corner, the edge meets the seam's own line.
 */
function mitred(net: readonly Vec2[], moved: Vec2[], along: (i: number) => Vec2): Vec2[] {
  const same = (i: number, j: number) => distance2(net[i] as Vec2, net[j] as Vec2) <= NO_LENGTH_MM;
  for (let first = 0; first < net.length; first++) {
    let last = first;
    while (last + 1 < net.length && same(first, last + 1)) last += 1;
    if (last === first) continue;
    const u = first > 0 ? sub2(net[first] as Vec2, net[first - 1] as Vec2) : along(first);
    const v = last + 1 < net.length ? sub2(net[last + 1] as Vec2, net[last] as Vec2) : along(last);
    const corner = meeting(moved[first] as Vec2, unit2(u), moved[last] as Vec2, unit2(v));
    moved.fill(corner, first, last + 1);
    first = last;
  }
  return moved;
}

/** The developed ends moved outwards by the allowance for dressing level; an end that is a point stays. */
export function withTrim(stations: readonly Station[], flat: FlatStrip, thicknessMm: number): FlatStrip {
  const ends = { a: isOnePoint(stations, "a"), b: isOnePoint(stations, "b") };
  const along = (i: number) => unit2(sub2(flat.b[i] as Vec2, flat.a[i] as Vec2));
  const up = stations.map((station, i) => scale2(along(i), allowance(station, thicknessMm)));
  const a = flat.a.map((foot, i) => sub2(foot, up[i] as Vec2));
  const b = flat.b.map((head, i) => add2(head, up[i] as Vec2));
  return {
    a: ends.a ? flat.a : mitred(flat.a, a, along),
    b: ends.b ? flat.b : mitred(flat.b, b, along),
  };
}

function isOnePoint(stations: readonly Station[], end: "a" | "b"): boolean {
  const first = stations[0];
  return first !== undefined && stations.every((s) => length3(sub3(s[end], first[end])) <= NO_LENGTH_MM);
}

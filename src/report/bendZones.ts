import { degrees, wrap } from "../geometry/angle.ts";
import { turning } from "../geometry/measure.ts";
import { leanAt, type Skin, squareRadius, turningRate } from "../geometry/skin.ts";
import { isFlat, stationAt } from "../geometry/station.ts";
import { SAME_ANGLE, SAME_POINT_MM } from "../geometry/tolerance.ts";
import { cross2, distance2, distance3, sub2, type Vec2 } from "../geometry/vector.ts";
import { type BendZone } from "../forming/bendZone.ts";
import { type LaidBlank } from "./blanks.ts";

const between = (p: Vec2, q: Vec2, share: number): Vec2 => [
  p[0] + share * (q[0] - p[0]),
  p[1] + share * (q[1] - p[1]),
];

/** Length of a path up to each of its points. */
function lengthsTo(path: readonly Vec2[]): number[] {
  let sum = 0;
  return path.map((point, i) => (sum += i === 0 ? 0 : distance2(path[i - 1] as Vec2, point)));
}

/** What a butt gap takes off an end's edge at seam 1: half the gap over the sine between edge and seam. [mm] */
function gapOff({ order, flat }: LaidBlank, end: "a" | "b"): number {
  if (order.joint.kind !== "butt") return 0;
  const { a, b } = flat.net;
  const path = flat.net[end];
  const [first] = path;
  const next = path.find((point) => first && distance2(first, point) > SAME_POINT_MM);
  const seam = sub2(b[0] as Vec2, a[0] as Vec2);
  if (!first || !next) return 0;
  const edge = sub2(next, first);
  const sine = Math.abs(cross2(seam, edge)) / (Math.hypot(...seam) * Math.hypot(...edge));
  return order.joint.gapMm / 2 / sine;
}

/** The curved stretches of one blank, from seam 1 to seam 2. */
function zonesOfBlank(skin: Skin, laid: LaidBlank): BendZone[] {
  const { flat, blank } = laid;
  const count = flat.net.a.length;
  const stations = flat.development.stations.slice(0, count);
  const along = { a: lengthsTo(flat.net.a), b: lengthsTo(flat.net.b) };
  const off = { a: gapOff(laid, "a"), b: gapOff(laid, "b") };
  const theta = (i: number) => (stations[i] as (typeof stations)[number]).theta;
  const flatAt = (i: number) => {
    const [p, q] = [stations[i], stations[i + 1]];
    return p !== undefined && q !== undefined && isFlat(p, q);
  };

  /** The element at one normal angle, between the stations first … last. */
  const place = (at: number, first: number, last: number) => {
    let i = first;
    while (i < last - 1 && theta(i + 1) <= at) i++;
    const share = Math.min(1, Math.max(0, (at - theta(i)) / (theta(i + 1) - theta(i))));
    const on = (end: "a" | "b") => between(flat.net[end][i] as Vec2, flat.net[end][i + 1] as Vec2, share);
    const reach = (end: "a" | "b") => {
      const [p, q] = [along[end][i] as number, along[end][i + 1] as number];
      return Math.max(0, p + share * (q - p) - off[end]);
    };
    const element = stationAt(skin, at, at >= theta(last) - SAME_ANGLE ? -1 : 1);
    return {
      planDeg: degrees(wrap(at)),
      lengthMm: distance3(element.a, element.b),
      alongMm: { a: reach("a"), b: reach("b") },
      from: on("a"),
      to: on("b"),
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
        turnRad: (from, to) => turning(skin, { from, to }),
        turnRate: (at) => turningRate(leanAt(skin, at, 1)),
        edgeMm,
        wideRadiusMm: (at) => squareRadius(skin[wide].support(at, 1).rho, leanAt(skin, at, 1)),
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

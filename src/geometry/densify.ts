import type { Skin } from "./skin.ts";
import { isFlat, MOST_STATIONS, type Station, stationAt } from "./station.ts";
import { type FlatStrip, layNext, type LaidStation } from "./strip.ts";
import { distance2, middle2, type Vec2 } from "./vector.ts";

/**
 * Halving a chord leaves about a quarter of the height of its arc; a third is counted, because the curvature may
 * change within it.
 */
const REMAINS = 1 / 3;
const DEEPEST = 20;

/** A development with stations so near that chords serve for its edges. */
export interface Dense {
  readonly stations: readonly Station[];
  readonly flat: FlatStrip;
  /** Greatest height of an edge over its chords, and greatest difference between both ways of laying a new point. [mm] */
  readonly chordMm: number;
}

/** Distance from a point to the line through two others; to the one point where they are one. [mm] */
function offChord(p: Vec2, from: Vec2, to: Vec2): number {
  const x = to[0] - from[0];
  const y = to[1] - from[1];
  const length = Math.sqrt(x * x + y * y);
  return length > 0 ? Math.abs(x * (p[1] - from[1]) - y * (p[0] - from[0])) / length : distance2(p, from);
}

/**
 * Puts more stations between those of a development that already lie where they belong, until every chord is within
 * the tolerance of its arc, or there are as many as a part may have. A new element is laid from both of its neighbours and
 * takes the middle; over so short a way nothing adds up.
 */
export function densify(
  skin: Skin,
  stations: readonly Station[],
  flat: FlatStrip,
  toleranceMm: number,
): Dense {
  const out = { stations: [] as Station[], a: [] as Vec2[], b: [] as Vec2[] };
  let chordMm = 0;
  const push = ({ station, a, b }: LaidStation): void => {
    out.stations.push(station);
    out.a.push(a);
    out.b.push(b);
  };
  const between = (p: LaidStation, q: LaidStation, depth: number): void => {
    const station = stationAt(skin, (p.station.theta + q.station.theta) / 2, 1);
    const [left, right] = [layNext(p, station, 1), layNext(q, station, -1)];
    const m = { station, a: middle2(left.a, right.a), b: middle2(left.b, right.b) };
    const height = Math.max(offChord(m.a, p.a, q.a), offChord(m.b, p.b, q.b)) * REMAINS;
    const room = depth < DEEPEST && out.stations.length < MOST_STATIONS;
    const more = height > toleranceMm && room;
    if (more) between(p, m, depth + 1);
    push(m);
    if (more) between(m, q, depth + 1);
    else chordMm = Math.max(chordMm, height, distance2(left.a, right.a), distance2(left.b, right.b));
  };
  stations.forEach((station, i) => {
    const here = { station, a: flat.a[i] as Vec2, b: flat.b[i] as Vec2 };
    const before = stations[i - 1];
    if (before && !isFlat(before, station))
      between({ station: before, a: flat.a[i - 1] as Vec2, b: flat.b[i - 1] as Vec2 }, here, 0);
    push(here);
  });
  return { stations: out.stations, flat: { a: out.a, b: out.b }, chordMm };
}

import { densify } from "./densify.ts";
import type { Skin } from "./skin.ts";
import { pathLength, polygonArea } from "./polygon.ts";
import {
  halved,
  MOST_STATIONS,
  placesAfterHalving,
  type Span,
  type Station,
  stationsBetween,
  type Wanted,
} from "./station.ts";
import { type FlatStrip, layFlat, stretch } from "./strip.ts";
import { OUTLINE_MM } from "./tolerance.ts";
import { distance2, type Vec2 } from "./vector.ts";

/** Points settle to this share of the tolerance; the chords between them may use the rest. */
const POINT_SHARE = 1 / 4;

/** What can be measured on a pattern. [mm, mm²] */
interface Measures {
  readonly a: number;
  readonly b: number;
  readonly areaMm2: number;
}

/** The exact development of a piece of skin, as closely as was asked. */
export interface Development {
  readonly stations: readonly Station[];
  readonly flat: FlatStrip;
  /** Largest move of a point at the last halving and largest height of an arc over its chord, together. [mm] */
  readonly outlineMm: number;
  /** Lengths of both ends and area as laid, chords extrapolated away: to be held against the exact skin's. */
  readonly measured: Measures;
  /** Rounding of the lengths laid. [mm] */
  readonly lengthMm: number;
  /** Was the tolerance reached? */
  readonly settled: boolean;
}

/** One Richardson step: errors fall as 1/N², so (4 P₂ₙ − P₁ₙ)/3 is free of its first term. */
const richardson = (coarse: number, fine: number): number => (4 * fine - coarse) / 3;

function measure(coarse: FlatStrip, fine: FlatStrip): Measures {
  const area = ({ a, b }: FlatStrip) => Math.abs(polygonArea([...a].reverse().concat(b)));
  return {
    a: richardson(pathLength(coarse.a), pathLength(fine.a)),
    b: richardson(pathLength(coarse.b), pathLength(fine.b)),
    areaMm2: richardson(area(coarse), area(fine)),
  };
}

function extrapolated(coarse: FlatStrip, fine: FlatStrip, places: readonly number[]): FlatStrip {
  const step = (p: readonly Vec2[], q: readonly Vec2[]): Vec2[] =>
    p.map((old, i) => {
      const young = q[places[i] as number] as Vec2;
      return [richardson(old[0], young[0]), richardson(old[1], young[1])];
    });
  return { a: step(coarse.a, fine.a), b: step(coarse.b, fine.b) };
}

/** How far points moved from one extrapolation to the next, both edges. [mm] */
function largestMove(before: FlatStrip, after: FlatStrip, places: readonly number[]): number {
  let worst = 0;
  for (const edge of ["a", "b"] as const)
    before[edge].forEach((old, i) => {
      worst = Math.max(worst, distance2(old, after[edge][places[i] as number] as Vec2));
    });
  return worst;
}

/**
 * Develops the skin from one normal angle round to another. Strips are halved and extrapolated until no point moves
 * any more; then points are put between until the chords are near enough to the arcs.
 *
 * @param span normal angles of seam 1 and seam 2 [rad]
 * @param wanted normal angles that must be among the stations [rad]
 * @param toleranceMm furthest that the outline may lie from the exact one [mm]
 */
export function developBetween(
  skin: Skin,
  span: Span,
  wanted: Wanted = {},
  toleranceMm = OUTLINE_MM,
): Development {
  const forPoints = toleranceMm * POINT_SHARE;
  let coarse = stationsBetween(skin, span, wanted);
  let coarseFlat = layFlat(coarse);
  let before: { flat: FlatStrip; places: readonly number[] } | undefined;
  for (;;) {
    const fine = halved(skin, coarse);
    const fineFlat = layFlat(fine);
    const places = placesAfterHalving(coarse);
    const flat = extrapolated(coarseFlat, fineFlat, places);
    const move = before ? largestMove(before.flat, flat, before.places) : Infinity;
    const last = fine.length > MOST_STATIONS;
    if (move <= forPoints || last) {
      const dense = densify(skin, coarse, flat, toleranceMm - forPoints);
      const outlineMm = move + dense.chordMm;
      const settled = outlineMm <= toleranceMm;
      const measured = measure(before?.flat ?? flat, flat);
      if (settled || last)
        return { ...dense, outlineMm, measured, lengthMm: stretch(fine, fineFlat), settled };
    }
    before = { flat, places };
    coarse = fine;
    coarseFlat = fineFlat;
  }
}

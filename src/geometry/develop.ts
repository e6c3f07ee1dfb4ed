import { type Skin } from "./skin.ts";
import {
  halved,
  placesAfterHalving,
  type Span,
  type Station,
  stationsBetween,
  type Wanted,
} from "./station.ts";
import { type FlatStrip, layFlat, stretch } from "./strip.ts";
import { OUTLINE_MM } from "./tolerance.ts";
import { cross2, distance2, length2, sub2, type Vec2 } from "./vector.ts";

/** Beyond this many stations a part is too extreme to be one. */
const MOST_STATIONS = 1 << 16;

/** The exact development of a piece of skin, as closely as was asked. */
export interface Development {
  readonly stations: readonly Station[];
  readonly flat: FlatStrip;
  /** Largest move of a point at the last halving, new points against the chord they replace included. [mm] */
  readonly outlineMm: number;
  /** Rounding of the lengths laid. [mm] */
  readonly lengthMm: number;
  /** Was the tolerance reached? */
  readonly settled: boolean;
}

/** One Richardson step: the error of a strip falls as 1/N², so (4 P₂ₙ − P₁ₙ)/3 is free of its first term. */
function extrapolated(coarse: FlatStrip, fine: FlatStrip, places: readonly number[]): FlatStrip {
  const step = (p: readonly Vec2[], q: readonly Vec2[]): Vec2[] =>
    p.map((old, i) => {
      const young = q[places[i] as number] as Vec2;
      return [(4 * young[0] - old[0]) / 3, (4 * young[1] - old[1]) / 3];
    });
  return { a: step(coarse.a, fine.a), b: step(coarse.b, fine.b) };
}

/** Distance from a point to the line through two others; to the one point where they are one. [mm] */
function offChord(p: Vec2, from: Vec2, to: Vec2): number {
  const chord = sub2(to, from);
  const length = length2(chord);
  return length > 0 ? Math.abs(cross2(chord, sub2(p, from))) / length : distance2(p, from);
}

/** How far the outline moved from one extrapolation to the next, both edges. [mm] */
function largestMove(before: FlatStrip, after: FlatStrip, places: readonly number[]): number {
  let worst = 0;
  for (const edge of ["a", "b"] as const)
    places.forEach((place, i) => {
      const now = after[edge][place] as Vec2;
      worst = Math.max(worst, distance2(before[edge][i] as Vec2, now));
      const previous = i > 0 ? (places[i - 1] as number) : place;
      if (place - previous === 2) {
        const between = after[edge][place - 1] as Vec2;
        worst = Math.max(worst, offChord(between, after[edge][previous] as Vec2, now));
      }
    });
  return worst;
}

/**
 * Develops the skin from one normal angle round to another: strips are halved and extrapolated until no outline
 * point moves by more than the tolerance.
 *
 * @param span normal angles of seam 1 and seam 2 [rad]
 * @param wanted normal angles that must be among the stations [rad]
 * @param toleranceMm largest move allowed [mm]
 */
export function developBetween(
  skin: Skin,
  span: Span,
  wanted: Wanted = {},
  toleranceMm = OUTLINE_MM,
): Development {
  let coarse = stationsBetween(skin, span, wanted);
  let coarseFlat = layFlat(coarse);
  let fine = halved(skin, coarse);
  let fineFlat = layFlat(fine);
  let places = placesAfterHalving(coarse);
  let best = extrapolated(coarseFlat, fineFlat, places);
  for (;;) {
    coarse = fine;
    coarseFlat = fineFlat;
    const oldPlaces = places;
    places = placesAfterHalving(coarse);
    fine = halved(skin, coarse);
    fineFlat = layFlat(fine);
    const next = extrapolated(coarseFlat, fineFlat, places);
    const outlineMm = largestMove(best, next, oldPlaces);
    const settled = outlineMm <= toleranceMm;
    if (settled || fine.length > MOST_STATIONS)
      return { stations: coarse, flat: next, outlineMm, lengthMm: stretch(fine, fineFlat), settled };
    best = next;
  }
}

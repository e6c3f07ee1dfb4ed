import { MM_PER_INCH, type Units } from "../geometry/units.ts";
import type { RollAsked } from "./asked.ts";
import { bentAlongMm } from "./bentAlong.ts";
import { alongZoneMm, zonesOf } from "./zones.ts";

/** Lengths that straightedges are cut to, longest first. [mm] */
const LENGTHS: Readonly<Record<Units, readonly number[]>> = {
  mm: [500, 400, 300, 200, 150, 100, 50],
  in: [20, 16, 12, 8, 6, 4, 2].map((inches) => inches * MM_PER_INCH),
};
/** The rest of a zone to either side of it takes some of its neighbour's setting. [-] */
const OF_ITS_ZONE = 0.5;

/** With less depth than this in the slackest zone when finished it would read worse than it is worth to clear the lead. [mm] */
const READS_MM = 12;

/**
 * The longest straightedge that lies in the middle half of every zone along the large edge, and is no longer than the
 * finished radius there: so the depth under it is far from that of a half circle, and reads well. As long as it still does,
 * it lies beside the lead of the zone that is rolled first too, at both ends, or at the large end alone.
 *
 * @returns its length [mm]; null where none is short enough
 * @see derived here
 */
export function straightedgeOf(asked: Pick<RollAsked, "item" | "roll">): number | null {
  const { item } = asked;
  const { large, small } = item.rimsMm;
  const zones = zonesOf(item);
  const half = item.thicknessMm / 2;
  const anyMm = Math.min(
    ...zones.map((zone) => Math.min(OF_ITS_ZONE * alongZoneMm(zone, large), zone.largeRadiusMm - half)),
  );
  const atLargeMm = Math.min(anyMm, ...bentAlongMm(asked, large));
  const atBothMm = Math.min(atLargeMm, ...bentAlongMm(asked, small));
  const slackestMm = Math.max(...zones.map(({ largeRadiusMm }) => largeRadiusMm - half));
  const longest = (mostMm: number) => LENGTHS[item.units ?? "mm"].find((length) => length <= mostMm) ?? null;
  const reads = (chordMm: number | null) =>
    chordMm !== null && depthOfRadius({ chordMm, insideMm: slackestMm }) >= READS_MM;
  return [atBothMm, atLargeMm].map(longest).find(reads) ?? longest(anyMm);
}

/**
 * Depth under a straightedge in an arc of this inside radius: h = R − √(R² − c²/4). [mm]
 *
 * @param insideMm at least half the chord
 * @see derived here, from the circle through three points
 * @example depthOfRadius({ chordMm: 300, insideMm: 1130 }) // → 10.000000
 */
export function depthOfRadius({ chordMm, insideMm }: { chordMm: number; insideMm: number }): number {
  // Written so that a gentle arc loses no figures.
  return chordMm ** 2 / 4 / (insideMm + Math.sqrt(insideMm ** 2 - chordMm ** 2 / 4));
}

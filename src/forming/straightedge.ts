import { MM_PER_INCH, type Units } from "../geometry/units.ts";
import type { FormingCase } from "./case.ts";
import { alongZoneMm, zonesOf } from "./zones.ts";

/** Lengths that straightedges are cut to, longest first. [mm] */
const LENGTHS: Readonly<Record<Units, readonly number[]>> = {
  mm: [500, 400, 300, 200, 150, 100, 50],
  in: [20, 16, 12, 8, 6, 4, 2].map((inches) => inches * MM_PER_INCH),
};
/** The rest of a zone to either side of it takes some of its neighbour's setting. [-] */
const OF_ITS_ZONE = 0.5;

/**
 * The longest straightedge that lies in the middle half of every zone along the large edge, and is no longer than the
 * finished radius there: so the depth under it is far from that of a half circle, and reads well.
 *
 * @returns its length [mm]; null where none is short enough
 * @see derived here
 */
export function straightedgeOf(item: FormingCase): number | null {
  const most = Math.min(
    ...zonesOf(item).map((zone) =>
      Math.min(OF_ITS_ZONE * alongZoneMm(zone, item.rimsMm.large), zone.largeRadiusMm - item.thicknessMm / 2),
    ),
  );
  return LENGTHS[item.units ?? "mm"].find((length) => length <= most) ?? null;
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

import { number, type Say } from "./say.ts";
import { noRaise, type RollSet } from "./trialSeen.ts";

/** What came out of one zone of a skin that is curved unevenly. */
export type ZoneOutcome = {
  /** Counted from 1, from seam edge 1. */
  readonly zone: number;
} & (
  | {
      /** Inside radius that came out at the large end and at the small end, square to the element line, at least one of them. */
      readonly largeMm?: number;
      readonly smallMm?: number;
    }
  | { readonly flat: true }
);

/** A trial of one zone: what was set there, and what came out. The tilt is that which the plan has for that zone, or was set. */
export type ZoneSeen = RollSet & ZoneOutcome;

/** Tighter than this share of the finished bend no first pass bends: a slip of the pen. [-] */
export const MOST_BENT = 1.5;

/** A smaller radius would read as none at all. */
const LEAST_TOLD = { mm: "0.01 mm", in: "0.001 in" } as const;

interface ZoneAsked {
  /** Are both ends alike, so that one measure tells both? */
  readonly pipe: boolean;
  readonly zones: readonly { readonly largeRadiusMm: number; readonly smallRadiusMm: number }[];
  readonly thicknessMm: number;
  readonly say: Say;
  /** From the flat plate to the end of the slide. [mm] */
  readonly travelMm: number;
}

/**
 * Inside radius of an arc from its depth under a straightedge: R = c²/(8h) + h/2. [mm]
 *
 * @see derived here, from the circle through three points
 * @example radiusOfDepth({ chordMm: 300, depthMm: 10 }) // → 1130.000000
 */
export function radiusOfDepth({ chordMm, depthMm }: { chordMm: number; depthMm: number }): number {
  return chordMm ** 2 / (8 * depthMm) + depthMm / 2;
}

/** Largest depth that a straightedge of this length finds in an arc: that of a half circle. [mm] */
export const deepest = (chordMm: number): number => chordMm / 2;

/** What cannot have been, in a sentence; null where it can. */
export function impossibleInZone(seen: ZoneSeen, asked: ZoneAsked): string | null {
  const { zones, thicknessMm, say, travelMm, pipe } = asked;
  const zone = zones[seen.zone - 1];
  if (!zone)
    return `there is no zone ${number(seen.zone, 0)}: the blank has ${zones.length === 1 ? "one zone" : `zones 1 to ${zones.length}`}`;
  const flat = noRaise(seen, say);
  if (flat !== null) return flat;
  if (seen.settingMm > travelMm)
    return `a setting of ${say.length(seen.settingMm)} lies beyond the slide, which goes to ${say.length(travelMm)} above the flat plate`;
  if ("flat" in seen) return null;
  if (seen.largeMm === undefined && seen.smallMm === undefined)
    return `zone ${seen.zone} has no inside radius that came out`;
  if (!pipe && (seen.largeMm === undefined || seen.smallMm === undefined))
    return `zone ${seen.zone} was measured at one end only: the roll is straight and the small end is not gripped, so the other end is wanted too`;
  const ends = [
    ["large", seen.largeMm, zone.largeRadiusMm],
    ["small", seen.smallMm, zone.smallRadiusMm],
  ] as const;
  const tight = ends.find(
    ([, insideMm, finalMm]) => insideMm !== undefined && MOST_BENT * (insideMm + thicknessMm / 2) < finalMm,
  );
  if (!tight) return null;
  const [end, insideMm = 0, finalMm] = tight;
  const told = Number(say.bare(insideMm)) > 0 ? say.length(insideMm) : `less than ${LEAST_TOLD[say.units]}`;
  return `an inside radius of ${told} at the ${end} end is far tighter than the finished part’s ${say.length(finalMm - thicknessMm / 2)} in zone ${seen.zone}`;
}

import { degrees } from "../geometry/angle.ts";
import type { FormingCase } from "./case.ts";
import type { PlateRoll } from "./machine.ts";
import { stopPlace } from "./stopPlace.ts";
import { leastRoom } from "./stopRoom.ts";

/** The blank of a cone on the rolls, with a seam edge square over the bending roll and the small edge on the stop. [mm] */
interface Square {
  /** From the apex of the flat blank to its small and its large edge. */
  readonly smallReachMm: number;
  readonly largeReachMm: number;
  /** How far the seam edge is ahead of the pinch. */
  readonly aheadMm: number;
}

/**
 * How far the large edge runs through the pinch until the element there lies parallel to the rolls. The seam edge is an
 * element, and lies parallel to them a little ahead of the pinch; so those at the pinch, which all point at the apex, lie
 * askew. The pinch drives the large edge square to the rolls and the stop holds one place of the small edge, so that the
 * blank turns about that place; the large edge that goes by meanwhile is
 *
 *   ρ (asin(a/ρ′) − asin(a/ρ)),   ρ, ρ′ from the apex to the large and the small edge, a ahead of the pinch
 *
 * From then on the blank turns about its apex. Null where the small edge does not reach back to the pinch.
 *
 * @returns [mm]
 * @see derived here
 * @example chalkToParallelMm({ smallReachMm: 500, largeReachMm: 1000, aheadMm: 0 }) // → 0
 */
export function chalkToParallelMm({ smallReachMm, largeReachMm, aheadMm }: Square): number | null {
  if (smallReachMm <= aheadMm) return null;
  return largeReachMm * (Math.asin(aheadMm / smallReachMm) - Math.asin(aheadMm / largeReachMm));
}

/**
 * Does a flat blank reach from the pinch to the bending roll with its elements parallel at the pinch, and leave something to
 * roll? As far as its large edge lies from the apex it comes ahead at the most, and a seam edge there lies turned by
 * asin(a/ρ), which its sweep has to be more than. A pipe always does.
 *
 * @param aheadMm a, from the pinch to the bending roll
 * @see derived here
 */
export function reachesBendingRoll({ cone, pieces }: FormingCase, aheadMm: number): boolean {
  if (!cone || cone.halfAngleRad <= 0) return true;
  const sine = Math.sin(cone.halfAngleRad);
  const share = (aheadMm * sine) / cone.largeRadiusMm;
  return share < 1 && Math.asin(share) < (2 * Math.PI * sine) / pieces;
}

/** Where a flat blank comes furthest past the stop: along the rolls, and before the pinch; below 0 behind it. [mm] */
interface FlatReach {
  readonly pastMm: number;
  readonly beforeMm: number;
}

/**
 * The small edge is hollow, and its ends lie nearer to the yoke than its middle. It is a piece of a circle of radius ρ′ from
 * the leading seam edge to an angle ω behind it. When the apex is b = asin(a/ρ′) off the line through stop and pinch,
 *
 *   past the stop ρ′ (cos b − cos ω),   before the pinch ρ′ (sin ω − sin b)
 *
 * and while the blank turns about the stop, b and ω grow less alike: the most is where b = π − ω, level with the pinch, if it
 * comes by there.
 *
 * @param offRad b, at first
 * @param sweepRad ω, at first
 * @see derived here
 */
export function flatReach(
  reachMm: number,
  { offRad, sweepRad }: { offRad: number; sweepRad: number },
): FlatReach {
  const turnedRad = Math.min(offRad, Math.max(0, (offRad + sweepRad - Math.PI) / 2));
  const [off, far] = [offRad - turnedRad, Math.min(Math.PI, sweepRad - turnedRad)];
  return {
    pastMm: reachMm * (Math.cos(off) - Math.cos(far)),
    beforeMm: reachMm * (Math.sin(far) - Math.sin(off)),
  };
}

/** How the flat blank of a cone is laid on the rolls, and what comes of it. */
export interface Lying extends FlatReach {
  /** What it is laid straight by: the leading seam edge in the bending roll's groove, or the element at the pinch. */
  readonly by: "groove" | "element";
  /** The leading seam edge from parallel to the rolls, its large end ahead. */
  readonly turnedDeg: number;
  /** Large edge that goes through the pinch until the element there is parallel to the rolls. [mm] */
  readonly parallelAfterMm: number;
  /** The small end's corner at that seam edge, further in than the stop: the small edge bears at the pinch. [mm] */
  readonly cornerInMm: number;
}

/**
 * Square in the groove, unless the small edge then does not reach back to the pinch, its elements are still askew when the
 * whole raise is to be on, or its far corner stands in the yoke. Else by the element at the pinch, the large end of the seam
 * edge over the bending roll. Null for a pipe and a point, for a skin that is curved unevenly, and for a blank that does not
 * reach the bending roll.
 *
 * @param aheadMm from the pinch to the bending roll
 * @see derived here
 */
export function lyingOf(item: FormingCase, roll: PlateRoll, aheadMm: number): Lying | null {
  const { cone, rimsMm, pieces } = item;
  if (!cone || cone.halfAngleRad <= 0 || cone.smallRadiusMm <= 0) return null;
  if (!reachesBendingRoll(item, aheadMm)) return null;
  const sine = Math.sin(cone.halfAngleRad);
  const [smallReachMm, largeReachMm] = [cone.smallRadiusMm / sine, cone.largeRadiusMm / sine];
  const sweepRad = (2 * Math.PI * sine) / pieces;
  const chalkMm = chalkToParallelMm({ smallReachMm, largeReachMm, aheadMm });
  if (chalkMm !== null && chalkMm <= Math.min(aheadMm, rimsMm.large / pieces - aheadMm)) {
    const offRad = Math.asin(aheadMm / smallReachMm);
    const reach = flatReach(smallReachMm, { offRad, sweepRad });
    const roomMm = (leastRoom(roll)?.roomMm ?? 0) + (stopPlace({ item, roll })?.furtherInMm ?? 0);
    if (reach.pastMm <= roomMm || reach.beforeMm > roll.rolls.topDiameter / 2)
      return {
        by: "groove",
        turnedDeg: 0,
        parallelAfterMm: chalkMm,
        cornerInMm: smallReachMm * (1 - Math.cos(offRad)),
        ...reach,
      };
  }
  const turnedRad = Math.asin(aheadMm / largeReachMm);
  return {
    by: "element",
    turnedDeg: degrees(turnedRad),
    parallelAfterMm: 0,
    cornerInMm: smallReachMm * (1 - Math.cos(turnedRad)),
    ...flatReach(smallReachMm, { offRad: 0, sweepRad: sweepRad - turnedRad }),
  };
}

import type { FormingCase } from "./case.ts";

/** The blank of a cone as it lies on the rolls with a seam edge square over the bending roll, and the small edge on the stop. [mm] */
interface Loaded {
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
export function chalkToParallelMm({ smallReachMm, largeReachMm, aheadMm }: Loaded): number | null {
  if (smallReachMm <= aheadMm) return null;
  return largeReachMm * (Math.asin(aheadMm / smallReachMm) - Math.asin(aheadMm / largeReachMm));
}

/** The same for a part: null where it cannot lie so, or has run through before. Nothing is known of uneven skins. [mm] */
export function partToParallelMm(
  { cone, rimsMm, pieces }: FormingCase,
  aheadMm: number,
): number | null | undefined {
  if (!cone || cone.halfAngleRad <= 0) return undefined;
  const reach = (radiusMm: number) => radiusMm / Math.sin(cone.halfAngleRad);
  const chalkMm = chalkToParallelMm({
    smallReachMm: reach(cone.smallRadiusMm),
    largeReachMm: reach(cone.largeRadiusMm),
    aheadMm,
  });
  return chalkMm !== null && chalkMm < rimsMm.large / pieces - aheadMm ? chalkMm : null;
}

/** Where a flat blank comes furthest past the stop, on the side where it goes in: along the rolls, and before the pinch. [mm] */
interface FlatReach {
  readonly pastMm: number;
  readonly beforeMm: number;
}

/**
 * The small edge is hollow, and both its ends lie nearer to the yoke than its middle. As the seam edge that leads comes to
 * the pinch the rest of the edge, a piece of a circle of radius ρ′ and angle ω about the apex, lies before it: its far end
 *
 *   ρ′ (1 − cos ω) past the stop,  ρ′ sin ω before the pinch,  ω at most half a turn
 *
 * @see derived here
 */
export function flatReach({ cone, pieces }: FormingCase): FlatReach | null {
  if (!cone || cone.halfAngleRad <= 0 || cone.smallRadiusMm === 0) return null;
  const sine = Math.sin(cone.halfAngleRad);
  const reachMm = cone.smallRadiusMm / sine;
  const sweepRad = Math.min(Math.PI, (2 * Math.PI * sine) / pieces);
  return { pastMm: reachMm * (1 - Math.cos(sweepRad)), beforeMm: reachMm * Math.sin(sweepRad) };
}

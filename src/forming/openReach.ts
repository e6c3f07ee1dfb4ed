import type { FormingCase } from "./case.ts";
import { closureOfShare } from "./firstPass.ts";
import { passPoints } from "./passPoints.ts";
import { isPipe, isPointed } from "./skin.ts";

/**
 * How far the far side of the small end reaches past the stop while the near side bears on it: the end's plane leans
 * towards the yoke as much as the wall leans from the axis.
 *
 *   reach = ½ d (1 − cos ψ) sin(lean),   ψ = min(180°, 360°/pieces),   whole part: d·sin(lean)
 *
 * @param end middle diameter [mm], lean [rad] from 0 to a right angle, number of pieces round
 * @returns [mm]
 * @see derived here
 * @example reachBeyondStopMm({ diameterMm: 400, leanRad: Math.PI / 6, pieces: 1 }) // → 200
 * @example reachBeyondStopMm({ diameterMm: 400, leanRad: Math.PI / 6, pieces: 4 }) // → 100
 */
export function reachBeyondStopMm(end: { diameterMm: number; leanRad: number; pieces: number }): number {
  const sweep = Math.min(Math.PI, (2 * Math.PI) / end.pieces);
  return (end.diameterMm / 2) * (1 - Math.cos(sweep)) * Math.sin(end.leanRad);
}

/** Where the far side of the small end stands while the piece is still open. */
export interface OpenReach {
  /** Share of the turn that the blank sweeps. */
  readonly closed: number;
  /** Past the stop, along the rolls. [mm] */
  readonly pastMm: number;
  /** Over the pinch. [mm] */
  readonly highMm: number;
  /** What it is reckoned from: the small end's diameter, how much of the turn a piece sweeps up to half of it, and the lean with its sine, all as open as that. [mm, rad, -] */
  readonly from: {
    readonly acrossMm: number;
    readonly sweepRad: number;
    readonly leanRad: number;
    readonly leanSine: number;
  };
}

/**
 * The reach when the piece has been through the rolls at the lowest setting of the plan, the first trial of the first
 * pass: less closed, the same skin is a wider cone that leans more, and reaches further.
 *
 *   at closure k:   d/k,   sin(lean)/k,   k times the sweep of a piece
 *
 * A skin that is curved unevenly is taken as the right cone that leans as much as its steepest side. Null for a pipe,
 * which has no stop, and for a point, which reaches nowhere.
 *
 * @see derived here
 */
export function openReach(item: FormingCase): OpenReach | null {
  if (isPipe(item) || isPointed(item)) return null;
  const trial = passPoints(item).find(({ id }) => id === "trial");
  if (!trial) return null;
  const closed = trial.closed ?? closureOfShare({ halfAngleRad: item.leanRad, share: trial.share });
  const leanSine = Math.min(1, Math.sin(item.leanRad) / closed);
  const leanRad = Math.asin(leanSine);
  const acrossMm = item.rimsMm.small / Math.PI / closed;
  const pieces = item.pieces / closed;
  const pastMm = reachBeyondStopMm({ diameterMm: acrossMm, leanRad, pieces });
  const sweepRad = Math.min(Math.PI, (2 * Math.PI) / pieces);
  return {
    closed,
    pastMm,
    highMm: pastMm / Math.tan(leanRad),
    from: { acrossMm, sweepRad, leanRad, leanSine },
  };
}

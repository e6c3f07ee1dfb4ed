import type { RollAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge, state } from "./judge.ts";
import { isPipe, isPointed } from "./skin.ts";

/**
 * How far the far side of the small end reaches past the stop while the near side bears on it: the end's plane leans
 * towards the frame as much as the wall leans from the axis.
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

/** Is there room for that beyond the stop, or does the piece strike the yoke? A point reaches nowhere, a pipe has no stop. [mm] */
export function roomBeyondStop({ item, roll, say }: RollAsked): Check | null {
  if (isPipe(item) || isPointed(item) || roll.coneAttachment?.fitted === false) return null;
  const value = reachBeyondStopMm({
    diameterMm: item.rimsMm.small / Math.PI,
    leanRad: item.leanRad,
    pieces: item.pieces,
  });
  const words = {
    id: "room-beyond-stop",
    title: "Room beyond the stop",
    sense: "at most" as const,
    unit: "mm",
    basis: DERIVED,
    rule: "small end diameter × sin(lean) ≤ clear room between stop and frame",
  };
  const limit = roll.coneAttachment?.clearRoom;
  if (limit === undefined)
    return state({
      ...words,
      value,
      verdict: "caution",
      advice: `Measure from the stop to the yoke: the far side of the small end reaches ${say.length(value)} past the stop and must not strike it.`,
    });
  return judge({
    ...words,
    value,
    limit,
    beyond: "fail",
    advice: (verdict) =>
      verdict === "pass"
        ? `The far side of the small end reaches ${say.length(value)} past the stop, ${say.length(limit - value)} short of the frame.`
        : `The far side of the small end reaches ${say.length(value)} past the stop and strikes the frame after ${say.length(limit)}: set the stop further in, make more pieces, or use the press brake.`,
  });
}

import type { BrakeBends } from "./brakeBends.ts";
import type { Hit } from "./brakeLines.ts";
import type { FormingCase } from "./case.ts";

/** How much plate lies behind the punch, at the hit where it is most. */
export interface BehindPunch {
  /** The shallower side of the blank behind the line, measured flat and square to it. [mm] */
  readonly depthMm: number;
  /** The most on the other side of any line: what would lie behind the wrong way round. [mm] */
  readonly otherMm: number;
  /** The hit of `depthMm`. */
  readonly piece: number;
  readonly line: number;
}

type Corners = readonly (readonly [number, number])[];

/** How far plate reaches to each side of the line that the punch stands on, the line carried on beyond both its ends. [mm] */
function sidesOf({ from, to }: Pick<Hit, "from" | "to">, corners: Corners): [number, number] {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.sqrt(x * x + y * y);
  let [left, right] = [0, 0];
  for (const [p, q] of corners) {
    const off = (x * (q - from[1]) - y * (p - from[0])) / length;
    left = Math.max(left, off);
    right = Math.max(right, -off);
  }
  return [left, right];
}

/**
 * What stands in the throat of a brake: at each hit the plate lies on both sides of the punch, and the piece can be turned
 * so that its shallower side is behind. For a line through p with unit normal n, over the corners c of the blank's hull:
 *
 *   depth = min( max (c − p)·n, max −(c − p)·n ),   the worst of all hits counts.
 *
 * Both sides together are the width square to the line, so the depth is never more than half the greatest distance
 * across the blank (half its longest side would be too little where a line runs aslant). Bends already made only shorten it.
 *
 * @returns null where the blanks or their lines are not known, or nothing is hit
 * @see derived here
 */
export function behindPunch({ blanks }: FormingCase, { hits }: BrakeBends): BehindPunch | null {
  const lines = new Map<number, number>();
  let worst = { depthMm: -1, piece: 0, line: 0 };
  let otherMm = 0;
  for (const hit of hits) {
    const line = (lines.get(hit.piece) ?? 0) + 1;
    lines.set(hit.piece, line);
    const corners = blanks[hit.piece - 1]?.hull;
    if (!corners) return null;
    const [left, right] = sidesOf(hit, corners);
    const depthMm = Math.min(left, right);
    otherMm = Math.max(otherMm, left, right);
    if (depthMm > worst.depthMm) worst = { depthMm, piece: hit.piece, line };
  }
  return hits.length === 0 ? null : { ...worst, otherMm };
}

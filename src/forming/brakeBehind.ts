import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import type { BrakeBends } from "./brakeBends.ts";
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

type Point = readonly [number, number];

interface Line {
  readonly from: Point;
  readonly to: Point;
}

/**
 * How far a blank reaches to both sides of a line that is carried on beyond both its ends. Every corner is looked at for
 * every hit, so the corners are laid out in one row of numbers first.
 */
function reachOf(corners: readonly Point[]): (line: Line) => readonly [left: number, right: number] {
  const row = new Float64Array(2 * corners.length);
  corners.forEach(([x, y], i) => {
    row[2 * i] = x;
    row[2 * i + 1] = y;
  });
  return ({ from, to }) => {
    const length = Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2);
    const [x, y] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const foot = x * from[1] - y * from[0];
    let [most, least] = [0, 0];
    for (let i = 0; i < row.length; i += 2) {
      const off = x * (row[i + 1] as number) - y * (row[i] as number) - foot;
      if (off > most) most = off;
      else if (off < least) least = off;
    }
    return [most, -least];
  };
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
  const reaches = blanks.map(({ hull }) => hull && reachOf(hull));
  const lines = new Map<number, number>();
  const sides: { readonly piece: number; readonly line: number; readonly both: readonly [number, number] }[] =
    [];
  for (const hit of hits) {
    const line = (lines.get(hit.piece) ?? 0) + 1;
    lines.set(hit.piece, line);
    const reach = reaches[hit.piece - 1];
    if (!reach) return null;
    sides.push({ piece: hit.piece, line, both: reach(hit) });
  }
  const depthMm = Math.max(...sides.map(({ both }) => Math.min(...both)));
  // Of pieces that are alike, and lines alike from both seams, the first is named.
  const worst = sides.find(({ both }) => Math.min(...both) >= depthMm - SAME_POINT_MM);
  if (!worst) return null;
  const otherMm = Math.max(...sides.map(({ both }) => Math.max(...both)));
  return { depthMm, otherMm, piece: worst.piece, line: worst.line };
}

import { radians } from "../geometry/angle.ts";
import { leanOfLine } from "../geometry/lineLean.ts";
import { standsOver } from "../forming/sheet/dressing.ts";
import type { Report } from "./report.ts";

/** What is bevelled off both ends at one line of a blank, so that they lie level. */
export interface LineBevel {
  /** As on the blank, seam edge 1 being line 1. */
  readonly number: number;
  /** Along the wall. [mm] */
  readonly offMm: number;
  /** The face of the large edge that it is taken off; at the small edge it is the other one. */
  readonly largeFace: "inside" | "outside";
}

/**
 * What is bevelled off the ends of a blank line by line, where the wall leans differently all round: an edge cut square to
 * the plate stands over the plane of its end by half the thickness times the tangent of the lean, at the face that the wall
 * leans towards.
 *
 * @returns nothing where the edges stay square, and where one size serves all round
 * @see derived here
 */
export function bevelsOf({ part, hand, solid }: Report, piece: number): LineBevel[] {
  if (part.shape !== "eccentric-cone" || part.edges === "square") return [];
  return hand.rows.flatMap((row, i) => {
    const line = solid.elements[i];
    if (row.piece !== piece || !line) return [];
    const lean = leanOfLine(line.a, line.b, radians(line.planDeg));
    const allowed = part.trimAllowance === true;
    const offMm = standsOver({ thicknessMm: part.thickness, leanRad: Math.abs(lean), allowed });
    return [{ number: row.number, offMm, largeFace: lean < 0 ? ("outside" as const) : ("inside" as const) }];
  });
}

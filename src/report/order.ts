import { TURN } from "../geometry/angle.ts";
import type { BlankOrder } from "../geometry/blank.ts";
import type { Span } from "../geometry/station.ts";
import { type Layout, pieceSpans } from "../shapes/layout.ts";
import type { Part } from "../shapes/part.ts";

/** Divisions of the round for layout by hand, as the textbooks have it. */
const USUAL_DIVISIONS = 12;

export const divisionsOf = (part: Part): number => part.divisions ?? USUAL_DIVISIONS;

/** Normal angles of the hand layout inside one piece: equal spaces from seam to seam, no more than a division wide. */
function knotsIn(span: Span, divisions: number): number[] {
  const spaces = Math.max(1, Math.round(((span.to - span.from) / TURN) * divisions));
  return Array.from({ length: spaces - 1 }, (_, i) => span.from + ((i + 1) * (span.to - span.from)) / spaces);
}

/** What each blank of a part is to be like. */
export function ordersFor(part: Part, layout: Layout): BlankOrder[] {
  const lap = part.seam?.joint === "lap";
  return pieceSpans(layout.seamRad, part.pieces ?? 1).map((span) => ({
    span,
    joint: lap ? { kind: "lap", lapMm: part.seam?.lap ?? 0 } : { kind: "butt", gapMm: part.seam?.gap ?? 0 },
    knots: knotsIn(span, divisionsOf(part)),
    ...(part.trimAllowance === true && { trimThicknessMm: part.thickness }),
    mirror: part.mirror ?? false,
  }));
}

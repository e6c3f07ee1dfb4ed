import { radians } from "../../geometry/angle.ts";
import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { direction, dot2, sub2, type Vec2 } from "../../geometry/vector.ts";
import type { Drawable } from "../../report/report.ts";
import type { Board } from "../board.ts";
import { lineStride } from "../dense.ts";
import { numberEnds, numberStill } from "../pattern/numbers.ts";
import { inPlan } from "./ends.ts";
import { planMarks } from "./plan.ts";

/** Does end A lie outside the other at the first seam, seen from above? Where they meet there, the longer one counts as the outer. */
function isAOutside({ solid, shape }: Drawable): boolean {
  const seam = solid.seams[0];
  if (!seam) return shape.rims.a >= shape.rims.b;
  const [a, b] = inPlan([seam.a, seam.b]) as [Vec2, Vec2];
  const out = dot2(sub2(a, b), direction(radians(seam.planDeg)));
  return Math.abs(out) <= SAME_POINT_MM ? shape.rims.a >= shape.rims.b : out > 0;
}

/**
 * Numbers of the elements in the view from above. The end that stands out at the seam has the room, else the longer: there the
 * first piece's numbers begin, and tell which way all run; else at the other end; else they are written across a line.
 *
 * @param isOpen is end B a circle, not a point?
 */
export function numberPlan(
  board: Board,
  { report, isOpen, at }: { report: Drawable; isOpen: boolean; at: Vec2 },
): void {
  const marks = planMarks(report, at);
  const step = lineStride(report, board.unit);
  // Of a pipe both ends stand over each other: once is enough.
  const apart = report.hand.rows.some(({ planMm }) => planMm > SAME_POINT_MM);
  const [outer, inner] = !isOpen || isAOutside(report) ? [marks.a, marks.b] : [marks.b, marks.a];
  let told = { first: false, last: false };
  for (const [i, piece] of [...outer, ...(apart && isOpen ? inner : [])].entries()) {
    const elsewhere = told.first || (i > 0 && i < outer.length);
    const these = numberEnds(board, piece, { step, elsewhere, forced: false });
    told = { first: told.first || these.first, last: told.last || these.last };
  }
  numberStill(board, outer[0] ?? [], told);
}

import { insideAcrossMm, takenAtSeamMm } from "./closure.ts";
import type { FormingCase } from "./case.ts";

/** A gap at the large end, inside corner to inside corner, and what is left straight at one seam edge. [mm] */
interface GapSeen {
  /** Below 0 where the edges overlap by as much. */
  readonly gapMm: number;
  readonly leadMm: number;
}

type Cone = NonNullable<FormingCase["cone"]>;

/** An overlap is followed so far past the turn; beyond, the edges have long struck the wall, and the chord turns back. [-] */
const MOST_CLOSED = 1.25;

/**
 * Which closure a gap at the large end shows: the way back of the closure table, inside corner to inside corner. The gap
 * only grows as the blank opens, so halving finds it.
 *
 * @returns share of the turn, from that of the flat blank (a gap as wide as the flat blank's or wider) to 1.25
 * @see derived here
 */
export function closedOfGap(item: FormingCase, cone: Cone, { gapMm, leadMm }: GapSeen): number {
  const { thicknessMm, edges, pieces } = item;
  const seamGapMm = takenAtSeamMm(item);
  const { halfAngleRad, largeRadiusMm: radiusMm } = cone;
  // An overlap is a gap below 0, which the table's own figure does not go to.
  const gap = (closed: number) =>
    insideAcrossMm({ radiusMm, closed, halfAngleRad, thicknessMm, edges, pieces, seamGapMm, leadMm });
  // Bent so little that no inside is left, a formula with level edges would let the gap shrink again: stay above that.
  const flat = Math.max(Math.sin(halfAngleRad), Number.EPSILON);
  if (leadMm === 0 && gapMm === gap(1)) return 1;
  if (gapMm <= gap(MOST_CLOSED)) return MOST_CLOSED;
  let [open, tight] = [flat, MOST_CLOSED];
  // Until there is no number between them.
  for (let middle = (open + tight) / 2; middle > open && middle < tight; middle = (open + tight) / 2) {
    if (gap(middle) > gapMm) open = middle;
    else tight = middle;
  }
  return tight;
}

import type { Drawable } from "../report/report.ts";

/** Lines nearer to each other than this run together into black. [mm of paper] */
const APART = 1.1;

/**
 * Of many lines only every second, fourth, eighth … is drawn, so that they stay apart at the wide end: 96 divisions on a
 * small drawing would be a black patch. Where lines bound flats all are drawn, for those that do are not evenly spaced.
 *
 * @param unit millimetres of the part for one of paper
 */
export function lineStride({ part, shape, hand }: Drawable, unit: number): number {
  if (part.shape === "square-to-round") return 1;
  const spacing = Math.max(shape.rims.a, shape.rims.b) / Math.max(1, hand.rows.length - 1) / unit;
  let stride = 1;
  while (stride * spacing < APART && stride < hand.rows.length) stride *= 2;
  return stride;
}

/** A seam is line 1 of its piece. */
export const isSeamLine = ({ hand }: Pick<Drawable, "hand">, i: number): boolean =>
  hand.rows[i]?.number === 1;

/** Is an element line drawn, where of many only every second, fourth … is? Seams always are. */
export const isDrawn = (report: Drawable, i: number, stride: number): boolean =>
  i % stride === 0 || isSeamLine(report, i);

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

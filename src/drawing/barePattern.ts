import type { Blank } from "../report/report.ts";
import { boxOf, grow, height, width } from "./box.ts";
import { type Drawing, closed, line, type Stroke } from "./model.ts";

/** Between the blank and the edge of its picture. [mm of paper] */
const MARGIN = 0.8;

/**
 * A blank with its lines and nothing else: a picture so low that lettering would fill it.
 *
 * @param lowMm height of the picture [mm of paper]
 */
export function barePattern(
  { outline, lines }: Pick<Blank, "outline" | "lines">,
  lowMm: number,
): Pick<Drawing, "extent" | "unit"> & { readonly strokes: readonly Stroke[] } {
  const box = boxOf(outline);
  // Nothing is so wide that it would not fit by its height: a strip is as wide as its paper.
  const unit = Math.max(height(box), width(box) / 6) / (lowMm - 2 * MARGIN);
  return {
    extent: grow(box, MARGIN * unit),
    unit,
    strokes: [closed("outline", outline), ...lines.map(({ from, to }) => line("thin", from, to))],
  };
}

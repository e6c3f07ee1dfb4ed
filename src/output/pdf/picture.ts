import { boxOf, meet } from "../../drawing/box.ts";
import { flatten } from "../../drawing/flatten.ts";
import { labelCorners } from "../../drawing/lettering.ts";
import type { Box, Drawing, Label, Stroke, StrokeKind } from "../../drawing/model.ts";
import type { LineStyle, Pdf } from "./document.ts";
import { type Frame, onSheet } from "./pen.ts";
import { printable } from "./printable.ts";

/** Line types of ISO 128-2 by their dashes, in multiples of a narrow line's width as it prints well. [mm] */
const DASHES: Readonly<Partial<Record<StrokeKind, readonly number[]>>> = {
  hidden: [2.2, 0.8],
  centre: [5, 0.8, 0.3, 0.8],
};

/** What lies behind comes first: narrow lines, then lettering's own ground, then outlines and arrowheads. */
const BEHIND: readonly StrokeKind[] = ["thin", "hidden", "centre", "dimension"];
const BEFORE: readonly StrokeKind[] = ["outline", "arrow"];

/** Strokes and lettering through a frame; what lies outside a box of the part is passed over. */
export function putPicture(
  pdf: Pdf,
  { strokes, labels }: { strokes: readonly Stroke[]; labels: readonly Label[] },
  { frame, wideMm, seen }: { frame: Frame; wideMm: number; seen?: Box },
): void {
  const shown = seen ? strokes.filter(({ shape }) => touches(boxOf(flatten(shape)), seen)) : strokes;
  const draw = (kind: StrokeKind) =>
    pdf.draw(
      shown.filter((one) => one.kind === kind).map(({ shape }) => shape),
      frame,
      styleOf(kind, wideMm),
    );
  const words = seen ? labels.filter((one) => meet(boxOf(labelCorners(one)), seen)) : labels;
  BEHIND.forEach(draw);
  for (const one of words) {
    // Thin lines stop short of the lettering that stands on them.
    const points = labelCorners(one);
    pdf.draw([{ type: "path", points, closed: true }], frame, { widthMm: 0, fill: true, ink: 1 });
  }
  BEFORE.forEach(draw);
  for (const one of words)
    pdf.write(printable(one.text, pdf.holds), onSheet(frame, one.at), {
      capMm: one.capMm / frame.unit,
      anchor: one.anchor,
      rotationDeg: one.rotationDeg,
      bold: one.role === "title",
    });
}

/** A drawing with its upper left corner at a place of the sheet, at its own scale. */
export function putDrawing(pdf: Pdf, drawing: Drawing, on: readonly [number, number]): void {
  const { extent, unit } = drawing;
  putPicture(pdf, drawing, { frame: { at: [extent.left, extent.top], on, unit }, wideMm: 0.4 });
}

function styleOf(kind: StrokeKind, wideMm: number): LineStyle {
  if (kind === "arrow") return { widthMm: 0, fill: true };
  const dashMm = DASHES[kind];
  return {
    widthMm: kind === "outline" ? wideMm : wideMm / 2,
    round: kind === "outline",
    ...(dashMm && { dashMm }),
  };
}

/** Boxes of upright lines have no width, so touching counts. */
const touches = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.bottom <= b.top && b.bottom <= a.top;

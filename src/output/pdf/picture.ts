import { boxOf, meet, touch } from "../../drawing/box.ts";
import { flatten } from "../../drawing/flatten.ts";
import { labelCorners } from "../../drawing/lettering.ts";
import type { Box, Drawing, Label, Shape, Stroke, StrokeKind } from "../../drawing/model.ts";
import { radians } from "../../geometry/angle.ts";
import type { Vec2 } from "../../geometry/vector.ts";
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

/** Half the height of lettering's own ground, over that of its capitals. [-] */
const GROUND = 0.62;

/** Strokes and lettering through a frame; what lies outside a box of the part is passed over. */
export function putPicture(
  pdf: Pdf,
  { strokes, labels }: { strokes: readonly Stroke[]; labels: readonly Label[] },
  { frame, wideMm, seen }: { frame: Frame; wideMm: number; seen?: Box },
): void {
  const shown = seen ? strokes.filter(({ shape }) => touch(boxOf(flatten(shape)), seen)) : strokes;
  const draw = (kind: StrokeKind) =>
    pdf.draw(
      shown.filter((one) => one.kind === kind).map(({ shape }) => shape),
      frame,
      styleOf(kind, wideMm),
    );
  const words = seen ? labels.filter((one) => meet(boxOf(labelCorners(one)), seen)) : labels;
  BEHIND.forEach(draw);
  // Thin lines stop short of the lettering that stands on them.
  for (const one of words)
    pdf.draw([ground(pdf, one, frame.unit)], frame, { widthMm: 0, fill: true, ink: 1 });
  BEFORE.forEach(draw);
  for (const one of words)
    pdf.write(printable(one.text, pdf), onSheet(frame, one.at), {
      capMm: one.capMm / frame.unit,
      anchor: one.anchor,
      rotationDeg: one.rotationDeg,
      bold: isBold(one),
    });
}

/** Just what the letters cover: a dimension line under its figure stays. */
function ground(pdf: Pdf, label: Label, unit: number): Shape {
  const { at, anchor, capMm, rotationDeg, text } = label;
  const long = pdf.width(printable(text, pdf), { capMm: capMm / unit, bold: isBold(label) }) * unit;
  const start = { start: 0, middle: -long / 2, end: -long }[anchor];
  const [c, s] = [Math.cos(radians(rotationDeg)), Math.sin(radians(rotationDeg))];
  const corner = (x: number, y: number): Vec2 => [at[0] + c * x - s * y, at[1] + s * x + c * y];
  const half = capMm * GROUND;
  const points = [
    corner(start, -half),
    corner(start + long, -half),
    corner(start + long, half),
    corner(start, half),
  ];
  return { type: "path", points, closed: true };
}

const isBold = ({ role }: Label): boolean => role === "title";

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

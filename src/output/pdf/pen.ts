import type { jsPDF } from "jspdf";
import { radians } from "../../geometry/angle.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import { arcPoint, type Pen } from "../../drawing/pen.ts";

/** Where a part's millimetres come to lie on a sheet of paper: `at` of the part on `on`, y down from the sheet's top left. */
export interface Frame {
  readonly at: Vec2;
  readonly on: Vec2;
  /** Millimetres of the part for one of paper. */
  readonly unit: number;
}

/** A place of the part on the sheet. [mm of paper, y down] */
export const onSheet = ({ at, on, unit }: Frame, [x, y]: Vec2): Vec2 => [
  on[0] + (x - at[0]) / unit,
  on[1] - (y - at[1]) / unit,
];

/**
 * No piece of an arc is longer. How far a cubic through both ends and tangents
 * leaves its circle goes with the sixth power of the angle: 0.00027 of the radius at 90°, here 0.00006 mm at 10 m.
 */
const PIECE_RAD = radians(15);

/** The pen for PDF files: arcs as cubic curves, since the format knows no others. */
export function pdfPen(doc: jsPDF, frame: Frame): Pen {
  const put = (p: Vec2): Vec2 => onSheet(frame, p);
  return {
    moveTo: (x, y) => void doc.moveTo(...put([x, y])),
    lineTo: (x, y) => void doc.lineTo(...put([x, y])),
    arc: (cx, cy, radius, from, to) => {
      const circle = { centre: [cx, cy] as const, radius };
      const count = Math.max(1, Math.ceil(Math.abs(to - from) / PIECE_RAD));
      const step = (to - from) / count;
      // Control points lie on the tangents, this far from the ends of a piece.
      const reach = (4 / 3) * Math.tan(step / 4) * radius;
      for (let i = 0; i < count; i++) {
        const [a, b] = [from + i * step, i === count - 1 ? to : from + (i + 1) * step];
        const [p, q] = [arcPoint(circle, a), arcPoint(circle, b)];
        const first = put([p[0] - reach * Math.sin(a), p[1] + reach * Math.cos(a)]);
        const second = put([q[0] + reach * Math.sin(b), q[1] - reach * Math.cos(b)]);
        doc.curveTo(...first, ...second, ...put(q));
      }
    },
    closePath: () => void doc.close(),
  };
}

import { closureSketch } from "../../drawing/closureSketch.ts";
import type { Drawing } from "../../drawing/model.ts";
import { svgPen } from "../../drawing/svgPath.ts";
import { trueShapeDrawing } from "../../drawing/trueShape.ts";
import type { Report } from "../../report/report.ts";
import { HAND_PAIR, HAND_PAPER } from "./papers.ts";

/** What `.spare` asks for, less its heading. [mm] */
const MOST_MM = 58;

/**
 * How far to close the part-rolled end, and the true-length diagram of the layout by hand, as far as they are low enough for
 * the foot of a sheet; with what they are for as their heading.
 */
export function handDrawings(report: Report): {
  readonly heading: string;
  readonly drawings: readonly Drawing[];
} {
  const low = drawn(report).filter(({ drawing }) => svgPen(drawing).heightMm <= MOST_MM);
  return {
    heading: [...new Set(low.map(({ purpose }) => purpose))].join("; "),
    drawings: low.map(({ drawing }) => drawing),
  };
}

interface ByHand {
  readonly drawing: Drawing;
  readonly purpose: string;
}
const CLOSING = "How far to close the first pass";
const LAYOUT =
  "True lengths for the layout by hand: an element is as long as the sloping line over its plan length";

function drawn(report: Report): ByHand[] {
  const own = report.blanks.filter(({ sameAs }) => sameAs === null);
  const rolled = report.forming.route === "roll";
  const sketch = rolled ? closureSketch(report, { paper: HAND_PAPER }) : null;
  // All lines of a right cone have one length: the sketch says more.
  if (sketch && report.cone) return [{ drawing: sketch, purpose: CLOSING }];
  const wanted = own.length + (sketch ? 1 : 0);
  const paper = wanted > 1 ? HAND_PAIR : HAND_PAPER;
  const diagrams = own.map((blank) => ({
    drawing: trueShapeDrawing(report, { paper, blank }),
    purpose: LAYOUT,
  }));
  const closing = sketch && closureSketch(report, { paper });
  return [...(closing ? [{ drawing: closing, purpose: CLOSING }] : []), ...diagrams].slice(0, 2);
}

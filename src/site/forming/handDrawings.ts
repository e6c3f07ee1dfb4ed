import { closureSketch } from "../../drawing/closureSketch.ts";
import type { Drawing } from "../../drawing/model.ts";
import { svgPen } from "../../drawing/svgPath.ts";
import { trueShapeDrawing } from "../../drawing/trueShape.ts";
import type { Report } from "../../report/report.ts";
import { HAND_PAIR, HAND_PAPER } from "./papers.ts";

/** What `.spare` asks for, less its heading. [mm] */
const MOST_MM = 58;

/** How far to close the part-rolled end, and the true-length diagram of the layout by hand, as far as they are low enough for the foot of a sheet. */
export const handDrawings = (report: Report): Drawing[] =>
  drawn(report).filter((one) => svgPen(one).heightMm <= MOST_MM);

function drawn(report: Report): Drawing[] {
  const own = report.blanks.filter(({ sameAs }) => sameAs === null);
  const rolled = report.forming.route === "roll";
  const sketch = rolled ? closureSketch(report, { paper: HAND_PAPER }) : null;
  // All lines of a right cone have one length: the sketch says more.
  if (sketch && report.cone) return [sketch];
  const wanted = own.length + (sketch ? 1 : 0);
  const paper = wanted > 1 ? HAND_PAIR : HAND_PAPER;
  const diagrams = own.map((blank) => trueShapeDrawing(report, { paper, blank }));
  const closing = sketch && closureSketch(report, { paper });
  return [...(closing ? [closing] : []), ...diagrams].slice(0, 2);
}

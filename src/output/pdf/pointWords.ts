import { columnLength, unitName } from "../../drawing/format.ts";
import type { Box } from "../../drawing/model.ts";
import type { Units } from "../../geometry/units.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { Pdf } from "./document.ts";
import { fittedTable } from "./fittedTable.ts";
import { flow, roomOf } from "./flow.ts";
import { NOUGHT } from "../origin.ts";
import type { PointOnTemplate } from "./pointPicture.ts";
import { readingPaper } from "./tilePaper.ts";
import type { Tile, Tiling } from "./tiles.ts";
import { paragraph, type Run } from "./words.ts";

/** What the sheets of marking points show, and what not. */
export const pointFact = (lineName: string): string =>
  `Only the sheets are printed that hold a marking point: a corner P of the outline, or an end of the ${lineName}. Each has a cross whose arms lie along the base line and square to it, its x and y as the marking table has them (${NOUGHT}), the edge as far as the sheet goes with a dashed line that touches it there (its tangent), and the distance straight across to the next point round the edge, along a dash-dotted line where that runs clear of the edge. All points are listed on the sheets after this one.`;

/** How points are brought to the plate from sheets that are not glued into a whole. */
export const POINT_STEPS: readonly string[] = [
  "Scribe a base line on the plate, and a line square to it at its left end: x is measured along the base line, y square to it. Mark every point of the list from both.",
  "Measure each distance to the next point of the list straight across before a sheet is laid. A point that does not agree is wrong in x or y.",
  "Lay a sheet with its crosses on the marks, its arms along and square to the base line. Hold a straight edge from mark to mark: the dash-dotted line lies along it. Where the sheet holds one point alone this line and the arms are all that keep it straight. Sheets side by side may be joined before: cut edge to narrow line, crosses on crosses. Tape all down, prick through the crosses, and prick along the edge.",
  "Between the sheets draw the edge with a batten bent through the pricks, so that it leaves each sheet along its edge. There it is near, not exact: where it has to be exact, print the sheets along the edges instead.",
];

const HEADING: readonly Run[] = [{ text: "Marking points", bold: true }];

/** The sheet on whose own share a point lies. */
const sheetOf = ({ tiles }: Tiling, on: Vec2): Tile | undefined => tiles.find(({ core }) => holds(core, on));

const holds = ({ left, right, bottom, top }: Box, [x, y]: Vec2): boolean =>
  x >= left && x <= right && y >= bottom && y <= top;

/** Every point in its turn round the edge: where it lies, how far it is to the next, and which sheet holds it. */
export function pointList(
  pdf: Pdf,
  points: readonly PointOnTemplate[],
  { tiling, units, mark }: { tiling: Tiling; units: Units; mark: string | undefined },
): void {
  const setting = { paper: readingPaper(tiling.layout.paper), cells: [], below: mark };
  const heading = {
    ...paragraph(pdf, HEADING, { capMm: 3 }),
    withNext: true,
  };
  const words = `In ${unitName(units)}, once round the edge from P1, counter-clockwise as the pattern lies. As in the marking table ${NOUGHT}; to the next straight across (derived here).`;
  const table = fittedTable(
    pdf,
    {
      aligns: ["left", "right", "right", "right", "right", "right"],
      head: [["Point", "x", "y", "The next", "is away", "On sheet"].map((text) => ({ text }))],
      rows: points.map(({ name, at: [x, y], next, on }) =>
        [
          name,
          columnLength(x, units),
          columnLength(y, units),
          next.mark,
          columnLength(next.mm, units),
          sheetOf(tiling, on)?.name ?? "",
        ].map((text) => ({ text })),
      ),
    },
    roomOf(setting).widthMm,
  );
  flow(pdf, [{ ...heading, bookmark: "Marking points" }, paragraph(pdf, words), table], setting);
}

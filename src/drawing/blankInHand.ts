import { distance2 } from "../geometry/vector.ts";
import type { Blank, Drawable } from "../report/report.ts";
import type { Board } from "./board.ts";
import { boxOf, height, width } from "./box.ts";
import { lineStride } from "./dense.ts";
import { closed, type Drawing, element } from "./model.ts";
import type { Paper } from "./paper.ts";
import { along, edgePaths, endsOf, isSeam, nameAlong } from "./pattern/edges.ts";
import { elementsOf, marksAlong, rowsOf, seenFrom } from "./pattern/lines.ts";
import { rollingArrow, upArrow } from "./pattern/marks.ts";
import { numberEnds } from "./pattern/numbers.ts";
import { type ZoneBegin, zoneMarks } from "./pattern/zoneMarks.ts";
import { fitSheet } from "./sheet.ts";

/** From an edge to its name, inside and outside, the last of them for a blank in which nothing has room. [mm of paper] */
const NAME_CLEAR = [1.6, 3, 5, -5, -8, -12, -16, -20];
/** Narrower than this a blank is a strip. [mm of paper] */
const STRIP = 14;

/**
 * One blank as it goes into the rolls: outline, element lines with their numbers, where zones begin, and which edge is which. It has no sizes,
 * so that its names have room: seams, ends and the way through the rolls are put down first and are always there.
 */
export function blankInHand(
  report: Drawable,
  { paper, blank, zones = [] }: { paper: Paper; blank: Blank; zones?: readonly ZoneBegin[] },
): Drawing {
  const box = boxOf(blank.outline);
  const names = blank.edges.map(({ name }) => name).join(", ");
  const marks = zones
    .filter(({ piece }) => piece === blank.piece)
    .map(({ name }) => name)
    .join(", ");
  return fitSheet(
    {
      paper,
      core: { widthMm: width(box), heightMm: height(box) },
      text: {
        title: `The blank of ${report.part.title} in hand`,
        description: `The flat blank with its ${blank.faceUp} face up, and which edge is which, counter-clockwise: ${names}.${marks === "" ? "" : ` Chain-dotted, where they begin: ${marks}.`}`,
        lines: [report.part.title],
      },
    },
    (board) => draw(board, report, { blank, zones }),
  );
}

function draw(
  board: Board,
  report: Drawable,
  { blank, zones }: { blank: Blank; zones: readonly ZoneBegin[] },
): void {
  const rows = rowsOf(report, blank);
  const step = lineStride(report, board.unit);
  const elements = elementsOf(report, blank);
  board.draw(closed("outline", blank.outline));
  // Line 1 is a seam edge, and the blank's own lines begin with line 2.
  for (const [i, one] of blank.lines.entries())
    if ((i + 1) % step === 0) board.draw(element("thin", elements(i + 2), one.from, one.to));
  const edges = edgePaths(blank);
  const [a, b] = endsOf(edges);
  // In a strip that names of both ends would share, nobody could tell which is which.
  const wide = !a || !b || distance2(along(a.points, 0.5).at, along(b.points, 0.5).at) > board.mm(STRIP);
  // Seams before ends: the steps speak of them most.
  for (const edge of edges.toSorted((p, q) => Number(isSeam(q)) - Number(isSeam(p))))
    board.put(
      edge.name,
      nameAlong(board, edge, { clearMm: NAME_CLEAR, insideToo: wide || isSeam(edge) }),
      Infinity,
    );
  const [first] = rows;
  if (first) zoneMarks(board, blank, { begins: zones, seam1: first });
  rollingArrow(board, rows, { text: "through the rolls", below: blank.outline });
  numberEnds(board, marksAlong(seenFrom(rows, elements, "a")), { step });
  if (b) numberEnds(board, marksAlong(seenFrom(rows, elements, "b")), { step });
  upArrow(board, rows, `${b?.name ?? "point"} up`);
}

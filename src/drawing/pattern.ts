import { distance2 } from "../geometry/vector.ts";
import type { Blank, MarkingRow, Drawable } from "../report/report.ts";
import type { Board } from "./board.ts";
import { boxOf, height, join, width } from "./box.ts";
import { dimension, type Units, drawnUnit, unitName } from "./format.ts";
import { lineStride } from "./dense.ts";
import { closed, type Drawing, element } from "./model.ts";
import type { Paper } from "./paper.ts";
import { inBrief } from "./pattern/brief.ts";
import { along, clearOf, type EdgePath, edgePaths, endsOf, isSeam, nameAlong } from "./pattern/edges.ts";
import { elementsOf, marksAlong, rowsOf, seenFrom, tipsOf } from "./pattern/lines.ts";
import { rollingArrow, upArrow } from "./pattern/marks.ts";
import { dimensionEnd, dimensionLap, dimensionOverall, dimensionSeams } from "./pattern/sizes.ts";
import { trueLengths } from "./pattern/trueLengths.ts";
import { originCross } from "./pattern/origin.ts";
import { numberEnds, numberLeftOut, numberStill, sharedStride } from "./pattern/numbers.ts";
import { centreInWords, dimensionSector, drawCentre, type Sector, sectorOf } from "./pattern/sector.ts";
import { fitSheet } from "./sheet.ts";

/** A name across an outline or a figure is rather left out; in the board's measure. */
const DEAREST_NAME = 30;
/** From an edge to its name, inside and outside. [mm of paper] */
const NAME_CLEAR = [1.6, 3, 5, -5, -8];
/** Narrower than this a blank is a strip. [mm of paper] */
const STRIP = 14;
/** Of more lines than these not each has its number: evenly spaced ones have, the same at both ends. */
const EACH_NUMBERED = 30;
/** The centre of the radii is drawn where the sheet need not grow by more than this for it. [-] */
const GROWTH = 1.5;

/**
 * One blank, flat, as it is marked and cut: outline, lines, numbers, dimensions and names.
 *
 * @param before the pattern of nearly the same blank on the same paper: figures stay where they are as long as they may
 */
export function patternDrawing(
  report: Drawable,
  { paper, blank, before }: { paper: Paper; blank: Blank; before?: Drawing | undefined },
): Drawing {
  const { part } = report;
  const rows = rowsOf(report, blank);
  const sector = sectorOf(report, rows);
  const bare = boxOf(blank.outline);
  const withCentre = sector ? join(bare, boxOf([sector.centre])) : bare;
  const centreShown =
    width(withCentre) * height(withCentre) <= GROWTH * width(bare) * height(bare) && sector !== undefined;
  const core = centreShown ? withCentre : bare;
  const edges = edgePaths(blank);
  const alike = report.blanks.filter((one) => one.piece === blank.piece || one.sameAs === blank.piece);
  const pieces = alike.map((one) => one.piece);
  const which =
    report.blanks.length === 1
      ? ""
      : pieces.length === 1
        ? `, piece ${pieces[0]}`
        : `, pieces ${pieces.join(", ")} alike`;
  return fitSheet(
    {
      paper,
      before,
      core: { widthMm: width(core), heightMm: height(core) },
      text: {
        title: `Pattern of ${part.title}${which}`,
        description: describe(blank, rows, part.units),
        brief: inBrief(blank.faceUp, pieces, report.blanks.length),
        lines: [
          part.title,
          `Pattern${which}, ${blank.faceUp} face up. ${joint(report)} Sizes in ${drawnUnit(part.units)}.`,
          ...(sector && !centreShown ? [centreInWords(sector, part.units)] : []),
        ],
      },
    },
    (board) => drawPattern(board, { report, blank, rows, edges, ...(sector ? { sector } : {}), centreShown }),
  );
}

function drawPattern(
  board: Board,
  what: {
    report: Drawable;
    blank: Blank;
    rows: readonly MarkingRow[];
    edges: readonly EdgePath[];
    sector?: Sector;
    centreShown: boolean;
  },
): void {
  const { report, blank, rows, edges, sector, centreShown } = what;
  const { units } = report.part;
  const step = lineStride(report, board.unit);
  // Line 1 is a seam edge, and the blank's own lines begin with line 2.
  const elements = elementsOf(report, blank);
  const lines = blank.lines
    .map((one, i) => ({ ...one, number: i + 2 }))
    .filter((_, i) => (i + 1) % step === 0);
  board.draw(
    closed("outline", blank.outline),
    ...lines.map((one) => element("thin", elements(one.number), one.from, one.to)),
  );
  // The first and the last stand along the seam edges, half a gap outside them.
  const drawn = new Set([1, rows.length, ...lines.map((one) => one.number)]);
  board.locate(
    ...rows.map(({ number, a, b }) => ({
      elements: elements(number),
      from: a,
      to: b,
      shown: drawn.has(number) ? ("line" as const) : ("left out" as const),
    })),
  );
  const [a, b] = endsOf(edges);
  if (sector && centreShown) drawCentre(board, sector);
  // What can stand in one place only comes first; numbers and names find room between.
  // The seam of a cone to a point is its radius.
  if (sector?.innerMm !== 0) dimensionSeams(board, edges, { outline: blank.outline, units });
  for (const edge of [a, b]) if (edge) dimensionEnd(board, edge, { units, box: width(boxOf(blank.outline)) });
  dimensionLap(board, { edges, rows, part: report.part });
  if (sector) dimensionSector(board, sector, { units, centreShown });
  dimensionOverall(board, blank.outline, units);
  originCross(board, blank.outline);
  if (!sector) trueLengths(board, rows, units);
  const marks = (end: "a" | "b") => marksAlong(seenFrom(rows, elements, end));
  const ends = [marks("a"), ...(b ? [marks("b")] : [])];
  const many = rows.length > EACH_NUMBERED;
  const every = many ? sharedStride(board, ends, step) : step;
  const atA = numberEnds(board, marks("a"), { step: every, forced: false, many });
  const atB = b && numberEnds(board, marks("b"), { step: every, forced: false, many });
  numberStill(board, marks("a"), {
    first: atA.first || atB?.first === true,
    last: atA.last || atB?.last === true,
  });
  numberLeftOut(board, ends, every);
  // In a strip that names of both ends would share, nobody could tell which is which.
  const wide = !a || !b || distance2(along(a.points, 0.5).at, along(b.points, 0.5).at) > board.mm(STRIP);
  for (const edge of edges) {
    const ways = nameAlong(board, edge, { clearMm: NAME_CLEAR, insideToo: wide || isSeam(edge) });
    const tips = edge === a ? tipsOf(rows, "a") : edge === b ? tipsOf(rows, "b") : [];
    board.put(edge.name, clearOf(board, ways, tips), DEAREST_NAME);
  }
  upArrow(board, rows, `${b?.name ?? "point"} up`);
  if (report.forming?.route === "roll") rollingArrow(board, rows, { text: "through the rolls" });
}

function joint(report: Drawable): string {
  const { units, seam } = report.part;
  if (seam?.joint === "lap") return `Lap of ${dimension(seam.lap ?? 0, units)} beyond seam 2 included.`;
  const gap = seam?.gap ?? 0;
  return gap > 0
    ? `Butt seam: gap of ${dimension(gap, units)} taken off, half at each seam edge.`
    : "Butt seam without gap.";
}

function describe(blank: Blank, rows: readonly MarkingRow[], units: Units): string {
  const box = boxOf(blank.outline);
  const edges = blank.edges.map((edge) => `${edge.name} ${dimension(edge.lengthMm, units)}`).join(", ");
  return (
    `Flat pattern ${dimension(width(box), units)} wide and ${dimension(height(box), units)} high in ${unitName(units)}, ` +
    `${blank.faceUp} face up. Edges counter-clockwise: ${edges}. ${rows.length} numbered lines from end to end.`
  );
}

import { TURN } from "../../geometry/angle.ts";
import { add2, direction, dot2, scale2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank, Report } from "../../report/report.ts";
import type { Board, Placing } from "../board.ts";
import { boxOf, height, width } from "../box.ts";
import { unitName } from "../format.ts";
import { closed, type Drawing, line } from "../model.ts";
import { inBrief } from "../pattern/brief.ts";
import { edgePaths, nameAlong } from "../pattern/edges.ts";
import { LAP_TO_HERE, lapLine } from "../pattern/lapLine.ts";
import { marksAlong } from "../pattern/lines.ts";
import { numberEnds } from "../pattern/numbers.ts";
import type { Paper } from "../paper.ts";
import { NARROW_SCALES } from "../scale.ts";
import { fitSheet } from "../sheet.ts";

type BrakePlan = NonNullable<Report["forming"]["plans"][number]["brake"]>;
type BrakeLine = BrakePlan["lines"][number];

/** A name across an outline or a figure is rather left out; in the board's measure. */
const DEAREST_NAME = 30;
/** What stands along a lap line where there is room, and what a shorter name costs. */
const LAP_LINE = "lap line: seam edge 1 to here";
const SHORT_NAME = 8;
const SEAM_2 = "seam 2";

/** The lines that a brake bends one blank along. */
export const linesOf = ({ lines }: BrakePlan, { piece }: Pick<Blank, "piece">): BrakeLine[] =>
  lines.filter((one) => one.piece === piece);

/** A blank with its bend lines, numbered at both ends: solid as far as a hit goes, dashed where it stops short of the tip; a lap line chain-dotted. */
export function brakePicture(
  report: Report,
  { paper, blank, plan }: { paper: Paper; blank: Blank; plan: BrakePlan },
): Drawing {
  const { part } = report;
  const box = boxOf(blank.outline);
  const lines = linesOf(plan, blank);
  const alike = report.blanks.filter((one) => one.piece === blank.piece || one.sameAs === blank.piece);
  const which =
    report.blanks.length === 1
      ? ""
      : alike.length === 1
        ? `, piece ${blank.piece}`
        : `, pieces ${alike.map(({ piece }) => piece).join(", ")} alike`;
  return fitSheet(
    {
      // The steps of ISO 5455 alone would crowd the lines; it allows those between as exceptions.
      paper: { ...paper, scales: NARROW_SCALES },
      core: { widthMm: width(box), heightMm: height(box) },
      text: {
        title: `Bend lines of ${part.title}${which}`,
        brief: inBrief(
          blank.faceUp,
          alike.map(({ piece }) => piece),
          report.blanks.length,
        ),
        description: `${lines.length} bend lines from seam 1 to seam 2, ${blank.faceUp} face up; their angles stand in the table.`,
        lines: [
          part.title,
          `Bend lines${which}, ${blank.faceUp} face up, numbered from seam 1. Solid: bent. Dashed: not bent.${part.seam?.joint === "lap" ? " Chain-dotted: lap line." : ""} Sizes of the table in ${unitName(part.units)}.`,
        ],
      },
    },
    (board) => {
      const lap = lapLine(report, blank);
      drawPicture(board, blank, lines, { cornered: part.shape === "square-to-round", lap });
    },
  );
}

/** Where the hit ends: short of the narrow end, the one towards which its neighbours run together. */
export function hitOf(one: BrakeLine, lines: readonly BrakeLine[]): readonly [Vec2, Vec2, Vec2] {
  const beside = lines.filter(({ zone }) => zone === one.zone);
  const run = (end: "a" | "b") => {
    const places = beside.map(({ alongMm }) => alongMm[end]);
    return Math.max(...places) - Math.min(...places);
  };
  const narrowAtA = run("a") < run("b");
  const [narrow, wide] = narrowAtA ? [one.from, one.to] : [one.to, one.from];
  return [wide, add2(narrow, scale2(sub2(wide, narrow), one.stopsShortMm / one.lengthMm)), narrow];
}

/** Ways round a tip, and how far from it. [turns, mm of paper] */
const AWAY_TURNS = [0, 1 / 12, -1 / 12, 1 / 6, -1 / 6, 1 / 4, -1 / 4, 1 / 3, -1 / 3] as const;
const AWAY_MM = [5, 7, 9, 12, 15] as const;

/** Where the number of a corner may stand: beyond its tip, away from its lines. */
function cornerName(board: Board, lines: readonly BrakeLine[], zone: number): Placing[] {
  const own = lines.filter((one) => one.zone === zone);
  const middle = own[own.length >> 1];
  if (!middle) return [];
  const [wide, , tip] = hitOf(middle, lines);
  const away = unit2(sub2(tip, wide));
  const heading = Math.atan2(away[1], away[0]);
  return AWAY_MM.flatMap((far) =>
    AWAY_TURNS.map((turn): Placing => {
      const at = add2(tip, scale2(direction(heading + turn * TURN), board.mm(far)));
      return {
        strokes: [],
        labels: [board.label(`corner ${zone}`, at, { role: "name", size: "small", of: tip })],
      };
    }),
  );
}

const seam2Of = (blank: Blank): readonly Vec2[] =>
  edgePaths(blank).find(({ name }) => name === SEAM_2)?.points ?? [];

/** A lap line the way its edge of the outline runs: the blank lies to the same hand of both. */
function alongSeam2(blank: Blank, { from, to }: { readonly from: Vec2; readonly to: Vec2 }): [Vec2, Vec2] {
  const [p, q] = [seam2Of(blank)[0], seam2Of(blank).at(-1)];
  return p && q && dot2(sub2(q, p), sub2(to, from)) < 0 ? [to, from] : [from, to];
}

/** The corners of the plate beyond a lap line. */
function beyondLap(blank: Blank, lap: ReturnType<typeof lapLine>): Vec2[] {
  const points = seam2Of(blank);
  return lap ? [points[0], points.at(-1)].flatMap((p) => (p ? [p] : [])) : [];
}

function drawPicture(
  board: Board,
  blank: Blank,
  lines: readonly BrakeLine[],
  { cornered, lap }: { readonly cornered: boolean; readonly lap: ReturnType<typeof lapLine> },
): void {
  board.draw(closed("outline", blank.outline));
  for (const one of lines) {
    const [wide, stop, narrow] = hitOf(one, lines);
    board.draw(line("thin", wide, stop));
    if (one.stopsShortMm > 0) board.draw(line("hidden", stop, narrow));
  }
  // Dashed would look like what is not bent of a bend line.
  if (lap) board.draw(line("centre", lap.from, lap.to));
  for (const end of ["a", "b"] as const) {
    const seen = lines.map(({ number, from, to }) => ({
      number,
      at: end === "a" ? from : to,
      other: end === "a" ? to : from,
    }));
    numberEnds(board, marksAlong(seen), { corners: beyondLap(blank, lap) });
  }
  if (cornered)
    for (const zone of new Set(lines.map((one) => one.zone)))
      board.put(`corner ${zone}`, cornerName(board, lines, zone));
  if (lap) {
    // Inside it: on the other side the name would stand along the edge of the plate, which edge 1 does not come to.
    const edge = { lengthMm: lap.lengthMm, points: alongSeam2(blank, lap) };
    const ways = [LAP_LINE, LAP_TO_HERE].flatMap((name, i) =>
      [...nameAlong(board, { ...edge, name }, { clearMm: [1.6, 3, 5], insideToo: true })].map((way) => ({
        ...way,
        extra: (way.extra ?? 0) + i * SHORT_NAME,
      })),
    );
    board.put(LAP_LINE, ways, DEAREST_NAME);
  }
  for (const edge of edgePaths(blank)) {
    const clearMm = lap && edge.name === SEAM_2 ? [-1.6, -3, -5] : [1.6, 3, 5, -5, -8];
    const ways = nameAlong(board, edge, { clearMm, insideToo: true });
    board.put(edge.name, ways, DEAREST_NAME);
  }
}

import { createBoard, type Placing } from "../../drawing/board.ts";
import { slope } from "../../drawing/dimension/angular.ts";
import { arc, closed, type Label, line, path, type Stroke } from "../../drawing/model.ts";
import { FULL } from "../../drawing/paper.ts";
import { edgePaths, endsOf, nameAlong } from "../../drawing/pattern/edges.ts";
import { LAP_TO_HERE, lapLine } from "../../drawing/pattern/lapLine.ts";
import { upArrow } from "../../drawing/pattern/marks.ts";
import { radians } from "../../geometry/angle.ts";
import { circleOf } from "../../geometry/arcFit.ts";
import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { add2, distance2, left2, scale2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank, MarkingRow, Report } from "../../report/report.ts";
import { contourOf, markPlace, markWords } from "../contour.ts";
import { hitLines, lineText } from "./numberedLines.ts";
import { type Share, shareBlank, type ShareKind } from "./share.ts";
import { isOn, type Marked, shareLines } from "./shareLines.ts";
import { drawOrigin, originOf } from "./templateOrigin.ts";
import type { Piece } from "./tiles.ts";

/** One blank at full size, as it is laid on the plate. */
export interface Template {
  readonly blank: Blank;
  /** How far the pattern is turned from the way the marking table has it, counter-clockwise. [degrees] */
  readonly turnedDeg: number;
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
  /** Outline, and lines within it, as straight pieces. */
  readonly edges: readonly Piece[];
  readonly lines: readonly Piece[];
  /** The same lines with what is written along each. */
  readonly marked: readonly Marked[];
  /** Where the marking table's x and y begin, told by a cross; undefined on a share, which is laid several times. */
  readonly origin: Vec2 | undefined;
  /** Corners of the outline, P1 … counter-clockwise. */
  readonly corners: readonly Vec2[];
  /** What the lines are: "element lines", "bend lines". */
  readonly lineName: string;
  /** Which share of the pattern it is; undefined where it is all of it. */
  readonly share: Share | undefined;
}

/** What is written on a share beside the part's name. */
const SHARE_WORDS: Readonly<Record<ShareKind, string>> = {
  half: "half of the pattern",
  quarter: "a quarter of the pattern",
};

/** From an edge to the first number on a line, and from number to number along it. [mm] */
const NUMBERS = { in: [9, 16, 26, 40, 60, 85], every: 220 };
/** Lettering on a template may not touch any line: less than what the board asks for that. */
const NO_LINE = 1.9;
/** Names of edges may cross a thin line where nothing else goes. */
const DEAREST_NAME = 20;
const CORNER = [6, 9, 13, 18, 26];

/** The template of a blank: exact contour, the lines that are bent or held to the roll, and what each of them is. */
export function templateOf(report: Report, asLaid: Blank, turnedDeg = 0, share?: Share): Template {
  const turn = turning(turnedDeg);
  const own = share && shareLines(report, asLaid, share);
  const blank = turnedBlank(share ? shareBlank(asLaid, share, linesOn(asLaid, share)) : asLaid, turn);
  const rows = report.hand.rows
    .filter(({ piece }) => piece === asLaid.piece)
    .filter(({ a, b }) => !share || isOn(share, { from: a, to: b }))
    .map((row): MarkingRow => ({ ...row, a: turn(row.a), b: turn(row.b) }));
  const hits = share
    ? undefined
    : hitLines(report, asLaid)?.map(({ number, bendDeg, ...one }) =>
        turnedLine({ ...one, text: lineText([number], bendDeg) }, turn),
      );
  const lines = own?.lines.map((one) => turnedLine(one, turn)) ?? hits ?? elementLines(blank, rows);
  const marked = withLap(lines, share ? undefined : lapLine(report, blank));

  const board = createBoard(FULL, 1);
  board.draw(closed("outline", blank.outline));
  for (const { from, to, stop } of marked) {
    if (distance2(from, stop) > SAME_POINT_MM) board.draw(line("thin", from, stop));
    if (distance2(stop, to) > SAME_POINT_MM) board.draw(line("hidden", stop, to));
  }
  if (share?.seam) board.draw(line("hidden", turn(share.seam[0]), turn(share.seam[1])));
  const edges = edgePaths(blank);
  const corners = edges.filter(({ lengthMm }) => lengthMm > 0).map(({ points }) => points[0] as Vec2);
  const inward = middleOf(blank);
  corners.forEach((at, i) => {
    const name = `P${i + 1}`;
    const into = unit2(sub2(inward, at));
    const ways = CORNER.flatMap((far) =>
      [0, 0.5, -0.5, 0.9, -0.9].map((aside) =>
        only(
          board.label(name, add2(at, scale2(add2(into, scale2(left2(into), aside)), far)), {
            role: "note",
            size: "small",
          }),
        ),
      ),
    );
    board.put(name, ways, DEAREST_NAME);
  });
  for (const one of marked) numberLine(board, one);
  for (const edge of edges)
    board.put(edge.name, nameAlong(board, edge, { clearMm: [3, 5, 8, 12], insideToo: true }), DEAREST_NAME);
  upArrow(board, rows, `${endsOf(edges)[1]?.name ?? "point"} up`);
  const which = share ? `, ${SHARE_WORDS[share.kind]}` : "";
  writeMark(board, markWords(report, blank) + which, blank);
  const origin = originOf(asLaid);
  if (!share) drawOrigin(board, origin, turn);

  return {
    share,
    blank,
    turnedDeg,
    // The contour's own arcs in place of the outline's points, which the board has found its places by.
    strokes: [...contourStrokes(blank), ...board.strokes.slice(1)],
    labels: board.labels,
    edges: blank.outline.map((p, i): Piece => [p, blank.outline[(i + 1) % blank.outline.length] as Vec2]),
    lines: marked.map(({ from, to }): Piece => [from, to]),
    marked,
    origin: share ? undefined : turn(origin),
    corners,
    lineName: own?.name ?? (hits ? "bend lines" : "element lines"),
  };
}

const linesOn = (blank: Blank, share: Share): Blank["lines"] => blank.lines.filter((one) => isOn(share, one));

const turnedLine = ({ from, to, stop, text }: Marked, turn: (p: Vec2) => Vec2): Marked => ({
  from: turn(from),
  to: turn(to),
  stop: turn(stop),
  text,
});

const only = (label: Label): Placing => ({ strokes: [], labels: [label] });

/** Turns about the origin; by nothing at all, points stay as they are. */
export function turning(deg: number): (p: Vec2) => Vec2 {
  if (deg === 0) return (p) => p;
  const [c, s] = [Math.cos(radians(deg)), Math.sin(radians(deg))];
  return ([x, y]) => [c * x - s * y, s * x + c * y];
}

const turnedBlank = (blank: Blank, turn: (p: Vec2) => Vec2): Blank => ({
  ...blank,
  outline: blank.outline.map(turn),
  lines: blank.lines.map((one) => ({ ...one, from: turn(one.from), to: turn(one.to) })),
});

/** Element lines carry their number in the marking table. */
function elementLines(blank: Blank, rows: readonly MarkingRow[]): Marked[] {
  return blank.lines.map(({ from, to }) => {
    const row = rows.find(
      ({ a, b }) => distance2(a, from) < SAME_POINT_MM && distance2(b, to) < SAME_POINT_MM,
    );
    return { from, to, stop: to, text: row && lineText([row.number], undefined) };
  });
}

/** With the line that a lap reaches to, dashed because nothing is bent or rolled there, in the place of an element line. */
function withLap(lines: readonly Marked[], lap: Blank["lines"][number] | undefined): readonly Marked[] {
  if (!lap) return lines;
  const { from, to } = lap;
  const isLap = (one: Marked) =>
    distance2(one.from, from) < SAME_POINT_MM && distance2(one.to, to) < SAME_POINT_MM;
  const number = lines.find(isLap)?.text;
  const text = number === undefined ? LAP_TO_HERE : `${number} ${LAP_TO_HERE}`;
  return [...lines.filter((one) => !isLap(one)), { from, to, stop: from, text }];
}

/** A line's number beside it, near both its ends and again and again between, so that most sheets have it. */
function numberLine(board: ReturnType<typeof createBoard>, { from, to, text }: Marked): void {
  const long = distance2(from, to);
  if (text === undefined || long === 0) return;
  const dir = unit2(sub2(to, from));
  const aside = FULL.capsMm.small / 2 + 1.5;
  const beside = (far: number): Placing[] =>
    [1, -1].map((side) =>
      only(
        board.label(text, add2(add2(from, scale2(dir, far)), scale2(left2(dir), side * aside)), {
          role: "number",
          size: "small",
          alongDeg: slope(dir),
        }),
      ),
    );
  const near = NUMBERS.in.filter((far) => far < long / 2);
  const ends = [near, near.map((far) => long - far)];
  for (const places of ends) board.put(`number ${text}`, places.flatMap(beside), NO_LINE);
  const between = Math.floor(long / NUMBERS.every) - 1;
  for (let i = 1; i <= between; i++) {
    const far = (long * i) / (between + 1);
    board.put(
      `number ${text}`,
      [0, 20, -20].flatMap((more) => beside(far + more)),
      NO_LINE,
    );
  }
}

/** Which part this is and which face is up, along the middle line or near it. */
function writeMark(board: ReturnType<typeof createBoard>, words: string, blank: Blank): void {
  const { at } = markPlace(blank);
  const middle = blank.lines[blank.lines.length >> 1];
  const dir =
    middle && distance2(middle.from, middle.to) > 0 ? unit2(sub2(middle.to, middle.from)) : ([0, 1] as const);
  const ways = [8, -8, 14, -14, 22, -22, 34, -34].flatMap((aside) =>
    [0, 40, -40, 80, -80].map((further) =>
      only(
        board.label(words, add2(add2(at, scale2(left2(dir), aside)), scale2(dir, further)), {
          role: "name",
          size: "figure",
          alongDeg: slope(dir),
        }),
      ),
    ),
  );
  board.put("mark", ways, DEAREST_NAME);
}

/** A point well within most blanks: half-way along the middle line. */
const middleOf = (blank: Blank): Vec2 => markPlace(blank).at;

/** The contour as strokes: arcs where an edge is one. */
function contourStrokes(blank: Blank): Stroke[] {
  const { start, pieces } = contourOf(blank);
  let from = start;
  return pieces.map((piece) => {
    const stroke = pieceStroke(from, piece);
    from = piece.to;
    return stroke;
  });
}

function pieceStroke(from: Vec2, piece: { to: Vec2; bulge: number }): Stroke {
  if (piece.bulge === 0) return path("outline", [from, piece.to]);
  const { centre, radius } = circleOf(from, piece);
  const fromRad = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  return arc("outline", { centre, radius, fromRad, toRad: fromRad + 4 * Math.atan(piece.bulge) });
}

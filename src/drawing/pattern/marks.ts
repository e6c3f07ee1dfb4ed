import {
  add2,
  cross2,
  distance2,
  dot2,
  left2,
  length2,
  middle2,
  scale2,
  sub2,
  unit2,
  type Vec2,
} from "../../geometry/vector.ts";
import type { MarkingRow } from "../../report/report.ts";
import type { Board, Placing } from "../board.ts";
import { boxOf } from "../box.ts";
import { slope } from "../dimension/angular.ts";
import { ARROW_LONG, arrowhead } from "../dimension/arrow.ts";
import { line } from "../model.ts";
import { toSegment } from "../../geometry/segment.ts";
import { lazily } from "../ways.ts";

/** Rather left out than drawn across an outline or a figure; in the board's measure. */
const DEAREST = 20;

/** An arrow beside a dimension line and nearly along it reads as one with it. [mm of paper], sine of the angle between them [-] */
const TOO_NEAR = 4;
const ALONG = 0.25;

/** Does no dimension line lie along an arrow from tail to tip? */
function standsAlone(board: Board, tail: Vec2, tip: Vec2): boolean {
  const dir = unit2(sub2(tip, tail));
  const long = distance2(tip, tail);
  const [middle, near] = [middle2(tail, tip), board.mm(TOO_NEAR)];
  return board.strokes.every(({ kind, shape }) => {
    if (kind !== "dimension" || shape.type !== "path") return true;
    const [p, q] = [shape.points[0] as Vec2, shape.points.at(-1) as Vec2];
    const run = sub2(q, p);
    // The cheapest question first: it is asked of every line for many places.
    if (Math.abs(cross2(dir, run)) > ALONG * length2(run)) return true;
    const [from, to] = [dot2(sub2(p, tail), dir), dot2(sub2(q, tail), dir)];
    const beside = Math.max(from, to) > 0 && Math.min(from, to) < long;
    return !beside || toSegment(middle, p, q) > near;
  });
}

/** An arrow with lettering beside it. Two heads where it shows a direction that may be taken either way. */
function lettered(
  board: Board,
  {
    middle,
    dir,
    longMm,
    text,
    heads,
  }: { middle: Vec2; dir: Vec2; longMm: number; text: string; heads: 1 | 2 },
): Placing[] {
  const { unit } = board;
  const half = scale2(dir, (longMm / 2) * unit);
  const [tail, tip] = [sub2(middle, half), add2(middle, half)];
  if (!standsAlone(board, tail, tip)) return [];
  const strokes = [
    line("dimension", tail, sub2(tip, scale2(dir, (ARROW_LONG / 2) * unit))),
    arrowhead(tip, dir, unit),
    ...(heads === 2 ? [arrowhead(tail, scale2(dir, -1), unit)] : []),
  ];
  const cap = board.paper.capsMm.small;
  return ([1, -1] as const).map((side) => ({
    strokes,
    labels: [
      board.label(text, add2(middle, scale2(left2(dir), side * (1.2 + cap / 2) * unit)), {
        role: "name",
        size: "small",
        alongDeg: slope(dir),
      }),
    ],
  }));
}

/** Middles of the spaces between neighbouring lines at a share of their length, those in the middle of the blank first. */
function spaces(rows: readonly MarkingRow[], share: number): { at: Vec2; up: Vec2 }[] {
  const on = (row: MarkingRow): Vec2 => add2(row.a, scale2(sub2(row.b, row.a), share));
  const gaps = rows.slice(1).map((row, i) => {
    const last = rows[i] as MarkingRow;
    const up = sub2(middle2(row.b, last.b), middle2(row.a, last.a));
    return { at: middle2(on(row), on(last)), up: unit2(up), far: Math.abs(i + 1 - rows.length / 2) };
  });
  return gaps.sort((p, q) => p.far - q.far);
}

/** Which way the piece stands when it is put together: towards end B, which the arrow names. */
export function upArrow(board: Board, rows: readonly MarkingRow[], text: string): void {
  const ways = lazily(function* () {
    for (const share of [0.45, 0.3, 0.6])
      for (const { at, up } of spaces(rows, share))
        yield* lettered(board, { middle: at, dir: up, longMm: 16, text, heads: 1 });
  });
  board.put("up arrow", ways, DEAREST);
}

/** What an arrow below the blank costs more than one on it, in the board's measure. */
const BELOW = 15;

/**
 * Which way the plate runs through the rolls: square to its elements, either way.
 * @param below the outline under which the arrow stands, clear of it, where the blank has no room for it; left out, it is rather not drawn
 */
export function rollingArrow(
  board: Board,
  rows: readonly MarkingRow[],
  { text, below }: { text: string; below?: readonly Vec2[] },
): void {
  const ways = lazily(function* () {
    for (const share of [0.75, 0.2, 0.6, 0.35])
      for (const { at, up } of spaces(rows, share))
        if (distance2(at, rows[0]?.a ?? at) > board.mm(12))
          yield* lettered(board, { middle: at, dir: scale2(left2(up), -1), longMm: 22, text, heads: 2 });
  });
  if (!below) {
    board.put("rolling arrow", ways, DEAREST);
    return;
  }
  const { left, right, bottom } = boxOf(below);
  const under = [7, 11, 15, 20, 26].flatMap((down) =>
    lettered(board, {
      middle: [(left + right) / 2, bottom - board.mm(down)],
      dir: [1, 0],
      longMm: 22,
      text,
      heads: 2,
    }).map((way) => ({ ...way, extra: BELOW })),
  );
  board.put("rolling arrow", [...ways, ...under], Infinity);
}

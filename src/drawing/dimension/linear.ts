import { degrees } from "../../geometry/angle.ts";
import {
  add2,
  dot2,
  left2,
  length2,
  middle2,
  scale2,
  sub2,
  unit2,
  type Vec2,
} from "../../geometry/vector.ts";
import type { Board, Figure, Placing } from "../board.ts";
import { readable, textWidth } from "../lettering.ts";
import { line, type Stroke } from "../model.ts";
import { lazily } from "../ways.ts";
import { ARROW_LONG, arrowhead } from "./arrow.ts";

/** Extension lines begin clear of the outline and run on past the dimension line. [mm of paper] */
const GAP = 1;
const PAST = 1.5;
/** From a dimension line to the middle of the lettering above or below it, in heights of its capitals. [-] */
const ABOVE = 0.8;
const BELOW = 0.95;
/** Letters that reach below their line would touch the dimension line: so much higher with them. [-] */
const LIFTED = 0.25;
const reachesDown = (text: string): boolean => /[gjpqy]/.test(text);

/** What the other side costs more, in the board's measure. */
const OTHER_SIDE = 12;

interface Linear {
  /** The two points measured. */
  readonly from: Vec2;
  readonly to: Vec2;
  /** Direction in which it is measured (unit vector); along the points where it is left out. */
  readonly along?: Vec2;
  readonly text: Figure;
  /** How far the dimension line lies to the left of `along`, from the further of the two points. [mm of paper] */
  readonly offsetsMm: readonly number[];
  /** The same on the other side, liked less. */
  readonly elseMm?: readonly number[];
  readonly size?: "small" | "figure";
}

/**
 * Ways to dimension a distance (ISO 129-1): extension lines, a dimension line with arrowheads, the figure above its middle,
 * or beyond either end where it is too short for that; one for each offset, in the order given.
 */
export function linearDimension(board: Board, what: Linear): Iterable<Placing> {
  const along = what.along ?? unit2(sub2(what.to, what.from));
  const across = left2(along);
  const { offsetsMm, elseMm = [] } = what;
  const at = (offset: number): Iterable<Placing> => {
    const side = Math.sign(offset);
    const [near, far] = [dot2(what.from, across), dot2(what.to, across)];
    // Nought measures on the line between the points itself.
    const level = side === 0 ? near : side * Math.max(near * side, far * side) + board.mm(offset);
    const onto = (p: Vec2): Vec2 => add2(p, scale2(across, level - dot2(p, across)));
    const [p, q] = [onto(what.from), onto(what.to)];
    return dimensionLines(board, what, { p, q, side, across });
  };
  return lazily(function* () {
    for (const offset of offsetsMm) yield* at(offset);
    for (const offset of elseMm) for (const way of at(offset)) yield { ...way, extra: OTHER_SIDE };
  });
}

function* dimensionLines(
  board: Board,
  { from, to, text, size: wanted = "figure" }: Linear,
  { p, q, side, across }: { p: Vec2; q: Vec2; side: number; across: Vec2 },
): Generator<Placing> {
  const { unit } = board;
  const dir = unit2(sub2(q, p));
  const long = length2(sub2(q, p)) / unit;
  const lines = [text.main, ...(text.second === undefined ? [] : [text.second])];
  const widthAt = (one: "small" | "figure") =>
    Math.max(...lines.map((text) => textWidth(text, board.paper.capsMm[one])));
  // Smaller lettering rather than lettering out of its place.
  const size =
    wanted === "figure" && widthAt("figure") + 1 > long && widthAt("small") + 1 <= long ? "small" : wanted;
  const cap = board.paper.capsMm[size];
  const textMm = widthAt(size);
  const inside = long >= 2 * ARROW_LONG + 1.5;
  const outward = scale2(across, side);

  const extension = (foot: Vec2, end: Vec2): Stroke[] => {
    const clear = dot2(sub2(end, foot), outward) / unit;
    if (clear <= GAP) return [];
    return [
      line("dimension", add2(foot, scale2(outward, GAP * unit)), add2(end, scale2(outward, PAST * unit))),
    ];
  };
  const heads = inside
    ? [arrowhead(p, scale2(dir, -1), unit), arrowhead(q, dir, unit)]
    : [arrowhead(p, dir, unit), arrowhead(q, scale2(dir, -1), unit)];
  const tail = inside ? 0 : ARROW_LONG + 2;
  const ends = [...extension(from, p), ...extension(to, q), ...heads];

  // "Above" is above as it is read.
  const alongDeg = readable(degrees(Math.atan2(dir[1], dir[0])));
  const up: Vec2 = [-Math.sin((alongDeg * Math.PI) / 180), Math.cos((alongDeg * Math.PI) / 180)];
  const lift = scale2(up, cap * unit);
  const way = (shift: number, before: number, after: number): Placing => ({
    strokes: [
      line("dimension", sub2(p, scale2(dir, before * unit)), add2(q, scale2(dir, after * unit))),
      ...ends,
    ],
    // The figure above the line, the same in fractions below it.
    labels: lines.map((one, i) => {
      const of = add2(middle2(p, q), scale2(dir, shift * unit));
      const at = add2(of, scale2(lift, i === 0 ? ABOVE + (reachesDown(one) ? LIFTED : 0) : -BELOW));
      return board.label(one, at, { role: "dimension", size, alongDeg, of });
    }),
  });
  if (textMm + 1 > long) {
    const beyond = long / 2 + ARROW_LONG + 1 + textMm / 2;
    const run = ARROW_LONG + 2 + textMm;
    yield way(beyond, tail, run);
    yield way(-beyond, run, tail);
    return;
  }
  yield way(0, tail, tail);
  // Off the middle where something stands there.
  const play = (long - textMm) / 2 - ARROW_LONG;
  if (play <= 3) return;
  yield way(play * 0.6, tail, tail);
  yield way(-play * 0.6, tail, tail);
}

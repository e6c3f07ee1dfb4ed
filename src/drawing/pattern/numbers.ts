import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { add2, distance2, left2, scale2, sub2, type Vec2 } from "../../geometry/vector.ts";
import type { Board } from "../board.ts";
import { textWidth } from "../lettering.ts";
import type { Mark } from "./lines.ts";

/** From the edge to the number. [mm of paper] */
const CLEAR = 1.2;
/** A number may stand to one side of its line, clear of an extension line in its place. [mm of paper] */
const SIDEWAYS = 0.8;
/** What the first and the last number may cost, in the board's measure. */
const DEAREST_END = 200;
const STEPS = [CLEAR, CLEAR + 2, CLEAR + 4];

/**
 * Numbers at the ends of the lines, outside the edge; every second, third … where they stand too close.
 * @param step only every so many lines are drawn, and a number stands at a line
 */
export function numberEnds(board: Board, marks: readonly Mark[], step = 1): void {
  const every = step * Math.ceil(stride(board, marks) / step);
  for (const [i, mark] of marks.entries()) {
    const last = i === marks.length - 1;
    // The last is always there, so the one before it gives way.
    const skipped = i % every !== 0 || (i > marks.length - 1 - every && !last && i > 0);
    if (!last && skipped) continue;
    const { out } = mark;
    if (!out) continue;
    const half = textWidth(mark.text, board.paper.capsMm.small) / 2;
    const aside = scale2(left2(out), board.mm(half + SIDEWAYS));
    const places = STEPS.flatMap((step) => {
      const at = placeOf(board, { mark, out, step });
      return [at, add2(at, aside), sub2(at, aside), add2(at, scale2(aside, 2)), sub2(at, scale2(aside, 2))];
    });
    // A number that has moved aside must still stand nearest to its own line, or to one that ends at the same point.
    const own = places.filter((at) =>
      marks.every(
        (other) =>
          distance2(other.at, mark.at) < SAME_POINT_MM || distance2(other.at, at) > distance2(mark.at, at),
      ),
    );
    board.put(
      `number ${mark.text}`,
      own.map((at) => ({
        strokes: [],
        labels: [
          {
            ...board.label(mark.text, at, { role: "number", size: "small", of: mark.at }),
            elements: mark.elements,
          },
        ],
      })),
      // The first and the last tell which way the numbers run: rather across a line than not at all.
      i === 0 || last ? DEAREST_END : undefined,
    );
  }
}

/** Middle of the number, so far out that its box just clears the edge in this direction. */
function placeOf(board: Board, { mark, out, step }: { mark: Mark; out: Vec2; step: number }): Vec2 {
  const cap = board.paper.capsMm.small;
  const room = (Math.abs(out[0]) * textWidth(mark.text, cap) + Math.abs(out[1]) * cap * 1.3) / 2;
  return add2(mark.at, scale2(out, board.mm(room + step)));
}

/** The least step at which neighbouring numbers do not crowd each other. */
function stride(board: Board, marks: readonly Mark[]): number {
  const cap = board.paper.capsMm.small;
  const needed = board.mm(Math.max(...marks.map((mark) => textWidth(mark.text, cap)), 0) + 1);
  const places = marks.map((mark) => placeOf(board, { mark, out: mark.out ?? [0, 0], step: CLEAR }));
  for (let every = 1; every < marks.length; every++) {
    const shown = places.filter((_, i) => i % every === 0);
    if (shown.every((p, i) => i === 0 || distance2(p, shown[i - 1] as Vec2) >= needed * 0.9)) return every;
  }
  return Math.max(1, marks.length - 1);
}

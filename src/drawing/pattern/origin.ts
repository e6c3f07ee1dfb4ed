import { add2, type Vec2 } from "../../geometry/vector.ts";
import type { Board } from "../board.ts";
import { boxOf } from "../box.ts";
import { line } from "../model.ts";

/** Half an arm's reach to either side of nought. [mm of paper] */
const ARM = 2;
/** From nought to the middle of its figures, at a slant. [mm of paper] */
const ASIDE = [
  [-4.4, -2.4],
  [-4.4, 2.4],
  [4.4, -2.4],
  [-4.4, -4],
  [-6, -2.4],
] as const;
/** Figures across anything are rather left out, for the cross alone tells enough; in the board's measure. */
const DEAREST = 3;

/** A small cross where x and y of the marking table are nought, a corner of the rectangle round the pattern. */
export function originCross(board: Board, outline: readonly Vec2[]): void {
  const { left, bottom } = boxOf(outline);
  const at: Vec2 = [left, bottom];
  const arm = board.mm(ARM);
  board.draw(
    line("dimension", add2(at, [-arm, 0]), add2(at, [arm, 0])),
    line("dimension", add2(at, [0, -arm]), add2(at, [0, arm])),
  );
  const ways = ASIDE.map(([x, y]) => ({
    strokes: [],
    labels: [board.label("0, 0", add2(at, [board.mm(x), board.mm(y)]), { role: "note", size: "small" })],
  }));
  board.tried(ways, DEAREST);
}

import type { createBoard } from "../../drawing/board.ts";
import { boxOf } from "../../drawing/box.ts";
import { line } from "../../drawing/model.ts";
import { add2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank } from "../../report/report.ts";

/** What is written beside the cross where the marking table's x and y begin. */
export const ORIGIN_NAME = "0, 0";
/** Half of its arms, and from its middle to its name at a slant. [mm] */
const [ARM_MM, ASIDE_MM] = [8, [11, 6]] as const;
/** Rather no name than one across the outline. */
const DEAREST = 20;

/** Where the marking table's x and y begin: the lower left corner of the rectangle round the blank as that has it. */
export function originOf({ outline }: Blank): Vec2 {
  const { left, bottom } = boxOf(outline);
  return [left, bottom];
}

/** A cross there, its arms along x and y, on a template that may be turned. */
export function drawOrigin(board: ReturnType<typeof createBoard>, at: Vec2, turn: (p: Vec2) => Vec2): void {
  const on = (x: number, y: number): Vec2 => turn(add2(at, [x, y]));
  board.draw(
    line("dimension", on(-ARM_MM, 0), on(ARM_MM, 0)),
    line("dimension", on(0, -ARM_MM), on(0, ARM_MM)),
  );
  const [x, y] = ASIDE_MM;
  const ways = [
    [-x, -y],
    [-x, y],
    [x, -y],
    [x, y],
  ].map(([dx = 0, dy = 0]) => ({
    strokes: [],
    labels: [board.label(ORIGIN_NAME, on(dx, dy), { role: "note", size: "small" })],
  }));
  board.put(ORIGIN_NAME, ways, DEAREST);
}

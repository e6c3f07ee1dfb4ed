import { add2, scale2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Board, Placing } from "../board.ts";
import { path } from "../model.ts";
import { arrowhead } from "./arrow.ts";

/** The level piece at a leader's end, before its lettering. [mm of paper] */
const LANDING = 2.5;

/** Ways to point at something from a distance: to each direction (degrees) and length (mm of paper) in turn. */
export function leader(
  board: Board,
  what: {
    tip: Vec2;
    text: string;
    directionsDeg: readonly number[];
    lengthsMm: readonly number[];
    size?: "small" | "figure";
    role?: "note" | "name" | "dimension";
  },
): Placing[] {
  const { unit } = board;
  return what.lengthsMm.flatMap((length) =>
    what.directionsDeg.map((deg): Placing => {
      const turn = (deg * Math.PI) / 180;
      const out: Vec2 = [Math.cos(turn), Math.sin(turn)];
      const elbow = add2(what.tip, scale2(out, length * unit));
      const side = out[0] >= 0 ? 1 : -1;
      const landing = add2(elbow, [side * LANDING * unit, 0]);
      return {
        strokes: [
          path("dimension", [what.tip, elbow, landing]),
          arrowhead(what.tip, unit2(sub2(what.tip, elbow)), unit),
        ],
        labels: [
          board.label(what.text, add2(landing, [side * unit, 0]), {
            role: what.role ?? "note",
            size: what.size ?? "small",
            anchor: side > 0 ? "start" : "end",
          }),
        ],
      };
    }),
  );
}

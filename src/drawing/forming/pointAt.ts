import type { Vec2 } from "../../geometry/vector.ts";
import type { Board, Placing } from "../board.ts";
import { boxOf } from "../box.ts";
import { leader } from "../dimension/leader.ts";
import { labelCorners } from "../lettering.ts";
import type { Box } from "../model.ts";

/** A leader in a direction that is not liked; in the board's measure. */
const UNLIKED = 12;

/** A name within a plot, with a leader to one of some places; nothing where there are none. */
export function pointAt(
  board: Board,
  {
    tips,
    text,
    box,
    directionsDeg,
  }: {
    tips: readonly Vec2[];
    text: string;
    box: Box;
    directionsDeg: { readonly liked: readonly number[]; readonly else: readonly number[] };
  },
): void {
  const to = (directions: readonly number[]) =>
    tips.flatMap((tip) =>
      leader(board, { tip, text, directionsDeg: directions, lengthsMm: [7, 11, 16, 22] }),
    );
  const stays = ({ labels }: Placing): boolean =>
    labels.every((label) => {
      const { left, right, bottom, top } = boxOf(labelCorners(label));
      return left > box.left && right < box.right && bottom > box.bottom && top < box.top;
    });
  const unliked = to(directionsDeg.else).map((way) => ({ ...way, extra: UNLIKED }));
  const ways = [...to(directionsDeg.liked), ...unliked].filter(stays);
  if (ways.length > 0) board.put(text, ways, Infinity);
}

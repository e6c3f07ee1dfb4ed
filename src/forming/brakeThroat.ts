import type { BrakeAsked } from "./asked.ts";
import type { BehindPunch } from "./brakeBehind.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge, state } from "./judge.ts";
import { ofShop } from "./ofShop.ts";
import { piecesToClear } from "./piecesToClear.ts";

/** Which line it is, in few words: "line 7", "line 3 of piece 2". */
export const lineWords = ({ piece, line }: BehindPunch, pieces: number): string =>
  `line ${line}${pieces > 1 ? ` of piece ${piece}` : ""}`;

/** How many pieces would find room, where that is known: "more pieces (4 surely clear the throat)". */
export function morePieces(item: BrakeAsked["item"], throatMm: number): string {
  const clear = piecesToClear(item, throatMm);
  return clear === null ? "more pieces" : `more pieces (${clear} surely clear the throat)`;
}

/**
 * Does the plate find room behind the punch? Its shallower side goes there, at the line where that is deepest. Where no
 * lines are known it is half the diagonal of a blank at most. Where the shop gives no depth behind the line, the depth
 * wanted is told instead. [mm]
 *
 * @param asked `behind` from `behindPunch`, null where no lines are known
 */
export function brakeThroat({
  item,
  brake,
  behind,
  say,
}: Omit<BrakeAsked, "dieMm" | "bends"> & { readonly behind: BehindPunch | null }): Check | null {
  if (item.blanks.length === 0) return null;
  const value =
    behind?.depthMm ??
    Math.max(...item.blanks.map(({ lengthMm, widthMm }) => Math.hypot(lengthMm, widthMm))) / 2;
  const words = {
    id: "brake-throat",
    title: "Depth behind the bend line",
    value,
    sense: "at most" as const,
    unit: "mm",
    basis: DERIVED,
    rule: behind
      ? "at every bend line the shallower side of the blank, its outline's greatest distance square to the line, measured flat ≤ depth behind the line; bends already made on that side must clear the ram"
      : "half the diagonal of a blank ≤ depth behind the bend line",
  };
  const most = `up to ${say.length(value)} of plate${behind ? ` (${lineWords(behind, item.pieces)})` : ""}`;
  const limit = brake.throat;
  if (limit === undefined)
    return state({
      ...words,
      verdict: "caution",
      advice: `The shop file gives no throat: measure it first, and see that ${most} find room behind the line.`,
    });
  return judge({
    ...words,
    limit,
    ...ofShop(say, "limit"),
    beyond: "caution",
    advice: (verdict) =>
      verdict === "pass"
        ? `With the shallower side in the throat ${most} lie behind the line, and there is room for ${say.shops(limit)}.`
        : `Even with the shallower side in the throat ${most} lie behind the line, and there is room for ${say.shops(limit)}: let the blank hang out past the frame, or make ${morePieces(item, limit)}.`,
  });
}

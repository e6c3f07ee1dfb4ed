import type { BrakeAsked } from "./asked.ts";
import type { BehindPunch } from "./brakeBehind.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge, state } from "./judge.ts";
import { ofShop } from "./ofShop.ts";
import { inPieces } from "./piecesToClear.ts";
import { listed } from "./words.ts";

/** Which line it is, in few words: "line 7", "line 3 of piece 2". */
const lineWords = ({ piece, line }: Pick<BehindPunch, "piece" | "line">, pieces: number): string =>
  `line ${line}${pieces > 1 ? ` of piece ${piece}` : ""}`;

/** Numbers as they are listed, three or more that follow each other as a run: "17 to 20 and 23". */
function runs(numbers: readonly number[]): string {
  const found: number[][] = [];
  for (const one of numbers) {
    const last = found.at(-1);
    if (last && last.at(-1) === one - 1) last.push(one);
    else found.push([one]);
  }
  return listed(
    found.flatMap((run): readonly (string | number)[] =>
      run.length > 2 ? [`${run[0] ?? ""} to ${run.at(-1) ?? ""}`] : run,
    ),
  );
}

/** The same for several: "lines 19 and 20", "lines 17 to 20", "line 7 of each piece". */
export function linesWords(lines: BehindPunch["turned"], pieces: number): string {
  const own = [...new Set(lines.map(({ piece }) => piece))].map((piece) =>
    lines.filter((one) => one.piece === piece),
  );
  const told = own.map((some) => some.map(({ line }) => line));
  if (pieces > 1 && told.length === pieces && told.every((one) => String(one) === String(told[0])))
    return `line${(told[0]?.length ?? 0) > 1 ? "s" : ""} ${runs(told[0] ?? [])} of each piece`;
  return listed(
    own.map(([first, ...more]) =>
      first === undefined
        ? ""
        : more.length === 0
          ? lineWords(first, pieces)
          : `lines ${runs([first, ...more].map(({ line }) => line))}${pieces > 1 ? ` of piece ${first.piece}` : ""}`,
    ),
  );
}

/** Does a side that is bent from its seam edge find room, line after line, though it would not flat? */
export const findsRoom = (behind: BehindPunch | null, throatMm: number): behind is BehindPunch =>
  behind !== null && behind.inOrder.depthMm <= throatMm;

const inTime = (say: BrakeAsked["say"], { inOrder }: BehindPunch): string =>
  `bent from both seam edges to the middle, the side that is bent already behind, it reaches about ${say.length(inOrder.depthMm)} and finds room, so keep to that order.`;

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
        : `Even with the shallower side behind the punch ${most}, measured flat, lie there, and the throat is ${say.shops(limit)} deep: ${findsRoom(behind, limit) ? inTime(say, behind) : `${inPieces(item, limit)}, or, kept as drawn, it has to hang out past the end of the frame, where the bed leaves it room: try that with the flat blank before the first hit.`}`,
  });
}

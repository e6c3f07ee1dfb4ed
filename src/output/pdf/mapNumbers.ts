import { LAP_TO_HERE } from "../../drawing/pattern/lapLine.ts";
import { add2, scale2, sub2, type Vec2 } from "../../geometry/vector.ts";
import type { Marked } from "./shareLines.ts";

/** Places for a line's number on the map, as shares of the line from its wide end; the best first. */
const PLACES = [0.1, 0.16, 0.22, 0.3, 0.9, 0.84, 0.4, 0.5, 0.6, 0.7];

/** The number of a line without its bend, which stands on the sheets themselves; empty where it has none. */
const numberOf = ({ text = "" }: Marked): string => text.replace(LAP_TO_HERE, "").replace(/ \(.*/, "").trim();

/** Numbers of lines, each with the places on its line where it may stand. */
export const mapNumbers = (lines: readonly Marked[]): { readonly text: string; readonly places: Vec2[] }[] =>
  lines.flatMap((one) => {
    const text = numberOf(one);
    const { from, to } = one;
    const places = PLACES.map((share) => add2(from, scale2(sub2(to, from), share)));
    return text === "" ? [] : [{ text, places }];
  });

import { readable } from "../drawing/lettering.ts";
import { type Placed, placer } from "../geometry/placed.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Blank, Report } from "../report/report.ts";
import { brakeBends, linesOn } from "./bendLines.ts";
import { contourOf, markPlace, markWords, placedContour } from "./contour.ts";
import { lineNumbers } from "./lineNumbers.ts";
import { contourWords, escaped, type Say } from "./svgWords.ts";

const MARK_CAP_MM = 8;

/**
 * A blank where it lies: its cut contour, its bend and element lines with their numbers, and its mark, turned so that it
 * reads without turning over; the groups that a DXF has as layers.
 *
 * @param called how a group says which it is: a name stands once in a file, a class as often as there are blanks
 */
export function svgBlank(
  one: Placed & { readonly report: Report; readonly blank: Blank },
  say: Say,
  called: "id" | "class",
): string[] {
  const { report, blank, rotationDeg } = one;
  const { n, at, xy } = say;
  const place = placer(one);
  const bends = brakeBends(report, blank);
  const lines = linesOn(blank, bends);
  const pathOf = (kind: "bend" | "element") =>
    lines
      .filter((line) => line.kind === kind)
      .map(({ from, to }) => `M${at(place(from))}L${at(place(to))}`)
      .join("");
  const words = (p: Vec2, capMm: number, said: string, alongDeg: number) => {
    const [x, y] = xy(place(p)).map(n);
    const deg = readable(alongDeg + rotationDeg);
    const turn = deg === 0 ? "" : ` transform="rotate(${n(-deg)} ${x} ${y})"`;
    return `x="${x}" y="${y}"${turn} text-anchor="middle" dominant-baseline="central" font-family="sans-serif" font-size="${n(capMm)}" fill="#000" stroke="none">${escaped(said)}</text>`;
  };
  return [
    `<path ${called}="cut" d="${contourWords(placedContour(contourOf(blank), place), say)}"/>`,
    ...(["bend", "element"] as const).flatMap((kind) => {
      const d = pathOf(kind);
      return d === "" ? [] : [`<path ${called}="${kind}" stroke-dasharray="6 3" d="${d}"/>`];
    }),
    ...lineNumbers(report, blank, bends).map(
      (number) =>
        `<text class="${number.of}-number" ${words(number.at, number.capMm, number.words, number.alongDeg)}`,
    ),
    `<text ${called}="mark" ${words(markPlace(blank).at, MARK_CAP_MM, markWords(report, blank), 0)}`,
  ];
}

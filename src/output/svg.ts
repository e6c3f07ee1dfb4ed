import type { Placed } from "../geometry/placed.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Blank, Report } from "../report/report.ts";
import { notGoing, notToCut } from "./notToCut.ts";
import type { PlateSheet } from "./plateSheet.ts";
import { svgBlank } from "./svgBlank.ts";
import { escaped, type Say, sayer } from "./svgWords.ts";

/** Cut lines of a hair's width: what a cutter follows. [mm] */
const HAIR_MM = 0.1;
/** Words along the lower edge: their letters' size, and how far they stand in; on a small blank smaller. [mm] */
const [NOTE_MM, NOTE_IN_MM] = [5, 4];
/** So many letters' sizes of room for the words across a blank. */
const NOTE_LONG = 60;

/** As it is drawn. */
const AS_DRAWN: Placed = { rotationDeg: 0, at: [0, 0] };

/** One blank at full size: an SVG whose user units are millimetres, y down from the top of the blank. */
export function printSvg(report: Report, blank: Blank): string {
  const { xMm, yMm } = blank.asDrawn;
  const say = sayer(yMm);
  return framed([xMm, yMm], say, {
    title: report.part.title,
    bad: notGoing([report]),
    groups: svgBlank({ report, blank, ...AS_DRAWN }, say, "id"),
  });
}

/** A whole plate at full size: its edge dashed, and every blank on it with its lines, their numbers and its mark. */
export function printPlateSvg({ lengthMm, widthMm, title, blanks }: PlateSheet): string {
  const say = sayer(widthMm);
  const { n } = say;
  return framed([lengthMm, widthMm], say, {
    title,
    bad: notGoing(blanks.map(({ report }) => report)),
    groups: [
      `<path id="plate" stroke-dasharray="12 6" d="M0 0H${n(lengthMm)}V${n(widthMm)}H0Z"/>`,
      ...blanks.flatMap((one) => ["<g>", ...svgBlank(one, say, "class"), "</g>"]),
    ],
  });
}

function framed(
  [long, high]: Vec2,
  { n }: Say,
  { title, bad, groups }: { title: string; bad: readonly string[]; groups: readonly string[] },
): string {
  const size = Math.min(NOTE_MM, long / NOTE_LONG);
  const notes = notToCut(bad).flatMap((words) => [
    `<desc>${escaped(words)}</desc>`,
    `<text id="note" x="${n(NOTE_IN_MM)}" y="${n(high - NOTE_IN_MM)}" font-family="sans-serif" font-size="${n(size)}" fill="#000" stroke="none">${escaped(words)}</text>`,
  ]);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(long)}mm" height="${n(high)}mm" viewBox="0 0 ${n(long)} ${n(high)}" fill="none" stroke="#000" stroke-width="${HAIR_MM}">`,
    `<title>${escaped(title)}</title>`,
    ...notes,
    ...groups,
    "</svg>",
    "",
  ].join("\n");
}

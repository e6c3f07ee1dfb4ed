import { readable } from "../drawing/lettering.ts";
import { rowsOf } from "../drawing/pattern/lines.ts";
import { degrees } from "../geometry/angle.ts";
import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { distance2, type Vec2 } from "../geometry/vector.ts";
import type { Blank, Report } from "../report/report.ts";
import type { FileBend } from "./bendLines.ts";
import { uprightNumber } from "./uprightNumber.ts";

/** A line's number as a file has it: about its middle, along its line. */
interface LineNumber {
  /** Of the brake's plan, or of the marking table. */
  readonly of: "bend" | "element";
  readonly words: string;
  readonly at: Vec2;
  readonly capMm: number;
  readonly alongDeg: number;
}

/** A numbered line from the end where its number stands. */
interface Line {
  readonly number: number;
  readonly from: Vec2;
  readonly to: Vec2;
}

/**
 * The numbers beside the lines of a blank: those of the brake's plan, where the part goes to the brake, else those of the
 * marking table. Two rows of numbers on one plate would be taken for each other.
 */
export function lineNumbers(
  report: Report,
  blank: Blank,
  bends: readonly FileBend[] | undefined,
): LineNumber[] {
  if (bends) {
    const lines = bends.map(({ line, from, narrow }): Line => ({ number: line.number, from, to: narrow }));
    return lines.map((one) => numbered("bend", one, lines));
  }
  const rows = rowsOf(report, blank);
  const lines = blank.lines.flatMap(({ from, to }): Line[] => {
    const row = rows.find(
      ({ a, b }) => distance2(a, from) < SAME_POINT_MM && distance2(b, to) < SAME_POINT_MM,
    );
    return row && distance2(from, to) > SAME_POINT_MM ? [{ number: row.number, from, to }] : [];
  });
  const back = lines.map(({ number, from, to }): Line => ({ number, from: to, to: from }));
  // At the end where its neighbours leave it more room: several lines may meet in a corner or at a point.
  return lines.map((one, i) => {
    const other = back[i] as Line;
    return roomOf(one, lines) >= roomOf(other, back)
      ? numbered("element", one, lines)
      : numbered("element", other, back);
  });
}

/** How near another line of the blank begins; Infinity for one alone. [mm] */
const roomOf = (line: Line, lines: readonly Line[]): number =>
  Math.min(...lines.filter((one) => one !== line).map(({ from }) => distance2(from, line.from)));

/** Capitals of a line's number: at most so high, and no more of the room between lines than leaves it beside its own. */
const NUMBER_CAP_MM = 5;
const OF_SPACING = 0.4;
/** A number stands so many capitals from the end, and its middle so many beside the line. */
const [FROM_END, BESIDE] = [3, 0.9];

/** Where a line's number goes: beside the line near its end, and along it, so that it reads without turning over. */
function numbered(of: LineNumber["of"], line: Line, lines: readonly Line[]): LineNumber {
  const { number, from, to } = line;
  const long = distance2(from, to);
  const [ux, uy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const spaces = lines
    .filter((one) => one !== line)
    .map((one) => distance2(one.from, from))
    // Lines of a corner may end in one point and part from there.
    .filter((space) => space > NUMBER_CAP_MM / 2);
  const capMm = Math.min(NUMBER_CAP_MM, OF_SPACING * Math.min(...spaces, long / 2));
  const at: Vec2 = [
    from[0] + capMm * (FROM_END * ux - BESIDE * uy),
    from[1] + capMm * (FROM_END * uy + BESIDE * ux),
  ];
  const alongDeg = readable(degrees(Math.atan2(uy, ux)));
  return { of, words: uprightNumber(number), at, capMm, alongDeg };
}

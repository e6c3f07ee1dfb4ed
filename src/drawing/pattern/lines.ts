import type { Blank, MarkingRow, Drawable } from "../../report/report.ts";
import { NO_LENGTH_MM, SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { add2, distance2, length2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";

/** Numbered lines that share one point of an end: several meet in a corner or at a point. */
export interface Mark {
  readonly text: string;
  /** Indices into the report's `hand.rows`. */
  readonly elements: readonly number[];
  readonly at: Vec2;
  /** Away from the plate: where the number stands; undefined where lines meet from all sides. */
  readonly out: Vec2 | undefined;
  /** First and last of the numbers in one: they run round and come back. */
  readonly closesRound?: true;
  /** Towards the lines of its own piece, square to outward, where a line of another piece lies on it: its number stands there. */
  readonly side?: Vec2;
}

/** The rows of one blank's marking table. */
export const rowsOf = (report: Drawable, blank: Blank): readonly MarkingRow[] =>
  report.hand.rows.filter((row) => row.piece === blank.piece);

/** Of each number of a blank its line's indices in `hand.rows`: its own, then those of pieces that are cut from the same pattern. */
export function elementsOf(report: Drawable, blank: Blank): (number: number) => readonly number[] {
  const alike = report.blanks.filter(({ sameAs }) => sameAs === blank.piece).map(({ piece }) => piece);
  const starts = [blank.piece, ...alike].map((piece) =>
    report.hand.rows.findIndex((row) => row.piece === piece),
  );
  return (number) => starts.map((start) => start + number - 1);
}

/** A numbered line, by its point on the end in question and on the other. */
interface NumberedLine {
  readonly number: number;
  readonly elements?: readonly number[];
  readonly at: Vec2;
  readonly other: Vec2;
  /** Where the line has no length in this view: which way is outward. */
  readonly outward?: Vec2;
}

/** The numbers along one end, in order; numbers of lines that meet are written once: 4–7. */
export function marksAlong(lines: readonly NumberedLine[]): Mark[] {
  const groups: NumberedLine[][] = [];
  for (const one of lines) {
    const open = groups.at(-1);
    if (open?.[0] && distance2(open[0].at, one.at) < SAME_POINT_MM) open.push(one);
    else groups.push([one]);
  }
  return groups.map((group) => {
    const [first, last] = [group[0] as NumberedLine, group.at(-1) as NumberedLine];
    const text = first === last ? String(first.number) : `${first.number}–${last.number}`;
    const elements = group.flatMap((one) => one.elements ?? []);
    return { text, elements, at: first.at, out: meanOutward(group) };
  });
}

/** The mean direction of the lines that end here, away from their other ends. */
function meanOutward(group: readonly NumberedLine[]): Vec2 | undefined {
  let sum: Vec2 = [0, 0];
  for (const { at, other, outward } of group) {
    const run = sub2(at, other);
    if (outward) sum = add2(sum, outward);
    else if (length2(run) > NO_LENGTH_MM) sum = add2(sum, unit2(run));
  }
  return length2(sum) > NO_LENGTH_MM ? unit2(sum) : undefined;
}

/** The rows of a blank as lines seen from one end. */
export const seenFrom = (
  rows: readonly MarkingRow[],
  elements: (number: number) => readonly number[],
  end: "a" | "b",
): NumberedLine[] =>
  rows.map((row) => ({
    number: row.number,
    elements: elements(row.number),
    at: row[end],
    other: row[end === "a" ? "b" : "a"],
  }));

/** Where several lines meet on an end. */
export const tipsOf = (rows: readonly MarkingRow[], end: "a" | "b"): Vec2[] =>
  rows.flatMap((row, i) => {
    const before = rows[i - 1];
    return before && distance2(before[end], row[end]) < SAME_POINT_MM ? [row[end]] : [];
  });

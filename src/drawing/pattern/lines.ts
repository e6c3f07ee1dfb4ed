import type { Blank, MarkingRow, Report, SheetPoint } from "../../report/report.ts";
import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { distance2 } from "../../geometry/vector.ts";

/** Rows of the marking table that share one point of an end: several lines meet in a corner or at a point. */
export interface Mark {
  readonly text: string;
  readonly at: SheetPoint;
  /** The other ends of its lines. */
  readonly from: readonly SheetPoint[];
}

/** The rows of one blank's marking table. */
export const rowsOf = (report: Report, blank: Blank): readonly MarkingRow[] =>
  report.hand.rows.filter((row) => row.piece === blank.piece);

/** The numbers along one end, in order; numbers of lines that meet are written once: 4–7. */
export function marksAlong(rows: readonly MarkingRow[], end: "a" | "b"): Mark[] {
  const marks: { first: number; last: number; at: SheetPoint; from: SheetPoint[] }[] = [];
  const other = end === "a" ? "b" : "a";
  for (const row of rows) {
    const open = marks.at(-1);
    if (open && distance2(open.at, row[end]) < SAME_POINT_MM) {
      open.last = row.number;
      open.from.push(row[other]);
    } else marks.push({ first: row.number, last: row.number, at: row[end], from: [row[other]] });
  }
  return marks.map(({ first, last, at, from }) => ({
    text: first === last ? String(first) : `${first}–${last}`,
    at,
    from,
  }));
}

import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { add2, distance2, left2, scale2, sub2, unit2 } from "../../geometry/vector.ts";
import type { MarkingRow } from "../../report/report.ts";
import type { Board, Placing } from "../board.ts";
import { slope } from "../dimension/angular.ts";
import type { Units } from "../format.ts";

/** Along the line from end A, where the lines of a corner have parted. */
const SHARES = [0.55, 0.65, 0.45, 0.75, 0.35];

/** A true length written along its line, as on a layout by hand. */
function written(board: Board, row: MarkingRow, units: Units): Placing[] {
  const dir = unit2(sub2(row.b, row.a));
  const cap = board.paper.capsMm.small;
  const { main } = board.length(row.trueMm, units);
  return SHARES.flatMap((share) =>
    ([1, -1] as const).map((side): Placing => {
      const on = add2(row.a, scale2(sub2(row.b, row.a), share));
      const at = add2(on, scale2(left2(dir), side * board.mm(0.9 + cap / 2)));
      return {
        strokes: [],
        labels: [board.label(main, at, { role: "dimension", size: "small", alongDeg: slope(dir) })],
      };
    }),
  );
}

/** Lines worth a figure: the borders of the flats, or the longest and the shortest where there are none. */
function chosen(rows: readonly MarkingRow[]): MarkingRow[] {
  const inner = rows.slice(1, -1);
  const meets = (row: MarkingRow, other: MarkingRow | undefined): boolean =>
    other !== undefined &&
    (["a", "b"] as const).some((end) => distance2(row[end], other[end]) < SAME_POINT_MM);
  // A border meets its neighbour at an end on one side only: on the other lies a flat.
  const borders = inner.filter((row, i) => meets(row, rows[i]) !== meets(row, rows[i + 2]));
  if (borders.length > 0) return borders;
  const byLength = [...inner].sort((p, q) => p.trueMm - q.trueMm);
  const ends = [byLength.at(-1), byLength[0]].filter((row) => row !== undefined);
  const known = [rows[0]?.trueMm, rows.at(-1)?.trueMm];
  return ends.filter(
    (row, i) =>
      ends.indexOf(row) === i && !known.some((mm) => mm !== undefined && Math.abs(mm - row.trueMm) < 0.05),
  );
}

/** True lengths along the lines that a layout by hand begins with. */
export function trueLengths(board: Board, rows: readonly MarkingRow[], units: Units): void {
  for (const row of chosen(rows))
    board.put(`true length of line ${row.number}`, written(board, row, units), 20);
}

import { linesOf } from "../../drawing/forming/brakePicture.ts";
import type { BrakePlan } from "../../forming/brakePlan.ts";
import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { add2, cross2, distance2, scale2, sub2, type Vec2 } from "../../geometry/vector.ts";
import type { MarkingRow, Report } from "../../report/report.ts";

type Line = BrakePlan["lines"][number];

/** Two rows of numbers on one plate: the bend lines of the brake, and the lines of the marking table. */
export interface BendsBeside {
  /** The lines of the marking table that a bend line lies between, "3–4", or the one that it lies on, "3". */
  readonly marking: (line: Line) => string;
  /** The bend lines from a line of the marking table on, up to the next: "5 on it, 6–7"; nothing where there is none. */
  readonly bends: (row: MarkingRow) => string;
}

const middle = (p: Vec2, q: Vec2): Vec2 => scale2(add2(p, q), 1 / 2);
/** On which side of a line of the layout a point lies. */
const side = ({ a, b }: MarkingRow, at: Vec2): number => Math.sign(cross2(sub2(b, a), sub2(at, a)));

/** The row that a bend line lies on, or the one that it follows; undefined where it lies beyond them all, as on a lap. */
function placeOf(line: Line, rows: readonly MarkingRow[]): { row: MarkingRow; isOn: boolean } | undefined {
  const on = rows.find(
    ({ a, b }) => distance2(a, line.from) < SAME_POINT_MM && distance2(b, line.to) < SAME_POINT_MM,
  );
  if (on) return { row: on, isOn: true };
  const at = middle(line.from, line.to);
  // Of a wide sector the far side may lie between the same two lines, carried on: the nearest is meant.
  const between = rows.flatMap((row, i) => {
    const next = rows[i + 1];
    if (!next || side(row, at) === side(next, at)) return [];
    return [{ row, awayMm: distance2(at, middle(middle(row.a, row.b), middle(next.a, next.b))) }];
  });
  const [first] = between.toSorted((p, q) => p.awayMm - q.awayMm);
  return first && { row: first.row, isOn: false };
}

/** Numbers in a row, those that follow each other in one: "3, 5–7". */
function runs(numbers: readonly number[]): string {
  const all: [number, number][] = [];
  for (const number of numbers) {
    const last = all.at(-1);
    if (last?.[1] === number - 1) last[1] = number;
    else all.push([number, number]);
  }
  return all.map(([from, to]) => (from === to ? String(from) : `${from}–${to}`)).join(", ");
}

/** Which numbers of the one stand beside which of the other. */
export function bendsBeside({ hand, blanks }: Report, plan: BrakePlan): BendsBeside {
  const placed = blanks.flatMap((blank) => {
    const rows = hand.rows.filter(({ piece }) => piece === blank.piece);
    return linesOf(plan, blank).map((line) => ({ line, place: placeOf(line, rows) }));
  });
  return {
    marking: (line) => {
      const place = placed.find((one) => one.line === line)?.place;
      if (!place) return "";
      const { number } = place.row;
      return place.isOn ? String(number) : `${number}–${number + 1}`;
    },
    bends: (row) => {
      const own = placed.filter(({ place }) => place?.row === row);
      const on = own.filter(({ place }) => place?.isOn).map(({ line }) => `${line.number} on it`);
      const after = runs(own.filter(({ place }) => !place?.isOn).map(({ line }) => line.number));
      return [...on, ...(after === "" ? [] : [after])].join(", ");
    },
  };
}

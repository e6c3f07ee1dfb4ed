import { type Units, unitName } from "../../drawing/format.ts";
import { sayIn } from "../../forming/say.ts";
import { bevelsOf } from "../../report/bevels.ts";
import type { Report } from "../../report/report.ts";
import type { ByHandRow } from "./byHandWords.ts";

/** So many columns find room across the sheet. */
const MOST_LINES = 13;

const FACES = { inside: "in", outside: "out" } as const;

/** What is bevelled off both ends at the lines of a blank, as rows under its picture; none where one size serves all round. */
export function bevelRows(report: Report, piece: number): ByHandRow[] {
  const all = bevelsOf(report, piece);
  if (all.length === 0) return [];
  const { units } = report.part;
  const say = sayIn(units);
  // Every so manieth line, and the last, which is the other seam edge.
  const every = Math.ceil((all.length - 1) / (MOST_LINES - 1));
  const lines = all.filter((_, i) => i % every === 0 || i === all.length - 1);
  return [
    { name: "Line", cells: lines.map(({ number }) => String(number)) },
    { name: `Bevel, ${units}`, cells: lines.map(({ offMm }) => say.bare(offMm)) },
    { name: "Face, large edge", cells: lines.map(({ largeFace }) => FACES[largeFace]) },
  ];
}

/** What those rows say. */
export const bevelNote = (units: Units): string =>
  `Bevel: taken off along the wall, in ${unitName(units)}, at the large edge on the inside (in) or the outside (out), at the small edge as much on the other face; between lines in proportion.`;

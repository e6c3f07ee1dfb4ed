import { angleText } from "../../drawing/format.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { Blank, Report } from "../../report/report.ts";
import { brakeBends } from "../bendLines.ts";
import { uprightNumber } from "../uprightNumber.ts";

/** A line of a pattern, how far it stops short of its end `to`, and what is bent at it. */
export interface Numbered {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly stop: Vec2;
  readonly number: number;
  readonly bendDeg: number | undefined;
}

/** The lines of the brake's own plan, where the part is made on one: they are others than those of the layout by hand. */
export const hitLines = (report: Report, blank: Blank): Numbered[] | undefined =>
  brakeBends(report, blank)?.map(({ line, from, to, narrow }) => ({
    from,
    to: narrow,
    stop: to,
    number: line.number,
    bendDeg: line.bendDeg,
  }));

/** What is written along a line: its number, on a share those of all lines that it becomes, and its bend. */
export function lineText(numbers: readonly number[], bendDeg: number | undefined): string {
  const words = [...numbers]
    .sort((p, q) => p - q)
    .map(uprightNumber)
    .join(" · ");
  return bendDeg === undefined ? words : `${words} (${angleText(bendDeg, 1)})`;
}

/** Has a line's text a number that would be another one upside down? */
export const endsInStop = (text: string): boolean => /^(?:\d+\.? · )*\d+\.(?: |$)/.test(text);

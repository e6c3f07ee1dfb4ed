import type { Numbers } from "../numbers.ts";
import type { Worked } from "../worked.ts";

/** One figure of a table that can be asked: the line it stands in, and how it was worked out there. */
interface AnsweredRow {
  /** "Line 4", "Line 4 of piece 2", or nothing where the question is about one figure alone. */
  readonly row: string;
  readonly worked: Worked;
}

/** What is answered when a column of a table, or one of its rows, is asked. */
interface TableAnswer {
  readonly name: string;
  readonly rows: readonly AnsweredRow[];
}

/** Answers by the key of the column or row that is asked. */
export type TableAnswers = ReadonlyMap<string, TableAnswer>;

/** A length as in a table, with its unit. */
export const withUnitOf = (say: Numbers, mm: number): string => `${say.column(mm)}\u00a0${say.unit}`;

/** Straight across, by what two points differ: √((x₂ − x₁)² + (y₂ − y₁)²), as it is worked out by hand. */
export const acrossWords = (say: Numbers, from: readonly number[], to: readonly number[]): string =>
  `√(${to
    .map((at, i) => {
      const less = from[i] ?? 0;
      // To take away what is less than nought is to add it.
      return `(${say.column(at)} ${less < 0 ? "+" : "−"} ${say.column(Math.abs(less))})²`;
    })
    .join(" + ")})`;

import type { MarkingRow, Shaped } from "../../../report/report.ts";
import { chosen } from "./chosen.svelte.ts";

type Rows = Pick<Shaped, "hand" | "blanks">;

/** The row of a blank by which the chosen line is marked: a piece that is cut from another's pattern is marked by that one's. */
export function rowOfChosen({ hand: { rows }, blanks }: Rows, blank: number): MarkingRow | undefined {
  const one = chosen.element === undefined ? undefined : rows[chosen.element];
  const sameAs = one && blanks.find(({ piece }) => piece === one.piece)?.sameAs;
  if (!one || (sameAs ?? one.piece) !== blank) return undefined;
  return rows.find(({ piece, number }) => piece === blank && number === one.number);
}

/** Rows of a marking table to choose a line by. */
export function chosenRows(shaped: Rows) {
  return {
    isChosen: (row: MarkingRow): boolean => rowOfChosen(shaped, row.piece) === row,
    choose(row: MarkingRow | undefined): void {
      const at = row ? shaped.hand.rows.indexOf(row) : -1;
      chosen.element = at < 0 ? undefined : at;
    },
  };
}

import type { MarkingRow, Shaped } from "../../../report/report.ts";

/** The element line that is looked at in every drawing of the part, as an index into the report's `hand.rows`. */
class Chosen {
  element: number | undefined = $state(undefined);
  isAmong(elements: readonly number[] | undefined): boolean {
    return this.element !== undefined && elements !== undefined && elements.includes(this.element);
  }
}
export const chosen = new Chosen();

/** Rows of a marking table to choose a line by; a piece that is cut from another's pattern is marked by that one's rows. */
export function chosenRows({ hand: { rows }, blanks }: Pick<Shaped, "hand" | "blanks">) {
  const patternOf = (row: MarkingRow): number =>
    blanks.find(({ piece }) => piece === row.piece)?.sameAs ?? row.piece;
  return {
    isChosen(row: MarkingRow): boolean {
      const one = chosen.element === undefined ? undefined : rows[chosen.element];
      return one !== undefined && one.number === row.number && patternOf(one) === row.piece;
    },
    choose(row: MarkingRow | undefined): void {
      const at = row ? rows.indexOf(row) : -1;
      chosen.element = at < 0 ? undefined : at;
    },
  };
}

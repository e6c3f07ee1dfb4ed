import type { MarkingRow } from "../../report/report.ts";

/** Lines that can be chosen by their rows. */
export interface RowChoice {
  readonly isChosen: (row: MarkingRow) => boolean;
  /** Undefined: none any more. */
  readonly choose: (row: MarkingRow | undefined) => void;
}

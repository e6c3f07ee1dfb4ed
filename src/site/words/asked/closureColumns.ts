import type { ClosureRow } from "../../../forming/answer.ts";
import { percent } from "../numbers.ts";

/** Columns of the closure table that can be asked, and what they are called. */
export const CLOSURE_COLUMNS = [
  { id: "closed", name: "Closed" },
  { id: "share", name: "Share of the bend" },
  { id: "large", name: "Large end" },
  { id: "small", name: "Small end" },
] as const;

/** What a row of the table is called where it is asked; two may be as far closed, to a tenth of a percent. */
export const closureRow = ({ closed, mark }: Pick<ClosureRow, "closed" | "mark">): string =>
  `${percent(closed, 1)}${mark === null ? "" : `, ${mark}`}`;

import type { FormingPlan } from "../../forming/plan.ts";
import type { Report } from "../../report/report.ts";

/** So many lines find room on another sheet. */
const FEW_LINES = 8;
/** Lines of a printed sheet; a larger lot takes copies of it. */
const MOST_LINES = 24;

/** A sheet with a line for every blank of a lot. */
interface Lot {
  readonly blanks: number;
  /** Numbers of the blanks that have a line: as many as a sheet holds. */
  readonly numbers: readonly number[];
  /** Few enough to stand on a sheet with other things. */
  readonly few: boolean;
  /** Headings, a group a pass. */
  readonly groups: readonly { readonly name: string; readonly columns: readonly string[] }[];
}

/** What is noted of each blank of a lot on a plate roll; undefined for a single blank, and on the brake. */
export function lotOf({ part, cone }: Report, plan: FormingPlan | undefined): Lot | undefined {
  const blanks = (part.pieces ?? 1) * (part.quantity ?? 1);
  if (blanks === 1 || plan?.route !== "roll") return undefined;
  const ends = ["large end", "small end"];
  const pipe = cone?.halfAngleDeg === 0;
  const set = pipe ? "raise" : "raise, large edge";
  const gaps = pipe ? ["gap"] : ends.map((end) => `gap, ${end}`);
  const templates = ends.map((end) => `template, ${end}`);
  const open = (part.pieces ?? 1) > 1;
  return {
    blanks,
    few: blanks <= FEW_LINES,
    numbers: Array.from({ length: Math.min(blanks, MOST_LINES) }, (_, i) => i + 1),
    groups: [
      { name: "First pass", columns: [set, ...(cone ? gaps : templates)] },
      { name: "Second pass, closed", columns: [set, ...(open ? templates : gaps)] },
      { name: "Inspected", columns: ["by, date"] },
    ],
  };
}

import type { FormingPlan } from "../../forming/plan.ts";
import type { Report } from "../../report/report.ts";
import { isByTemplate } from "../words/work.ts";

/** So many lines find room on another sheet. */
const FEW_LINES = 8;
/** Lines of a printed sheet; a larger lot takes copies of it. */
const MOST_LINES = 24;

/** A sheet with a line for every blank of a lot. */
export interface Lot {
  readonly blanks: number;
  /** What is written on the blanks that have a line, as many as a sheet holds: "1", "piece 1", or part and piece, "1.1". */
  readonly names: readonly string[];
  /** The name of the blank after them. */
  readonly next: string;
  /** Few enough to stand on a sheet with other things. */
  readonly few: boolean;
  /** Headings, a group a pass. */
  readonly groups: readonly { readonly name: string; readonly columns: readonly string[] }[];
}

/** What is written on a blank, counted from 0. */
function nameOf(blank: number, { pieces = 1, quantity = 1 }: Report["part"]): string {
  if (pieces === 1) return String(blank + 1);
  const piece = (blank % pieces) + 1;
  return quantity === 1 ? `piece ${piece}` : `${Math.floor(blank / pieces) + 1}.${piece}`;
}

/** What is noted of each blank of a lot on a plate roll; undefined for a single blank, and on the brake. */
export function lotOf({ part, cone }: Report, plan: FormingPlan | undefined): Lot | undefined {
  const blanks = (part.pieces ?? 1) * (part.quantity ?? 1);
  if (blanks === 1 || plan?.route !== "roll") return undefined;
  const ends = ["large end", "small end"];
  const pipe = cone?.halfAngleDeg === 0;
  const lines = Math.min(blanks, MOST_LINES);
  const atBearings =
    plan.settings?.zones.some(({ passes }) => passes.some(({ start }) => start?.smallBearingMm != null)) ??
    false;
  const set = pipe
    ? ["raise"]
    : atBearings
      ? ["drop end", "fixed end", "raise, large edge"]
      : ["raise, large edge"];
  const gaps = pipe ? ["gap"] : ends.map((end) => `gap, ${end}`);
  const templates = ends.map((end) => `template, ${end}`);
  const open = (part.pieces ?? 1) > 1;
  // Rolled by template all the way: there is one pass, and no setting to compare.
  const passes = isByTemplate(plan)
    ? [{ name: "Rolled", columns: ["scales, one end", "scales, other end", ...(open ? templates : gaps)] }]
    : [
        { name: "First pass", columns: [...set, ...(cone ? gaps : templates)] },
        { name: "Second pass, closed", columns: [...set, ...(open ? templates : gaps)] },
      ];
  return {
    blanks,
    few: blanks <= FEW_LINES,
    names: Array.from({ length: lines }, (_, i) => nameOf(i, part)),
    next: nameOf(lines, part),
    groups: [...passes, { name: "Inspected", columns: ["by, date"] }],
  };
}

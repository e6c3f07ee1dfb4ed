import { besideLetterMm } from "../../forming/brakeDepths.ts";
import type { BrakePlan } from "../../forming/brakePlan.ts";
import { MM_PER_INCH, type Units } from "../../geometry/units.ts";

/** The depth of a line in its table: its letter, and beside it what the line wants more or less: "D +0.14". */
export function depthCell(
  { depths }: Pick<BrakePlan, "depths">,
  line: BrakePlan["lines"][number],
  units: Units,
): string {
  const mm = besideLetterMm(depths, line);
  // As in the steps: a thousandth of an inch is too coarse for a degree.
  const told = units === "mm" ? Math.abs(mm).toFixed(2) : Math.abs(mm / MM_PER_INCH).toFixed(4);
  return Number(told) === 0 ? line.depth : `${line.depth} ${mm < 0 ? "−" : "+"}${told}`;
}

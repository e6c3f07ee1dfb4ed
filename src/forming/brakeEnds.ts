import type { FormingCase } from "./case.ts";

/** What the ends of a bend line are called on a work sheet. */
export interface BrakeEnds {
  /** Where the lines lie farthest apart: bending starts there, and what is bent is measured from there. */
  readonly from: string;
  /** Where they run together. */
  readonly towards: string;
}

/** Lines of a corner fan out from its tip to the round end; those of a cone run together towards its small end, or its point. */
export const brakeEnds = ({ tightestRadiusMm }: Pick<FormingCase, "tightestRadiusMm">): BrakeEnds =>
  tightestRadiusMm === null
    ? { from: "round end", towards: "rectangular end" }
    : { from: "large end", towards: tightestRadiusMm.small > 0 ? "small end" : "point" };

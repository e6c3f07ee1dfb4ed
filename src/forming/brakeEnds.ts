import type { FormingCase } from "./case.ts";

/** What the ends of a bend line are called on a work sheet. */
export interface BrakeEnds {
  /** Where the lines lie farthest apart: bending starts there, and what is bent is measured from there. */
  readonly from: string;
  /** Where they run together. */
  readonly towards: string;
  /** At which hand of whoever stands before the brake that lies while the side of seam edge 1 is behind the punch; else at the other. */
  readonly hand: "right" | "left";
}

/*
 * Inside up with end B away, seam edge 1 is at the right hand. With that turned away, end B comes to the left and end A to the
 * right. Corners have their tips at end A, cones their small end at end B.
 */

/** Lines of a corner fan out from its tip to the round end; those of a cone run together towards its small end, or its point. */
export const brakeEnds = ({ tightestRadiusMm }: Pick<FormingCase, "tightestRadiusMm">): BrakeEnds =>
  tightestRadiusMm === null
    ? { from: "round end", towards: "rectangular end", hand: "right" }
    : { from: "large end", towards: tightestRadiusMm.small > 0 ? "small end" : "point", hand: "left" };

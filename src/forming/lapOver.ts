import type { BrakePlan } from "./brakePlan.ts";
import type { FormingCase } from "./case.ts";

/** A bend that lies under the lap of a seam. */
export interface UnderLap {
  readonly piece: number;
  readonly line: number;
  /** Which end of it: that of end A or of end B. */
  readonly end: "a" | "b";
  /** How much of its length from there, about. [mm] */
  readonly lengthMm: number;
}

/**
 * Bend lines that begin nearer to seam edge 1 than the lap is wide: the plate beyond the seam, which is flat, lies over them
 * there. Distances are taken along the edge of the end, which at a seam stands nearly square to it.
 *
 * @see derived here
 */
export function underLap(
  { lines }: Pick<BrakePlan, "lines">,
  { seamLapMm = 0 }: Pick<FormingCase, "seamLapMm">,
): readonly UnderLap[] {
  return lines.flatMap(({ piece, number, alongMm, lengthMm }): UnderLap[] => {
    const end = alongMm.a < alongMm.b ? "a" : "b";
    const [near, far] = [Math.min(alongMm.a, alongMm.b), Math.max(alongMm.a, alongMm.b)];
    if (near >= seamLapMm) return [];
    const share = far > seamLapMm ? (seamLapMm - near) / (far - near) : 1;
    return [{ piece, line: number, end, lengthMm: share * lengthMm }];
  });
}

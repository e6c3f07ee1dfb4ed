import { TURN } from "../geometry/angle.ts";
import { bentSweepRad, leadTip } from "../geometry/straightLead.ts";
import { add2, direction, left2, otherLeg, scale2, type Vec2 } from "../geometry/vector.ts";
import type { Report } from "../report/report.ts";

export type ClosureRow = Report["forming"]["closure"][number];
/** One end in one row of the closure table. */
type End = NonNullable<ClosureRow["large"]>;

/** Points along a drawn wall, and along its straight lead, whose rim is a little round as the blank's is. */
const [WALL_STEPS, LEAD_STEPS] = [96, 12];

/** From nought to one. */
const shares = (count: number): number[] => Array.from({ length: count + 1 }, (_, i) => i / count);

/** What of a report says how an end is rolled. */
export type Rolled = Pick<Report, "part" | "blanks">;

/**
 * A face of a part-rolled end by its radius where it is bent, seen end on: from its seam edge on the bent part about the
 * origin, then the straight lead.
 */
export function rolledRim(
  { part, blanks }: Rolled,
  row: ClosureRow,
  { levelRadiusMm: levelMm, squareRadiusMm }: End,
) {
  const sweepRad = (TURN * row.closed) / blanks.length;
  const end = { levelMm, sine: otherLeg(1, levelMm / squareRadiusMm), sweepRad, leadMm: row.leadMm };
  const bentRad = bentSweepRad(end);
  const leadMm = (sweepRad - bentRad) * levelMm;
  // Half off each edge, or added to it, along the plate.
  const offMm = ((part.seam?.gap ?? 0) - (part.seam?.lap ?? 0)) / 2;
  /** Along the lead, from the element where the bend ends. */
  const straight = (radiusMm: number, mm: number): Vec2 => {
    const { alongMm, inMm } = leadTip(end, mm);
    const out = direction(bentRad);
    return add2(scale2(out, radiusMm - inMm), scale2(left2(out), alongMm - (mm === leadMm ? offMm : 0)));
  };
  const [fromRad, toRad] = [
    Math.max(0, offMm) / levelMm,
    bentRad - (leadMm > 0 ? 0 : Math.max(0, offMm) / levelMm),
  ];
  return (radiusMm: number): Vec2[] => [
    [radiusMm, offMm],
    ...shares(WALL_STEPS).map((of) => scale2(direction(fromRad + of * (toRad - fromRad)), radiusMm)),
    ...(leadMm > 0 ? shares(LEAD_STEPS).slice(1) : [0]).map((of) => straight(radiusMm, of * leadMm)),
  ];
}

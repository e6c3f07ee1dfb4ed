import type { RollAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge } from "./judge.ts";
import type { PlateRoll } from "./machine.ts";
import { isPipe } from "./skin.ts";

/** Does nobody say how near the drop end the stop comes? */
export const stopUnknown = ({ coneAttachment }: PlateRoll): boolean =>
  coneAttachment?.fitted !== false && coneAttachment?.range === undefined;

/** Longest slant of a cone that lies between the stop, set as near the drop end as it reaches, and the far end of the rolls. [mm] */
export function greatestSlantMm({ workingWidth, coneAttachment }: PlateRoll): number {
  return Math.max(0, workingWidth - Math.max(0, coneAttachment?.range?.[0] ?? 0));
}

/**
 * The blank lies between the stop, set as near the drop end as it reaches, and the far end of the rolls:
 * longest element ≤ working width − least reach of the stop. A pipe needs no stop. Where the reach is not known the
 * whole width is compared, and being within it is not yet enough. [mm]
 */
export function workingWidth({ item, roll, say }: RollAsked): Check {
  const needsStop = !isPipe(item);
  const unknown = needsStop && stopUnknown(roll);
  const limit = needsStop ? greatestSlantMm(roll) : roll.workingWidth;
  const stop = roll.workingWidth - limit;
  const slant = item.slantMm.longest;
  const courses = Math.max(2, Math.ceil(slant / Math.max(limit, roll.workingWidth / 2)));
  const advice = {
    pass: `The longest element, ${say.length(slant)}, lies within the ${say.length(limit)} that the rolls offer.`,
    caution: `Not known how near the drop end the stop comes: measure it, for the longest element, ${say.length(slant)}, leaves it ${say.length(limit - slant)} of the rolls.`,
    fail: `The longest element is ${say.length(slant - limit)} longer than the rolls offer${stop > 0 ? " past the stop" : ""}: make the part in ${courses} courses with a ring seam, or use a wider roll.`,
  };
  return judge({
    id: "working-width",
    title: "Slant against the working width",
    value: slant,
    limit,
    sense: "at most",
    unit: "mm",
    beyond: "fail",
    ...(unknown && { nearShare: 0 }),
    basis: DERIVED,
    rule: "longest element line ≤ working width, less what the stop cannot be brought towards the drop end",
    advice: (verdict) => advice[verdict],
  });
}

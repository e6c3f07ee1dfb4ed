import type { RollsFromAbove } from "../../drawing/forming/onRolls.ts";
import type { FormingPlan } from "../../forming/plan.ts";
import type { Shop } from "../../forming/machine.ts";
import { radians } from "../../geometry/angle.ts";
import { leadingEdge } from "../../forming/seamOrder.ts";
import type { Report } from "../../report/report.ts";
import { rollOf } from "./rollOf.ts";

const BY_ELEMENT =
  " Square by the groove its element lines would lie askew too long, or its corner in the yoke: so it lies by the element line at the pinch.";

/** The first blank on the rolls for both passes; nothing where the shop does not say at which hand the drop end is, and for a pipe, which goes in either way. */
export function fromAbove(report: Report, plan: FormingPlan, shop: Shop): RollsFromAbove | undefined {
  const roll = rollOf(plan, shop);
  const { settings } = plan;
  const [blank] = report.blanks;
  if (!roll?.dropEnd || settings?.stopMm == null || !blank || blank.lines.length < 2) return undefined;
  const { dropEnd } = roll;
  const other = dropEnd === "left" ? "right" : "left";
  const leads = leadingEdge(dropEnd);
  return {
    title: `${report.part.title} on ${roll.name}, seen from above`,
    passes: [
      { title: "First pass", blank, smallAt: dropEnd, leads },
      { title: "Second pass", blank, smallAt: other, leads: leads === 1 ? 2 : 1 },
    ],
    dropEnd,
    rollFaceMm: roll.workingWidth,
    stopMm: settings.stopMm,
    topRadiusMm: roll.rolls.topDiameter / 2,
    armMm: settings.flat.acrossMm,
    why: settings.lying?.by === "element" ? BY_ELEMENT : "",
    turnedRad: radians(settings.lying?.turnedDeg ?? 0),
  };
}

import type { MachineAnswer } from "./answer.ts";
import type { PartAsked } from "./asked.ts";
import type { Machine, PlateRoll, Shop } from "./machine.ts";
import type { FormingPlan } from "./plan.ts";
import { rollSettings } from "./rollSettings.ts";
import { rollBatch, rollSheet } from "./sheet/rollSheet.ts";

function rollPlan(part: PartAsked, roll: PlateRoll): FormingPlan {
  const answer = rollSettings({ ...part, roll });
  const settings = answer.kind === "settings" ? answer.settings : null;
  return {
    machine: roll.name,
    route: "roll",
    settings,
    noSettings: answer.kind === "none" ? answer.why : null,
    steps: rollSheet({ ...part, roll, settings }),
    batch: rollBatch(part),
  };
}

function planOf(part: PartAsked, machine: Machine): FormingPlan {
  return machine.kind === "plate roll"
    ? rollPlan(part, machine)
    : { machine: machine.name, route: "brake", settings: null, noSettings: null, steps: [], batch: [] };
}

/** Without a shop: the usual way, on a machine that nobody has described. */
function generalPlan(part: PartAsked): FormingPlan {
  const rolled = part.item.usualRoute === "roll";
  return {
    machine: null,
    route: part.item.usualRoute,
    settings: null,
    noSettings: rolled ? "no settings: no shop file was given" : null,
    steps: rolled ? rollSheet({ ...part, roll: null, settings: null }) : [],
    batch: rolled ? rollBatch(part) : [],
  };
}

/** A plan for every machine of the shop that takes the part, in the shop's order; without a shop one plan for the usual way. */
export function plansOf(
  part: PartAsked,
  shop: Shop | undefined,
  answers: readonly MachineAnswer[],
): FormingPlan[] {
  if (!shop || shop.machines.length === 0) return [generalPlan(part)];
  return shop.machines.flatMap((machine, i) =>
    answers[i] && answers[i].verdict !== "fail" ? [planOf(part, machine)] : [],
  );
}

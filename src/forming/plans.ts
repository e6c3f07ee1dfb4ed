import type { MachineAnswer } from "./answer.ts";
import type { PartAsked } from "./asked.ts";
import type { Machine, PlateRoll, Shop } from "./machine.ts";
import type { FormingPlan } from "./plan.ts";
import { rollSettings } from "./rollSettings.ts";

function rollPlan(part: PartAsked, roll: PlateRoll): FormingPlan {
  const answer = rollSettings({ ...part, roll });
  return {
    machine: roll.name,
    route: "roll",
    settings: answer.kind === "settings" ? answer.settings : null,
    noSettings: answer.kind === "none" ? answer.why : null,
  };
}

function planOf(part: PartAsked, machine: Machine): FormingPlan {
  return machine.kind === "plate roll"
    ? rollPlan(part, machine)
    : { machine: machine.name, route: "brake", settings: null, noSettings: null };
}

/** Without a shop: the usual way, on a machine that nobody has described. */
function generalPlan({ item }: PartAsked): FormingPlan {
  return {
    machine: null,
    route: item.usualRoute,
    settings: null,
    noSettings: item.usualRoute === "roll" ? "no settings: no shop file was given" : null,
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

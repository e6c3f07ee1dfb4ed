import type { MachineAnswer } from "./answer.ts";
import type { PartAsked } from "./asked.ts";
import { brakePlan } from "./brakePlan.ts";
import { handLiftOf } from "./handling.ts";
import type { PlateRoll, PressBrake, Shop } from "./machine.ts";
import type { FormingPlan } from "./plan.ts";
import { rollSettings } from "./rollSettings.ts";
import { brakeBatch, brakeSheet } from "./sheet/brakeSheet.ts";
import { rollBatch, rollSheet } from "./sheet/rollSheet.ts";
import { type TrialsKept, triedOn } from "./tried.ts";

function rollPlan(
  part: PartAsked,
  roll: PlateRoll,
  { shop, kept }: { shop: Shop; kept: TrialsKept | undefined },
): FormingPlan {
  const answer = rollSettings({ ...part, roll });
  const settings = answer.kind === "settings" ? answer.settings : null;
  const noSettings = answer.kind === "none" ? answer.why : null;
  return {
    machine: roll.name,
    route: "roll",
    settings,
    noSettings,
    brake: null,
    steps: rollSheet({
      ...part,
      roll,
      settings,
      noSettings,
      handLiftKg: handLiftOf(shop),
      tried: triedOn({ ...part, roll }, kept),
    }),
    batch: rollBatch(part),
  };
}

function bentPlan(
  part: PartAsked,
  brake: PressBrake | null,
  { answer, shop }: { answer: MachineAnswer | null; shop: Shop | undefined },
): FormingPlan {
  // The die that the checks were answered over.
  const dieMm = answer?.checks.find(({ id }) => id === "die-opening")?.value;
  const plan = brakePlan(part, {
    ...(typeof dieMm === "number" && { dieMm }),
    ...(brake && { brake }),
    ...(answer && { checks: answer.checks }),
  });
  return {
    machine: brake?.name ?? null,
    route: "brake",
    settings: null,
    noSettings: null,
    brake: plan,
    steps: plan ? brakeSheet({ ...part, handLiftKg: handLiftOf(shop) }, plan) : [],
    batch: plan ? brakeBatch(part) : [],
  };
}

const NO_SHOP = "no settings: no shop file was given";

/** Without a shop: the usual way, on a machine that nobody has described. */
function generalPlan(part: PartAsked): FormingPlan {
  if (part.item.usualRoute === "brake") return bentPlan(part, null, { answer: null, shop: undefined });
  return {
    machine: null,
    route: "roll",
    settings: null,
    noSettings: NO_SHOP,
    brake: null,
    steps: rollSheet({
      ...part,
      roll: null,
      settings: null,
      noSettings: NO_SHOP,
      handLiftKg: handLiftOf(undefined),
    }),
    batch: rollBatch(part),
  };
}

/** A plan for every machine of the shop that takes the part, in the shop's order; without a shop one plan for the usual way. */
export function plansOf(
  part: PartAsked,
  shop: Shop | undefined,
  { answers, kept }: { answers: readonly MachineAnswer[]; kept?: TrialsKept | undefined },
): FormingPlan[] {
  if (!shop || shop.machines.length === 0) return [generalPlan(part)];
  return shop.machines.flatMap((machine, i) => {
    const answer = answers[i];
    if (!answer || answer.verdict === "fail") return [];
    return [
      machine.kind === "plate roll"
        ? rollPlan(part, machine, { shop, kept })
        : bentPlan(part, machine, { answer, shop }),
    ];
  });
}

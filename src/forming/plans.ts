import type { MachineAnswer } from "./answer.ts";
import type { PartAsked } from "./asked.ts";
import { brakePlan } from "./brakePlan.ts";
import type { Machine, PlateRoll, PressBrake, Shop } from "./machine.ts";
import type { FormingPlan, MachinePlan, PlanSheet } from "./plan.ts";
import { rollSettings } from "./rollSettings.ts";

/** What the work sheet of a plan says; the words of all its steps weigh as much as all checks, and a verdict needs none of them. */
export type SheetOf = (
  part: PartAsked,
  plan: MachinePlan,
  on: { readonly machine: Machine | null; readonly shop: Shop | undefined },
) => PlanSheet;

/** Plans without a step: where nobody looks at a sheet yet. */
export const NO_SHEETS: SheetOf = () => ({ steps: [], batch: [] });

/** The checks of a machine that ask for care, by their titles. */
const careOf = (answer: MachineAnswer | null): string[] =>
  (answer?.checks ?? []).filter(({ verdict }) => verdict === "caution").map(({ title }) => title);

function rollPlan(part: PartAsked, roll: PlateRoll, answer: MachineAnswer): MachinePlan {
  const set = rollSettings({ ...part, roll });
  return {
    machine: roll.name,
    route: "roll",
    care: careOf(answer),
    settings: set.kind === "settings" ? set.settings : null,
    noSettings: set.kind === "none" ? set.why : null,
    brake: null,
  };
}

function bentPlan(part: PartAsked, brake: PressBrake | null, answer: MachineAnswer | null): MachinePlan {
  // The die that the checks were answered over.
  const dieMm = answer?.checks.find(({ id }) => id === "die-opening")?.value;
  return {
    machine: brake?.name ?? null,
    route: "brake",
    care: careOf(answer),
    settings: null,
    noSettings: null,
    brake: brakePlan(part, {
      ...(typeof dieMm === "number" && { dieMm }),
      ...(brake && { brake }),
      ...(answer && { checks: answer.checks }),
    }),
  };
}

const NO_SHOP = "no settings: no shop file was given";
const NO_MACHINE = "no settings: the shop has no machine";

/** Without a machine: the usual way, on one that nobody has described. */
const generalPlan = (part: PartAsked, noSettings: string): MachinePlan =>
  part.item.usualRoute === "brake"
    ? bentPlan(part, null, null)
    : { machine: null, route: "roll", care: [], settings: null, noSettings, brake: null };

/** A plan for every machine of the shop that takes the part, in the shop's order; without a shop one plan for the usual way. */
export function plansOf(
  part: PartAsked,
  shop: Shop | undefined,
  { answers, sheetOf }: { readonly answers: readonly MachineAnswer[]; readonly sheetOf: SheetOf },
): FormingPlan[] {
  const whole = (plan: MachinePlan, machine: Machine | null): FormingPlan => ({
    ...plan,
    ...sheetOf(part, plan, { machine, shop: machine ? shop : undefined }),
  });
  if (!shop) return [whole(generalPlan(part, NO_SHOP), null)];
  if (shop.machines.length === 0) return [whole(generalPlan(part, NO_MACHINE), null)];
  return shop.machines.flatMap((machine, i) => {
    const answer = answers[i];
    if (!answer || answer.verdict === "fail") return [];
    const plan =
      machine.kind === "plate roll" ? rollPlan(part, machine, answer) : bentPlan(part, machine, answer);
    return [whole(plan, machine)];
  });
}

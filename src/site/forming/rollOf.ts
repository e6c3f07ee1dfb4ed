import type { PlateRoll, Shop } from "../../forming/machine.ts";
import type { FormingPlan } from "../../forming/plan.ts";

/** The plate roll of the shop that a plan is for; nothing where it is for another machine. */
export const rollOf = ({ machine }: Pick<FormingPlan, "machine">, shop: Shop): PlateRoll | undefined =>
  shop.machines.find((one): one is PlateRoll => one.kind === "plate roll" && one.name === machine);

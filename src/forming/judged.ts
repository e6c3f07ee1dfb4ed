import type { Forming, MachineAnswer } from "./answer.ts";
import { ask, type PartAsked } from "./asked.ts";
import type { FormingCase } from "./case.ts";
import { certificate } from "./certificate.ts";
import { worst } from "./check.ts";
import { chosen, nearestMiss, routeOf } from "./choose.ts";
import { closureTable } from "./closure.ts";
import { evennessOf } from "./evenness.ts";
import { handling } from "./handling.ts";
import { inspectionOf } from "./inspection.ts";
import type { Machine, Shop } from "./machine.ts";
import { brakeChecks, rollChecks, WITHOUT_MACHINE } from "./machineChecks.ts";
import { plansOf, type SheetOf } from "./plans.ts";
import { sayIn } from "./say.ts";
import { springbackOf } from "./springbackAnswer.ts";
import { stockPlate } from "./stockPlate.ts";
import { straightLeadMm } from "./rollSettings.ts";
import { weldGap } from "./weldGap.ts";
import { strain } from "./strain.ts";

function answerOf(part: PartAsked, machine: Machine): MachineAnswer {
  const checks = machine.kind === "plate roll" ? rollChecks(part, machine) : brakeChecks(part, machine);
  return {
    machine: machine.name,
    kind: machine.kind,
    verdict: worst(checks.map((check) => check.verdict)),
    checks,
  };
}

/** What the first pass on the machine that is told of leaves straight; nought where that is not known. [mm] */
function leadOn({ item, say }: PartAsked, shop: Shop | undefined, shown: MachineAnswer | null): number {
  const roll = shop?.machines.find(({ name }) => name === shown?.machine);
  return item.cone && roll?.kind === "plate roll" ? straightLeadMm({ item, roll, say }) : 0;
}

/**
 * Can it be formed, how, and on which machine, with the sheets of its plans as somebody wants them? Without a shop only what the part itself asks, by its usual route.
 * The machines' manuals and the code in force stand above every answer.
 */
export function judgedOf(item: FormingCase, shop: Shop | undefined, sheetOf: SheetOf): Forming {
  const part = { item, say: sayIn(item.units ?? shop?.units ?? "mm", shop?.units) };
  const machines = (shop?.machines ?? []).map((machine) => answerOf(part, machine));
  const choice = chosen(machines, item.usualRoute);
  const shown = choice ?? nearestMiss(machines, item.usualRoute);
  const own = ask([strain, handling, stockPlate, certificate, weldGap], { ...part, shop });
  const usual = ask(WITHOUT_MACHINE[item.usualRoute], part);
  const checks = [...own, ...(shown ? shown.checks : usual)];
  const ownVerdict = worst(own.map((check) => check.verdict));
  return {
    route: shown ? routeOf(shown) : item.usualRoute,
    machine: choice?.machine ?? null,
    verdict: worst(checks.map((check) => check.verdict)),
    checks,
    // One word for a part on a machine, wherever it stands: which machine takes it is chosen without the part's own checks.
    machines: machines.map((one) => ({ ...one, verdict: worst([ownVerdict, one.verdict]) })),
    closure: closureTable(item, leadOn(part, shop, shown)),
    springback: springbackOf(item),
    plans: plansOf(part, shop, { answers: machines, sheetOf }),
    evenness: evennessOf(item),
    inspection: inspectionOf(item),
  };
}

import type { Forming } from "./answer.ts";
import { worst } from "./check.ts";
import { routeOf } from "./choose.ts";

/**
 * The same part asked of one machine in particular: that machine's checks and verdict in the place of the first choice's,
 * its plan the one that counts. A machine that does not take the part changes nothing: there is no plan for it.
 * @param machine its name in the shop file
 */
export function onMachine(forming: Forming, machine: string): Forming {
  const answer = forming.machines.find((one) => one.machine === machine);
  const first = forming.machines.find((one) => one.machine === forming.machine);
  if (!answer || !first || answer === first || !forming.plans.some((plan) => plan.machine === machine))
    return forming;
  const own = forming.checks.slice(0, forming.checks.length - first.checks.length);
  const checks = [...own, ...answer.checks];
  return {
    ...forming,
    machine,
    route: routeOf(answer),
    verdict: worst(checks.map(({ verdict }) => verdict)),
    checks,
  };
}

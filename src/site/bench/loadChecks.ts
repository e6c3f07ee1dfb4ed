import type { Report } from "../../report/report.ts";
import { chosenPlan } from "../forming/plan.ts";
import type { TableAnswers } from "../words/asked/answers.ts";
import type { Bench } from "./bench.svelte.ts";

/** How the checks of a part were answered: the words come when somebody asks, and are those of the part as it stands then. */
export async function loadChecks(bench: Bench, reportNow: () => Report): Promise<() => TableAnswers> {
  const [{ askedChecks }, { formingCase }] = await Promise.all([
    import("../words/asked/checks.ts"),
    import("../../report/formingCase.ts"),
  ]);
  return () => {
    const report = reportNow();
    const { forming, part } = report;
    return bench.laidOut
      ? askedChecks({
          checks: forming.checks,
          item: formingCase(part, bench.laidOut),
          machine: bench.shop.now?.machines.find(({ name }) => name === forming.machine),
          brake: chosenPlan(report)?.brake,
          shopUnits: bench.shop.now?.units,
        })
      : new Map<never, never>();
  };
}

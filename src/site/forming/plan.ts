import type { Snippet } from "svelte";
import type { FormingPlan } from "../../forming/plan.ts";
import type { Report } from "../../report/report.ts";

/** The plan of the machine that the part is made on; without a shop that of the usual way; none where no machine takes it. */
export function chosenPlan({ forming }: Report): FormingPlan | undefined {
  return forming.plans.find(({ machine }) => machine === forming.machine);
}

/** The steps that belong under a heading of the part's page; none where there is no plan. */
export function stepsUnder(report: Report, phases: readonly Step["phase"][]): Phase[] {
  const plan = chosenPlan(report);
  return plan ? phasesOf(plan).filter(({ name }) => phases.includes(name)) : [];
}

type Step = FormingPlan["steps"][number];

/** Draws something of a step. */
export type StepSnippet = Snippet<[step: Step]>;

/** Steps of one part of the work. */
export interface Phase {
  readonly name: Step["phase"];
  readonly steps: readonly Step[];
}

export function phasesOf({ steps }: Pick<FormingPlan, "steps">): Phase[] {
  const names = [...new Set(steps.map(({ phase }) => phase))];
  return names.map((name) => ({ name, steps: steps.filter(({ phase }) => phase === name) }));
}

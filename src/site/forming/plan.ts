import type { FormingPlan } from "../../forming/plan.ts";
import type { Report } from "../../report/report.ts";

/** The plan of the machine that the part is made on; without a shop that of the usual way; none where no machine takes it. */
export function chosenPlan({ forming }: Report): FormingPlan | undefined {
  return forming.plans.find(({ machine }) => machine === forming.machine);
}

/** Steps of one part of the work. */
export interface Phase {
  readonly name: string;
  readonly steps: readonly FormingPlan["steps"][number][];
}

function phasesOf({ steps }: FormingPlan): Phase[] {
  const names = [...new Set(steps.map(({ phase }) => phase))];
  return names.map((name) => ({ name, steps: steps.filter(({ phase }) => phase === name) }));
}

/** What stands on each sheet: all up to the end of the first pass, then the rest; the brake's steps together. */
export function passesOf(plan: FormingPlan): Phase[][] {
  const phases = phasesOf(plan);
  const first = phases.findIndex(({ name }) => name === "first pass") + 1;
  return [phases.slice(0, first), phases.slice(first)].filter((part) => part.length > 0);
}

/** What steps and their figures rest on, each once. */
export const basesOf = (phases: readonly Phase[]): string[] => [
  ...new Set(
    phases.flatMap(({ steps }) =>
      steps.flatMap(({ basis, figures }) => [basis, ...figures.map((one) => one.basis)]),
    ),
  ),
];

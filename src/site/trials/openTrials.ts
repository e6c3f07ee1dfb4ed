import type { AnyTold } from "../../forming/settleTrials.ts";
import type { Tables } from "../../input/context.ts";
import { printProblems } from "../../input/problem.ts";
import { readTrials, seenOf } from "../../input/readTrials.ts";

/** A file of trials names no material and no gauge. */
const NO_TABLES = { catalogue: { materials: {} }, gauges: {} } as unknown as Tables;

/** The trials of a file of this roll, or what is wrong with it. */
export function openTrials(text: string, path: string, machine: string): readonly AnyTold[] | string {
  const { value, problems } = readTrials(text, { path, ...NO_TABLES });
  if (!value) return printProblems(problems).join(" ");
  if (value.machine !== machine)
    return `${path} is about ${value.machine}: trials on one machine say nothing about ${machine}.`;
  return value.trials.map(seenOf);
}

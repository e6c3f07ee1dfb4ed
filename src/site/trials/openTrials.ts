import type { AnyTold } from "../../forming/settleTrials.ts";
import type { Tables } from "../../input/context.ts";
import { printProblems } from "../../input/problem.ts";
import { noText } from "../../input/readFiles.ts";
import { readTrials, seenOf } from "../../input/readTrials.ts";
import { decode } from "../../input/text.ts";

/** A file of trials names no material and no gauge. */
const NO_TABLES = { catalogue: { materials: {} }, gauges: {} } as unknown as Tables;

/** The trials of a file of this roll, or what is wrong with it. */
export function openTrials(bytes: Uint8Array, path: string, machine: string): readonly AnyTold[] | string {
  const text = decode(bytes);
  const { value, problems } =
    text.kind === "read"
      ? readTrials(text.value, { path, ...NO_TABLES })
      : noText(path, text.problem, text.remedy);
  if (!value) return printProblems(problems).join(" ");
  if (value.machine !== machine)
    return `${path} is about ${value.machine}: trials on one machine say nothing about ${machine}.`;
  return value.trials.map(seenOf);
}

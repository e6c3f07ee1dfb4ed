import { type AnySeen, impossibleAny } from "../../forming/anyTrials.ts";
import { sayIn } from "../../forming/say.ts";
import type { RollAsked } from "../../forming/asked.ts";
import { keptIn, trialsKey } from "./keptTrials.ts";
import type { TrialAsked } from "./trialForm.ts";

/** What this browser kept of a part's trials on a roll; undefined where it kept nothing, or may not be asked. */
export function keptHere(part: string, machine: string): readonly AnySeen[] | undefined {
  try {
    return keptIn(localStorage.getItem(trialsKey(part, machine)));
  } catch {
    return undefined;
  }
}

export const questionOf = ({ item, roll, units }: TrialAsked): RollAsked => ({
  item,
  roll,
  say: sayIn(units),
});

/** A slip that was kept or written in a file would stop every answer: it is left out. */
export const possible = (question: RollAsked, all: readonly AnySeen[]): readonly AnySeen[] =>
  all.filter((one) => impossibleAny(question, one) === null);

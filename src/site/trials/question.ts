import { impossibleAny } from "../../forming/impossibleAny.ts";
import type { AnyTold } from "../../forming/settleTrials.ts";
import { sayIn } from "../../forming/say.ts";
import type { RollAsked } from "../../forming/asked.ts";
import type { TrialAsked } from "./trialForm.ts";

export const questionOf = ({ item, roll, units }: TrialAsked): RollAsked => ({
  item,
  roll,
  say: sayIn(units),
});

/** A slip that was kept or written in a file would stop every answer: it is left out. */
export const possible = (question: RollAsked, all: readonly AnyTold[]): readonly AnyTold[] =>
  all.filter((one) => impossibleAny(question, one) === null);

/** Why the first of these that cannot have been is left out: " 2 left out, …"; nothing where none is. */
export function leftOut(question: RollAsked, all: readonly AnyTold[]): string {
  const why = all.flatMap((one) => impossibleAny(question, one) ?? []);
  return why.length === 0
    ? ""
    : ` ${why.length} left out, because that cannot have been this part: ${why[0] ?? ""}.`;
}

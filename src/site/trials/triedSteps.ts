import { type AnyTold, settleTrials } from "../../forming/settleTrials.ts";
import type { RollAsked } from "../../forming/asked.ts";
import { handLiftOf } from "../../forming/handling.ts";
import { rollSettings } from "../../forming/rollSettings.ts";
import { rollSheet } from "../../forming/sheet/rollSheet.ts";
import { triedOn } from "../../forming/tried.ts";

/** The steps of the sheet that trials have a say in. */
const BY_TRIALS: ReadonlySet<string> = new Set(["first-raise", "first-correct", "second-raise", "close"]);

type Sheet = ReturnType<typeof rollSheet>;

/** A roll's steps as they are after these trials, and those of them that trials change; undefined where the roll cannot be set. */
export function triedSteps(
  asked: RollAsked,
  seen: readonly AnyTold[],
): { readonly steps: Sheet; readonly changed: Sheet } | undefined {
  const answer = rollSettings(asked);
  if (answer.kind === "none") return undefined;
  const steps = rollSheet({
    ...asked,
    settings: answer.settings,
    noSettings: null,
    // Cautions of lifting stay as they are printed.
    handLiftKg: handLiftOf(undefined),
    tried: triedOn(asked, { machine: asked.roll.name, seen, settle: settleTrials }),
  });
  return { steps, changed: steps.filter(({ id }) => BY_TRIALS.has(id)) };
}

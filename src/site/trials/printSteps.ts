import type { RollAsked } from "../../forming/asked.ts";
import { handLiftOf } from "../../forming/handling.ts";
import { rollSettings } from "../../forming/rollSettings.ts";
import { rollSheet } from "../../forming/sheet/rollSheet.ts";
import { triedOn } from "../../forming/tried.ts";
import type { TrialSeen } from "../../forming/trialSeen.ts";
import { joined } from "../forming/joined.ts";

/** The steps of the sheet that trials have a say in. */
const BY_TRIALS: ReadonlySet<string> = new Set(["first-raise", "second-raise"]);

/** Has the printed card start from the trials that stand in the form, as if they were kept beside the part. */
export function printSteps(asked: RollAsked, seen: readonly TrialSeen[]): void {
  const answer = rollSettings(asked);
  if (answer.kind === "none") return;
  const tried = triedOn(asked, { machine: asked.roll.name, seen });
  const steps = rollSheet({
    ...asked,
    settings: answer.settings,
    noSettings: null,
    // Those steps lift nothing.
    handLiftKg: handLiftOf(undefined),
    tried,
  });
  for (const { id, brief, toNote } of steps.filter((step) => BY_TRIALS.has(step.id))) {
    const words = document.querySelector(`[data-brief="${id}"]`);
    if (words) words.textContent = joined(brief);
    toNote.forEach(({ planned }, i) => {
      const box = document.querySelector(`[data-planned="${id} ${i}"]`);
      if (box && planned !== undefined) box.textContent = joined(asked.say.length(planned));
    });
  }
}

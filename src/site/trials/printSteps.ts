import type { RollAsked } from "../../forming/asked.ts";
import { handLiftOf } from "../../forming/handling.ts";
import { rollSettings } from "../../forming/rollSettings.ts";
import { rollSheet } from "../../forming/sheet/rollSheet.ts";
import { triedOn } from "../../forming/tried.ts";
import type { TrialSeen } from "../../forming/trialSeen.ts";
import { footnotes, marked } from "../forming/footnotes.ts";
import { joined } from "../forming/joined.ts";
import { addedWords, plannedWords } from "../forming/planned.ts";

/** The steps of the sheet that trials have a say in. */
const BY_TRIALS: ReadonlySet<string> = new Set(["first-raise", "second-raise"]);

function raised(text: string): HTMLElement {
  const made = document.createElement("sup");
  made.textContent = text;
  return made;
}

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
  const { units } = asked.say;
  const notes = footnotes({ steps });
  for (const step of steps.filter((one) => BY_TRIALS.has(one.id))) {
    const { id, toNote } = step;
    const words = document.querySelector(`[data-brief="${id}"]`);
    const pieces = marked(step, units, notes).flatMap(({ text, mark }) =>
      mark === null ? [joined(text)] : [joined(text), raised(mark)],
    );
    words?.replaceChildren(...pieces);
    toNote.forEach(({ planned, unit, onto }, i) => {
      const box = document.querySelector(`[data-planned="${id} ${i}"]`);
      if (box && planned !== undefined) box.textContent = joined((onto ? addedWords : plannedWords)(planned, unit, units));
    });
  }
}

import type { RollAsked } from "../../forming/asked.ts";
import { handLiftOf } from "../../forming/handling.ts";
import { rollSettings } from "../../forming/rollSettings.ts";
import { rollSheet } from "../../forming/sheet/rollSheet.ts";
import { triedOn } from "../../forming/tried.ts";
import type { AnySeen } from "../../forming/anyTrials.ts";
import type { Units } from "../../drawing/format.ts";
import type { NoteBox } from "../../forming/sheet/step.ts";
import { joined } from "../forming/joined.ts";
import { boxName, isWide, openBox, plannedWords } from "../forming/planned.ts";

/** The steps of the sheet that trials have a say in. */
const BY_TRIALS: ReadonlySet<string> = new Set(["first-raise", "second-raise"]);

/** Has the printed card start from the trials that stand in the form, as if they were kept beside the part. */
export function printSteps(asked: RollAsked, seen: readonly AnySeen[]): void {
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
    showBoxes(id, toNote, asked.item.units ?? "mm");
  }
}

/** The lines to write on: in zones there may be more of them than were printed without trials. */
function showBoxes(id: string, boxes: readonly NoteBox[], units: Units): void {
  const list = document.querySelector(`[data-boxes="${id}"]`);
  const [first] = list?.children ?? [];
  if (!list || !first) return;
  const rows = boxes.map(({ label, unit, planned }, i) => {
    // A copy keeps what the styles know it by.
    const row = first.cloneNode();
    if (planned === undefined) row.textContent = openBox(label, unit, units);
    else {
      const [words, number] = [document.createElement("span"), document.createElement("strong")];
      number.dataset["planned"] = `${id} ${i}`;
      number.textContent = joined(plannedWords(planned, unit, units));
      words.append(`${boxName(label)}: `, number);
      row.appendChild(words);
    }
    return row;
  });
  list.replaceChildren(...rows);
  list.closest("li")?.classList.toggle("zones", isWide(id, boxes.length));
}

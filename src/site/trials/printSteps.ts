import type { RollAsked } from "../../forming/asked.ts";
import { handLiftOf } from "../../forming/handling.ts";
import { rollSettings } from "../../forming/rollSettings.ts";
import { rollSheet } from "../../forming/sheet/rollSheet.ts";
import { triedOn } from "../../forming/tried.ts";
import type { AnySeen } from "../../forming/anyTrials.ts";
import type { Units } from "../../drawing/format.ts";
import type { NoteBox } from "../../forming/sheet/step.ts";
import { footnotes, marked } from "../forming/footnotes.ts";
import { joined } from "../forming/joined.ts";
import { addedWords, boxName, gridOf, openBox, plannedWords } from "../forming/planned.ts";

/** The steps of the sheet that trials have a say in. */
const BY_TRIALS: ReadonlySet<string> = new Set(["first-raise", "second-raise"]);

function raised(text: string): HTMLElement {
  const made = document.createElement("sup");
  made.textContent = text;
  return made;
}

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
  const { units } = asked.say;
  const notes = footnotes({ steps });
  for (const step of steps.filter((one) => BY_TRIALS.has(one.id))) {
    const { id, toNote } = step;
    const words = document.querySelector(`[data-brief="${id}"]`);
    const pieces = marked(step, units, notes).flatMap(({ text, mark }) =>
      mark === null ? [joined(text)] : [joined(text), raised(mark)],
    );
    words?.replaceChildren(...pieces);
    showBoxes(id, toNote, units);
  }
}

/** The lines to write on: in zones there may be more of them than were printed without trials. */
function showBoxes(id: string, boxes: readonly NoteBox[], units: Units): void {
  const list = document.querySelector(`[data-boxes="${id}"]`);
  const [first] = list?.children ?? [];
  if (!list || !first) return;
  const made = (name: string, ...inside: (string | Node)[]) => {
    const one = document.createElement(name);
    one.append(...inside);
    return one;
  };
  const rows = boxes.map(({ label, unit, planned, onto }, i) => {
    // A copy keeps what the styles know it by.
    const row = first.cloneNode() as Element;
    const sum = planned !== undefined && onto !== undefined;
    row.classList.toggle("sum", sum);
    if (planned === undefined) {
      row.append(openBox(label, unit, units));
      return row;
    }
    const number = made("strong", joined((sum ? addedWords : plannedWords)(planned, unit, units)));
    number.dataset["planned"] = `${id} ${i}`;
    if (sum) row.append(made("span", `${boxName(label)}: at 0`), made("i"), made("span", number, " ="));
    else row.append(made("span", `${boxName(label)}: `, number));
    return row;
  });
  list.replaceChildren(...rows);
  const grid = gridOf({ id, toNote: boxes });
  for (const one of ["sums", "zone-sums", "wide"]) list.closest("li")?.classList.toggle(one, one === grid);
}

import type { FormingCase } from "../../forming/case.ts";
import type { PlateRoll } from "../../forming/machine.ts";
import { isPipe } from "../../forming/skin.ts";
import { impossibleAny } from "../../forming/impossibleAny.ts";
import { correctTold, type ToldAnswer } from "../../forming/correctTold.ts";
import { type AnyTold, settleTrials } from "../../forming/settleTrials.ts";
import type { Units } from "../../drawing/format.ts";
import { comeTo } from "./bearingFields.ts";
import { find } from "./find.ts";
import { leftOut, possible, questionOf } from "./question.ts";
import { isSoundIn, keptIn, trialsKey, trialsYaml } from "./keptTrials.ts";
import { findRoot } from "./root.ts";
import { CHANGED_ELSEWHERE, keepText, keepUnread, whenOthersChange, without } from "./shared.ts";
import { trialWords } from "./trialWords.ts";
import { wholeFields } from "./wholeFields.ts";
import { zoneFields } from "./zoneFields.ts";
import { placesOf, showPlaces } from "./places.ts";
import { printSteps } from "./printSteps.ts";
import { raiseField } from "./raiseField.ts";

/** What the page hands to its form. */
export interface TrialAsked {
  readonly part: string;
  readonly units: Units;
  readonly item: FormingCase;
  readonly roll: PlateRoll;
  /** In how many zones it is rolled, each with a setting of its own. */
  readonly zones: number;
  /** From the file next to the part's own. */
  readonly trials: readonly AnyTold[];
}

/** What is to be done, a line for each zone. */
function answerLines(next: ToldAnswer | null): readonly string[] {
  if (next === null) return ["No trial yet: the sheet’s own start comes first."];
  switch (next.kind) {
    case "none":
      return [`No next setting: ${next.why}.`];
    case "correction":
      return next.correction.lines;
    case "zones":
      return [next.correction.taught, ...next.correction.zones.flatMap(({ lines }) => lines)].filter(Boolean);
  }
}

/** Brings one form to life: what is typed, what is kept in this browser, and the next setting. */
function startTrialForm(root: HTMLElement): void {
  const asked = JSON.parse(root.dataset["asked"] ?? "") as TrialAsked;
  const { item, roll, units, zones } = asked;
  const key = trialsKey(asked.part, roll.name);
  const form = find(root, "form", HTMLFormElement);
  const list = find(root, "list", HTMLOListElement);
  const answer = find(root, "answer", HTMLParagraphElement);
  const message = find(root, "message", HTMLParagraphElement);
  const file = find(root, "open", HTMLInputElement);
  const places = find(root, "places", HTMLTableElement);
  const question = questionOf(asked);
  const zone = root.querySelector<HTMLSelectElement>('[data-trial="zone"]');
  const raise = raiseField(root, units, {
    part: asked.part,
    machine: roll.name,
    comes: (set) => comeTo(question, set, Number(zone?.value ?? 1)),
  });
  const fields = item.cone ? wholeFields(root, units, raise) : zoneFields(root, units, raise);
  let trials: readonly AnyTold[] = possible(question, asked.trials);
  /** What does not fit, or may not be kept, stays on this page alone. */
  let kept = true;
  /** The trials as they lie at this moment: another window may have added some. */
  const latest = (): readonly AnyTold[] => {
    try {
      return kept ? possible(question, keptIn(localStorage.getItem(key)) ?? asked.trials) : trials;
    } catch {
      return trials;
    }
  };
  try {
    const text = localStorage.getItem(key);
    const sound = keptIn(text);
    const good = possible(question, sound ?? []);
    const isSound = isSoundIn(text) && good.length === (sound?.length ?? 0);
    keepUnread(root, { key, part: asked.part, isSound });
    trials = good;
    if (sound && !isSound) keepText(key, JSON.stringify(good));
    trials = latest();
  } catch {
    kept = false;
  }

  const tell = (text: string): void => {
    message.textContent = text;
  };
  const show = () => {
    const settled = settleTrials(question, trials);
    const told = settled.kind === "settled" ? settled.seen : trials;
    list.replaceChildren(
      ...told.map((trial, i) => {
        const remove = document.createElement("button");
        remove.type = "button";
        remove.textContent = "remove";
        remove.setAttribute("aria-label", `remove trial ${i + 1}`);
        remove.addEventListener("click", () => keep(without(latest(), trials, i)));
        const row = document.createElement("li");
        row.append(trialWords(trial, { units, zones: zones > 1 }), remove);
        return row;
      }),
    );
    const next = trials.length > 0 ? correctTold(question, trials) : null;
    answer.replaceChildren(
      ...answerLines(next).map((text) => {
        const line = document.createElement("span");
        line.textContent = text;
        return line;
      }),
    );
    showPlaces(places, placesOf(next?.kind === "none" ? null : next, isPipe(item)), units);
    printSteps(question, trials);
  };
  const keep = (now: readonly AnyTold[]) => {
    const settled = settleTrials(question, now);
    // Worked out: whatever else starts from them need not.
    trials = settled.kind === "settled" ? settled.seen : now;
    try {
      keepText(key, JSON.stringify(trials));
      kept = true;
    } catch {
      kept = false;
    }
    if (!kept) tell("This browser keeps nothing: save the file before you leave the page.");
    show();
  };
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const trial = fields.read();
    if (typeof trial === "string") {
      tell(trial);
      return;
    }
    const why = impossibleAny(question, trial);
    if (why !== null) {
      tell(`That cannot have been, and is not kept: ${why}.`);
      return;
    }
    tell("");
    fields.clear();
    keep([...latest(), trial]);
  });
  whenOthersChange(key, () => {
    trials = latest();
    tell(CHANGED_ELSEWHERE);
    show();
  });
  find(root, "save", HTMLButtonElement).addEventListener("click", () => {
    if (trials.length === 0) {
      tell("There is no trial yet to save.");
      return;
    }
    const link = document.createElement("a");
    const text = trialsYaml(trials, { units, machine: roll.name });
    link.href = URL.createObjectURL(new Blob([text], { type: "application/yaml" }));
    link.download = `${asked.part}.trials.yaml`;
    link.click();
    URL.revokeObjectURL(link.href);
  });
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    if (!chosen) return;
    // The reader of YAML is asked for only where a file is opened: it is most of the weight.
    void Promise.all([chosen.arrayBuffer(), import("./openTrials.ts")]).then(([bytes, { openTrials }]) => {
      const opened = openTrials(new Uint8Array(bytes), chosen.name, roll.name);
      if (typeof opened === "string") {
        tell(opened);
        return;
      }
      const good = possible(question, opened);
      tell(`${good.length} trials read from ${chosen.name}.${leftOut(question, opened)}`);
      keep(good);
    });
    file.value = "";
  });
  root.hidden = false;
  show();
}

findRoot();
for (const root of document.querySelectorAll<HTMLElement>("[data-trial-form]")) startTrialForm(root);

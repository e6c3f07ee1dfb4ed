import type { FormingCase } from "../../forming/case.ts";
import type { PlateRoll } from "../../forming/machine.ts";
import { sayIn } from "../../forming/say.ts";
import { correctTrials, impossibleTrial } from "../../forming/trials.ts";
import { MOST_TOLD, type TrialSeen } from "../../forming/trialSeen.ts";
import { MM_PER_INCH, type Units } from "../../drawing/format.ts";
import { keptIn, trialsYaml, typed } from "./keptTrials.ts";

/** What the page hands to its form. */
export interface TrialAsked {
  readonly part: string;
  readonly units: Units;
  readonly item: FormingCase;
  readonly roll: PlateRoll;
  /** From the file next to the part's own. */
  readonly trials: readonly TrialSeen[];
}

const PER_CENT = 100;
/** Steeper than any slide, wider than any gap: a slip of the keys. [mm] */
const LARGEST_MM = 100_000;

const find = <T extends Element>(root: Element, name: string, kind: new () => T): T => {
  const found = root.querySelector(`[data-trial="${name}"]`);
  if (!(found instanceof kind)) throw new RangeError(`trial form: ${name}`);
  return found;
};

/** A number as it is typed, decimal comma allowed; undefined where it is none that can be meant. */
function numberIn(text: string, most: number): number | undefined {
  const value = Number(text.trim().replace(",", "."));
  return text.trim() !== "" && Number.isFinite(value) && value >= 0 && value <= most ? value : undefined;
}

/** Brings one form to life: what is typed, what is kept in this browser, and the next setting. */
function startTrialForm(root: HTMLElement): void {
  const asked = JSON.parse(root.dataset["asked"] ?? "") as TrialAsked;
  const { item, roll, units } = asked;
  const perUnit = units === "mm" ? 1 : MM_PER_INCH;
  const key = `slantwork trials ${JSON.stringify([asked.part, roll.name])}`;
  const form = find(root, "form", HTMLFormElement);
  const setting = find(root, "setting", HTMLInputElement);
  const kind = find(root, "kind", HTMLSelectElement);
  const outcome = find(root, "outcome", HTMLInputElement);
  const list = find(root, "list", HTMLOListElement);
  const answer = find(root, "answer", HTMLParagraphElement);
  const message = find(root, "message", HTMLParagraphElement);
  const file = find(root, "open", HTMLInputElement);
  let trials: readonly TrialSeen[] = asked.trials;
  let kept = true;
  try {
    trials = keptIn(localStorage.getItem(key)) ?? trials;
  } catch {
    kept = false;
  }

  const tell = (text: string): void => {
    message.textContent = text;
  };
  const words = (trial: TrialSeen): string => {
    const came =
      "gapMm" in trial
        ? `gap ${typed(trial.gapMm, units)} ${units}`
        : "closed" in trial
          ? `${Math.round(PER_CENT * trial.closed)} % closed`
          : "sprang back flat";
    return `set ${typed(trial.settingMm, units)} ${units}: ${came} `;
  };
  const show = () => {
    list.replaceChildren(
      ...trials.map((trial, i) => {
        const remove = document.createElement("button");
        remove.type = "button";
        remove.textContent = "remove";
        remove.setAttribute("aria-label", `remove trial ${i + 1}`);
        remove.addEventListener("click", () => keep(trials.filter((_, j) => j !== i)));
        const row = document.createElement("li");
        row.append(words(trial), remove);
        return row;
      }),
    );
    const next = trials.length > 0 ? correctTrials({ item, roll, say: sayIn(units) }, trials) : null;
    answer.textContent =
      next === null
        ? "No trial yet: the sheet’s own start comes first."
        : next.kind === "none"
          ? `No next setting: ${next.why}.`
          : next.correction.advice;
  };
  const keep = (now: readonly TrialSeen[]) => {
    trials = now;
    try {
      localStorage.setItem(key, JSON.stringify(now));
    } catch {
      kept = false;
    }
    if (!kept) tell("This browser keeps nothing: save the file before you leave the page.");
    show();
  };
  const read = (): TrialSeen | string => {
    const at = numberIn(setting.value, LARGEST_MM);
    if (at === undefined || at === 0)
      return `Write the raise at the large edge as a number of ${units}, above 0.`;
    if (kind.value === "flat") return { settingMm: at * perUnit, flat: true };
    const out = numberIn(outcome.value, kind.value === "closed" ? PER_CENT : LARGEST_MM);
    if (out === undefined)
      return kind.value === "closed"
        ? "Write how far it closed as 0 to 100 per cent of the turn."
        : `Write the gap as a number of ${units}, 0 or more.`;
    return kind.value === "closed"
      ? { settingMm: at * perUnit, closed: out / PER_CENT }
      : { settingMm: at * perUnit, gapMm: out * perUnit };
  };

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const trial = read();
    if (typeof trial === "string") {
      tell(trial);
      return;
    }
    tell("");
    outcome.value = "";
    keep([...trials, trial]);
  });
  kind.addEventListener("change", () => (outcome.disabled = kind.value === "flat"));
  find(root, "save", HTMLButtonElement).addEventListener("click", () => {
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
    void Promise.all([chosen.text(), import("./openTrials.ts")]).then(([text, { openTrials }]) => {
      const opened = openTrials(text, chosen.name, roll.name);
      if (typeof opened === "string") {
        tell(opened);
        return;
      }
      tell(`${opened.length} trials read from ${chosen.name}.`);
      keep(opened);
    });
    file.value = "";
  });
  root.hidden = false;
  show();
}

for (const root of document.querySelectorAll<HTMLElement>("[data-trial-form]")) startTrialForm(root);

import type { FormingCase } from "../../forming/case.ts";
import type { PlateRoll } from "../../forming/machine.ts";
import { sayIn } from "../../forming/say.ts";
import { isPipe } from "../../forming/skin.ts";
import { correctTrials, impossibleTrial } from "../../forming/trials.ts";
import { MOST_TOLD, type TrialSeen } from "../../forming/trialSeen.ts";
import { MM_PER_INCH, type Units } from "../../drawing/format.ts";
import { keptIn, trialsYaml, typed } from "./keptTrials.ts";
import { placesOf, showPlaces } from "./places.ts";
import { printSteps } from "./printSteps.ts";

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

/** A number as it is typed, decimal comma and any minus sign allowed; undefined where it is none that can be meant. */
function numberIn(text: string, [least, most]: readonly [number, number]): number | undefined {
  const value = Number(
    text
      .trim()
      .replace(",", ".")
      .replace(/^[−–]\s*/, "-"),
  );
  return text.trim() !== "" && Number.isFinite(value) && value >= least && value <= most ? value : undefined;
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
  const places = find(root, "places", HTMLTableElement);
  const question = { item, roll, say: sayIn(units) };
  /** A slip that was kept or written in a file would stop every answer: it is left out, and told. */
  const possible = (all: readonly TrialSeen[]) =>
    all.filter((one) => impossibleTrial(question, one) === null);
  let trials: readonly TrialSeen[] = possible(asked.trials);
  let kept = true;
  try {
    trials = possible(keptIn(localStorage.getItem(key)) ?? asked.trials);
  } catch {
    kept = false;
  }

  const tell = (text: string): void => {
    message.textContent = text;
  };
  const words = (trial: TrialSeen): string => {
    const came =
      "gapMm" in trial
        ? `${trial.gapMm < 0 ? "overlap" : "gap"} ${typed(Math.abs(trial.gapMm), units)} ${units}`
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
    const next = trials.length > 0 ? correctTrials(question, trials) : null;
    const correction = next?.kind === "correction" ? next.correction : null;
    answer.textContent =
      next === null
        ? "No trial yet: the sheet’s own start comes first."
        : next.kind === "none"
          ? `No next setting: ${next.why}.`
          : next.correction.advice;
    showPlaces(places, placesOf(correction, isPipe(item)), units);
    printSteps(question, trials);
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
    const at = numberIn(setting.value, [0, LARGEST_MM]);
    if (at === undefined || at === 0)
      return `Write the raise at the large edge as a number of ${units}, above 0.`;
    if (kind.value === "flat") return { settingMm: at * perUnit, flat: true };
    const closed = kind.value === "closed";
    const out = numberIn(outcome.value, closed ? [0, MOST_TOLD * PER_CENT] : [-LARGEST_MM, LARGEST_MM]);
    if (out === undefined)
      return closed
        ? `Write how far it closed as 0 to ${MOST_TOLD * PER_CENT} per cent of the turn; above 100 where the edges overlap.`
        : `Write the gap as a number of ${units}, with a minus in front where the edges overlap.`;
    return closed
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
    const why = impossibleTrial(question, trial);
    if (why !== null) {
      tell(`That cannot have been, and is not kept: ${why}.`);
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
      const good = possible(opened);
      const bad = opened.length - good.length;
      const left = bad > 0 ? ` ${bad} left out, because that cannot have been on ${roll.name}.` : "";
      tell(`${good.length} trials read from ${chosen.name}.${left}`);
      keep(good);
    });
    file.value = "";
  });
  root.hidden = false;
  show();
}

for (const root of document.querySelectorAll<HTMLElement>("[data-trial-form]")) startTrialForm(root);

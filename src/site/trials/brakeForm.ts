import { type AirBendGeometry, type BrakeTrial, nextDepths } from "../../forming/brakeTrial.ts";
import { settable } from "../../forming/rollPlaces.ts";
import type { Units } from "../../drawing/format.ts";
import { answerWords, degrees } from "./brakeAnswer.ts";
import { cell, fillTable } from "./fillTable.ts";
import { find, LARGEST_MM, lengthHow, lengthIn, numberIn, wrongWith } from "./find.ts";
import { brakeKept, brakeKey } from "./keptBrake.ts";
import { typed } from "./keptTrials.ts";
import { findRoot } from "./root.ts";
import { CHANGED_ELSEWHERE, keepText, keepUnread, whenOthersChange, without } from "./shared.ts";

/** What the page hands to its form. */
export interface BrakeAsked {
  readonly part: string;
  readonly machine: string;
  readonly units: Units;
  readonly geometry: AirBendGeometry;
  /** What the lines of each letter are bent to. [°] */
  readonly depths: readonly { readonly letter: string; readonly bendDeg: number }[];
}

/** No hit turns the plate further. [°] */
const MOST_DEG = 180;
/** No corner has more hits. */
const MOST_HITS = 200;

/** Brings one form to life. */
function startBrakeForm(root: HTMLElement): void {
  const asked = JSON.parse(root.dataset["asked"] ?? "") as BrakeAsked;
  const { units, geometry, depths } = asked;
  const key = brakeKey(asked.part, asked.machine);
  const field = (name: string) => find(root, name, HTMLInputElement);
  const [shoulder, depth, angle, hits] = [field("shoulder"), field("depth"), field("angle"), field("hits")];
  const list = find(root, "list", HTMLOListElement);
  const answer = find(root, "answer", HTMLParagraphElement);
  const message = find(root, "message", HTMLParagraphElement);
  const table = find(root, "places", HTMLTableElement);
  let trials: readonly BrakeTrial[] = [];
  /** What does not fit, or may not be kept, stays on this page alone. */
  let isKept = true;
  /** The hits as they lie at this moment: another window may have added some. */
  const latest = (): readonly BrakeTrial[] => {
    try {
      return isKept ? brakeKept(localStorage.getItem(key)).trials : trials;
    } catch {
      return trials;
    }
  };
  try {
    const kept = brakeKept(localStorage.getItem(key));
    trials = kept.trials;
    shoulder.value = kept.shoulder;
    keepUnread(root, { key, part: asked.part, isSound: kept.isSound });
    if (!kept.isSound) keepText(key, JSON.stringify({ shoulder: kept.shoulder, trials: kept.trials }));
  } catch {
    // A browser that keeps nothing says so at the first hit.
  }
  const shoulderMm = () =>
    shoulder.value.trim() === "" ? 0 : lengthIn(shoulder.value, units, [0, geometry.dieMm / 2]);
  /** As it was last rightly written: half a number changes no depth. */
  let known: AirBendGeometry = { ...geometry, shoulderMm: shoulderMm() ?? 0 };
  let written = shoulder.value;
  const wrongShoulder = () =>
    wrongWith(`Write the radius of the shoulders as ${lengthHow(units)}, or leave it empty.`, shoulder.value);
  const length = (mm: number) => typed(settable(mm, units), units);
  const show = () => {
    list.replaceChildren(
      ...trials.map(({ depthMm, bendDeg }, i) => {
        const remove = document.createElement("button");
        remove.type = "button";
        remove.textContent = "remove";
        remove.setAttribute("aria-label", `remove hit ${i + 1}`);
        remove.addEventListener("click", () => keep(without(latest(), trials, i)));
        const row = document.createElement("li");
        row.append(`${typed(depthMm, units)} ${units} deep: turned by ${degrees(bendDeg)} `, remove);
        return row;
      }),
    );
    const wanted = depths.map(({ bendDeg }) => bendDeg);
    const next = trials.length > 0 ? nextDepths(known, trials, wanted) : null;
    answer.textContent = answerWords(next);
    const rows = next?.kind === "depths" ? next.depthsMm : [];
    fillTable(
      table,
      ["Lines", "turned by", `ram depth, ${units}`].map((name) => cell("th", name, "col")),
      rows.map((mm, i) => [
        cell("th", depths[i]?.letter ?? "", "row"),
        cell("td", degrees(depths[i]?.bendDeg ?? 0)),
        cell("td", mm === null ? "not over this die" : length(mm)),
      ]),
    );
  };
  const keep = (now: readonly BrakeTrial[]) => {
    trials = now;
    try {
      keepText(key, JSON.stringify({ shoulder: written, trials }));
      isKept = true;
    } catch {
      isKept = false;
      message.textContent = "This browser keeps nothing: write the depths on the sheet.";
    }
    show();
  };
  shoulder.addEventListener("input", () => {
    const mm = shoulderMm();
    message.textContent = mm === undefined ? wrongShoulder() : "";
    if (mm === undefined) return;
    known = { ...geometry, shoulderMm: mm };
    written = shoulder.value;
    keep(latest());
  });
  whenOthersChange(key, () => {
    trials = latest();
    const kept = brakeKept(localStorage.getItem(key));
    // What is being typed is left alone.
    if (document.activeElement !== shoulder) {
      shoulder.value = written = kept.shoulder;
      known = { ...geometry, shoulderMm: shoulderMm() ?? 0 };
    }
    message.textContent = CHANGED_ELSEWHERE;
    show();
  });
  find(root, "form", HTMLFormElement).addEventListener("submit", (event) => {
    event.preventDefault();
    const depthMm = lengthIn(depth.value, units, [0, LARGEST_MM]);
    const turned = numberIn(angle.value, [0, MOST_DEG * MOST_HITS]);
    const count = numberIn(hits.value, [1, MOST_HITS]);
    const wrong =
      shoulderMm() === undefined
        ? wrongShoulder()
        : depthMm === undefined || settable(depthMm, units) === 0
          ? wrongWith(`Write the ram depth as ${lengthHow(units)}, above 0.`, depth.value)
          : turned === undefined
            ? wrongWith(
                "Write what the plate turned by in degrees; 0 where it sprang back flat.",
                angle.value,
              )
            : count === undefined || !Number.isInteger(count)
              ? wrongWith("Write the hits as a whole number from 1.", hits.value)
              : "";
    message.textContent = wrong;
    if (wrong !== "" || depthMm === undefined || turned === undefined || count === undefined) return;
    const hit = { depthMm, bendDeg: turned / count };
    const next = nextDepths(known, [hit], []);
    if (next.kind === "none") {
      message.textContent = `That cannot have been, and is not kept: ${next.why}.`;
      return;
    }
    angle.value = "";
    keep([...latest(), hit]);
  });
  root.hidden = false;
  show();
}

findRoot();
for (const root of document.querySelectorAll<HTMLElement>("[data-brake-form]")) startBrakeForm(root);

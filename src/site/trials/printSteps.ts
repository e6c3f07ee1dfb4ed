import type { RollAsked } from "../../forming/asked.ts";
import type { AnyTold } from "../../forming/settleTrials.ts";
import type { Units } from "../../drawing/format.ts";
import type { NoteBox } from "../../forming/sheet/step.ts";
import { byHandRows } from "../forming/byHandWords.ts";
import { type Footnote, marked } from "../forming/footnotes.ts";
import { joined, unbroken } from "../forming/joined.ts";
import { overruledLabel } from "../forming/settingRows.ts";
import {
  addedWords,
  boxName,
  carriedBlank,
  gridOf,
  GRIDS,
  isSum,
  openBox,
  plannedWords,
  sumStart,
} from "../forming/planned.ts";
import { RAISED, type Taken } from "../forming/stepRoom.ts";
import { type RoomMm, typesIn } from "../forming/typesIn.ts";
import { triedSteps } from "./triedSteps.ts";

type TriedStep = NonNullable<ReturnType<typeof triedSteps>>["changed"][number];

function raised(text: string): HTMLElement {
  const made = document.createElement("sup");
  made.textContent = text;
  return made;
}

/** The letters that the sheet's foot explains, by what they stand for: they stay as they were printed. */
const lettersHere = (): Footnote[] =>
  Array.from(document.querySelectorAll<HTMLElement>("[data-mark]"), (one) => ({
    mark: one.textContent,
    basis: one.dataset["mark"] ?? "",
  }));

/** Has steps and printed card start from the trials that stand in the form, as if they were kept beside the part. */
export function printSteps(asked: RollAsked, seen: readonly AnyTold[]): void {
  const tried = triedSteps(asked, seen);
  if (!tried) return;
  const { units } = asked.say;
  const notes = lettersHere();
  for (const step of tried.changed) {
    const { id, toNote } = step;
    const words = document.querySelector(`[data-words="${id}"]`);
    const pieces = marked(step, units, notes).flatMap(({ text, mark }) =>
      mark === null || mark === "" ? [unbroken(text)] : [unbroken(text), raised(mark)],
    );
    words?.replaceChildren(...pieces);
    showOnScreen(step, units);
    showBoxes(id, toNote, units);
    showTable(step, units);
    showOverruled(step);
  }
  for (const card of document.querySelectorAll<HTMLElement>(".step-card")) setTypes(card);
}

/** Trials make a step longer or shorter: the side it stands on is set anew in the largest letters that it has room for. */
function setTypes(card: HTMLElement): void {
  const taken = Array.from(card.children, (step): Taken => ({
    words: wordsOf(step),
    boxes: step.querySelectorAll("[data-boxes] > li").length,
    grid: GRIDS.find((one) => step.classList.contains(one)) ?? null,
    tableRows: step.querySelectorAll("table tr").length,
  }));
  const types = typesIn(taken, JSON.parse(card.dataset["room"] ?? "") as RoomMm);
  for (const [paper, { points, leading }] of Object.entries(types)) {
    card.style.setProperty(`--${paper}-size`, `${points}pt`);
    card.style.setProperty(`--${paper}-leading`, String(leading));
  }
}

/** What a step says, without its table. */
function wordsOf(step: Element): string {
  const words = step.querySelector(":scope > div")?.cloneNode(true);
  if (!(words instanceof Element)) return "";
  for (const one of words.querySelectorAll("table")) one.remove();
  for (const one of words.querySelectorAll("sup")) one.replaceWith(RAISED);
  return words.textContent;
}

const made = (name: string, ...inside: (string | Node)[]): HTMLElement => {
  const one = document.createElement(name);
  one.append(...inside);
  return one;
};

/** The table to work by without a screen, which goes where trials have told what it is for. */
function showTable(step: TriedStep, units: Units): void {
  const rows = byHandRows(step, units).map(({ name, cells }) => {
    const head = made("th", name);
    head.setAttribute("scope", "row");
    return made("tr", head, ...cells.map((cell) => made("td", cell)));
  });
  const table = made("table", made("tbody", ...rows));
  table.className = "by-hand";
  document.querySelector(`[data-table="${step.id}"]`)?.replaceChildren(...(rows.length > 0 ? [table] : []));
}

/** The same among the steps in full: their figures stay the plan's, which is said. */
function showOnScreen(tried: TriedStep, units: Units): void {
  const { id, text } = tried;
  const step = document.querySelector(`[data-step="${id}"]`);
  const words = step?.querySelector<HTMLElement>("[data-step-words]");
  if (!words) return;
  const plan = (words.dataset["stepWords"] ||= words.textContent);
  words.textContent = text;
  const isOver = text !== plan;
  const note = step?.querySelector("[data-by-trials]");
  if (!isOver) note?.remove();
  else if (!note) {
    const said = made("strong", " Trials overrule the plan here; the figures are the plan’s.");
    said.dataset["byTrials"] = "";
    words.after(said);
  }
  // What a screen has worked out is not worked out once more without one.
  const table = step?.querySelector<HTMLElement>(".table-box");
  if (table) table.hidden = byHandRows(tried, units).length === 0;
}

/** Beside the plan's own settings: those that trials overrule now. */
function showOverruled({ id, number, overruled }: TriedStep): void {
  for (const row of document.querySelectorAll<HTMLElement>(`[data-setting^="${id} "]`)) {
    const zone = Number(row.dataset["setting"]?.slice(id.length + 1));
    const label = row.dataset["label"] ?? "";
    row.textContent = overruled?.includes(zone) ? overruledLabel(label, { number }) : label;
  }
}

/** The lines to write on: in zones there may be more of them than were printed without trials. */
function showBoxes(id: string, boxes: readonly NoteBox[], units: Units): void {
  const list = document.querySelector(`[data-boxes="${id}"]`);
  const [first] = list?.children ?? [];
  if (!list || !first) return;
  const rows = boxes.map((box, i) => {
    const { label, unit, planned } = box;
    // A copy keeps what the styles know it by.
    const row = first.cloneNode() as Element;
    const sum = isSum(box);
    row.classList.toggle("sum", sum);
    if (planned === undefined) {
      row.append(openBox(label, unit, units));
      return row;
    }
    const number = made("strong", joined((sum ? addedWords : plannedWords)(planned, unit, units)));
    number.dataset["planned"] = `${id} ${i}`;
    if (sum)
      row.append(made("span", sumStart(label)), made("i"), made("span", number, `${carriedBlank(box)} =`));
    else row.append(made("span", `${boxName(label)}: `, number, box.carried ? `${carriedBlank(box)} =` : ""));
    return row;
  });
  list.replaceChildren(...rows);
  const grid = gridOf({ id, toNote: boxes });
  for (const one of GRIDS) list.closest("li")?.classList.toggle(one, one === grid);
}

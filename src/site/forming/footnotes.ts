import type { Units } from "../../drawing/format.ts";
import type { FormingPlan } from "../../forming/plan.ts";
import { figureWords } from "./figureWords.ts";

type Step = FormingPlan["steps"][number];

/** What all steps of a plan rest on, each with the letter that stands beside what rests on it. */
export interface Footnote {
  readonly mark: string;
  readonly basis: string;
}

/** A piece of a step's words, and the letter of what the figure before it rests on. */
export interface Marked {
  readonly text: string;
  readonly mark: string | null;
}

const FIRST = "a".charCodeAt(0);

/** What the steps rest on as they stand on paper: how each is done, and every figure that is in its words. */
export function footnotes({ steps }: Pick<FormingPlan, "steps">, units: Units): Footnote[] {
  const bases = steps.flatMap((step) => [step.basis, ...placesOf(step, units).map(({ basis }) => basis)]);
  return [...new Set(bases)].map((basis, i) => ({ mark: String.fromCharCode(FIRST + i), basis }));
}

export const markOf = (notes: readonly Footnote[], basis: string): string =>
  notes.find((one) => one.basis === basis)?.mark ?? "";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");

/** Where a figure ends in the words, and what it rests on. */
interface Place {
  readonly end: number;
  readonly basis: string;
}

/** Every place where a step's words have one of its figures, whole ones only: 2 mm is not found in 12 mm. */
function placesOf(step: Step, units: Units): Place[] {
  const words = plain(step.text);
  const places = step.figures.flatMap((one) => {
    const figure = plain(figureWords(one, units));
    const found: Place[] = [];
    // A list has its unit at the last of its numbers alone.
    for (const text of new Set([figure, figure.replace(/ (?:mm|in)$/, "")]))
      for (let at = words.indexOf(text); at >= 0; at = words.indexOf(text, at + 1)) {
        const [before, after] = [words.charAt(at - 1), words.slice(at + text.length)];
        if (/[\d.,/–-]/.test(before) || /^(?:[\d/]|[.,]\d| %|°)/.test(after)) continue;
        const tail = text === figure ? "" : (/^ (?:mm|in)\b(?: \([\d /]+\))?/.exec(after)?.[0] ?? "");
        found.push({ end: at + text.length + tail.length, basis: one.basis });
      }
    return found;
  });
  const ends = [...new Set(places.map(({ end }) => end))].sort((p, q) => p - q);
  return ends.flatMap((end) => places.find((one) => one.end === end) ?? []);
}

/** A step's words cut behind each of its figures, which then has the letter of its basis. */
export function marked(step: Step, units: Units, notes: readonly Footnote[]): Marked[] {
  const words = plain(step.text);
  const places = placesOf(step, units);
  const cuts = [0, ...places.map(({ end }) => end)];
  return [
    ...places.map(({ end, basis }, i) => ({ text: words.slice(cuts[i], end), mark: markOf(notes, basis) })),
    { text: words.slice(cuts.at(-1)), mark: null },
  ].filter(({ text }) => text !== "");
}

import type { Paper } from "../../drawing/paper.ts";
import { COLUMN } from "../parts/papers.ts";

/** What the sheet of a machine's card holds on US Letter, the shorter paper; measured, and held by the test of printing. [mm] */
const CARD_SHEET = { room: 257, fixed: 82, fact: 4.4, gap: 2.5, entry: 3.8, words: 3.3, letters: 125 };
/** Lower than this a chart is not read, taller than this it says no more. [mm] */
export const CHART_MM = { least: 60, most: 150 };

/** The chart of a machine's card, as tall as its tables leave room for. */
export function chartPaper({
  entries,
  facts,
  gaps,
  letters,
}: {
  entries: number;
  facts: number;
  gaps: number;
  /** Of what is said of the chart below it. */
  letters: number;
}): Paper {
  const { room, fixed, fact, gap, entry, words, letters: inLine } = CARD_SHEET;
  const below = words * Math.ceil(letters / inLine);
  const left = room - fixed - fact * Math.ceil(facts / 2) - gap * gaps - entry * (entries + 1) - below;
  return {
    ...COLUMN,
    name: "sheet",
    widthMm: 170,
    heightMm: Math.min(CHART_MM.most, Math.max(CHART_MM.least, left)),
  };
}

import type { Paper } from "../../drawing/paper.ts";
import { COLUMN } from "../parts/papers.ts";

/** What the sheet of a machine's card holds on US Letter, the shorter paper; measured, and held by the test of printing. [mm] */
const CARD_SHEET = { room: 257, fixed: 82, fact: 4.4, gap: 2.5, entry: 3.8, words: 3.3, letters: 125 };
/** A part's row is as many lines high as its reason has; the verdict stands before it in the first. [letters, mm] */
const REASON = { verdict: 16, inLine: 44, line: 3.1 };
/** Lower than this a chart is not read, taller than this it says no more. [mm] */
export const CHART_MM = { least: 70, most: 150 };

interface OnCard {
  /** Why each part of the job goes as it does, row by row. */
  readonly reasons: readonly string[];
  readonly facts: number;
  readonly gaps: number;
  /** Of what is said of the chart below it. */
  readonly letters: number;
}

/** The chart of a machine's card, as tall as its tables leave room for; a list that leaves it too little stands on the back. */
export function cardPaper({ reasons, facts, gaps, letters }: OnCard): { chart: Paper; listOnBack: boolean } {
  const { room, fixed, fact, gap, entry, words, letters: inLine } = CARD_SHEET;
  const below = words * Math.ceil(letters / inLine);
  const left = room - fixed - fact * Math.ceil(facts / 2) - gap * gaps - below;
  const list = entry + reasons.reduce((sum, reason) => sum + rowMm(reason), 0);
  const listOnBack = left - list < CHART_MM.least;
  return { chart: chartPaper(listOnBack ? left : left - list), listOnBack };

  function rowMm(reason: string): number {
    const { verdict, inLine, line } = REASON;
    return entry + line * Math.max(0, Math.ceil((verdict + reason.length) / inLine) - 1);
  }
}

const chartPaper = (heightMm: number): Paper => ({
  ...COLUMN,
  name: "sheet",
  widthMm: 170,
  heightMm: Math.min(CHART_MM.most, Math.max(CHART_MM.least, heightMm)),
});

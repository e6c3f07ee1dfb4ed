import { CAP_PER_SIZE, textWidth } from "../../drawing/lettering.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import { joined } from "./joined.ts";
import type { Grid } from "./planned.ts";
import type { StepType } from "./stepSides.ts";

/*
 * How high the steps stand on the printed page, reckoned before a browser breaks their lines: for this the page has no
 * other way to set them in the largest letters that its paper holds. Sizes are those of the card's own styles.
 */

/** Paper less its margins, the frame and what is free within it, by the longer and the shorter paper in use. [mm] */
export const FIELDS = {
  a4: { widthMm: 172.7, heightMm: 280.5 },
  letter: { widthMm: 178.8, heightMm: 262.5 },
} as const;
export type PaperName = keyof typeof FIELDS;

const MM_PER_POINT = MM_PER_INCH / 72;
/** Beside a step's number; around the words of a step. [mm] */
const CARD = { numberMm: 8, padMm: 0.2 };
/** What is set in bold runs wider, and the measure of lettering has room for another font, which the page brings itself. [-] */
const SET = 0.965;
/** Beside the words: one column of boxes, or two. A row of them, and of a table to correct by. [mm] */
const BOXES = { one: 50.5, two: 84.5, rowMm: 3.9, tableRowMm: 2.9 };
/** Boxes in a row, by how they stand. */
const IN_ROW: Readonly<Record<Grid, number>> = { sums: 3, "zone-sums": 3, fours: 4, pairs: 2, wide: 2 };

/** What takes as much room among words as the raised letter of a basis. */
export const RAISED = "t";

/** What a step takes room for. */
export interface Taken {
  /** `RAISED` for each letter of a basis. */
  readonly words: string;
  readonly boxes: number;
  readonly grid: Grid | null;
  readonly tableRows: number;
}

/** Length of a word, or of a space, over the size of its letters. [-] */
const longOf = (text: string): number => SET * textWidth(text, CAP_PER_SIZE);
const SPACE = longOf(" ");

/** The same words are set in one size after another. */
const MOST_KEPT = 400;
const kept = new Map<string, readonly number[]>();

function wordsOf(text: string): readonly number[] {
  const known = kept.get(text);
  if (known) return known;
  const words = joined(text)
    .split(/[ \n]+/)
    .filter((word) => word !== "")
    .map((word) => longOf(word.replaceAll("\u00a0", " ")));
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(text, words);
  return words;
}

/** How many lines words take, each line broken before the first word that it has no room for. */
function linesOf(words: readonly number[], sizeMm: number, widthAt: (line: number) => number): number {
  let [line, at] = [0, 0];
  for (const long of words) {
    const wide = long * sizeMm;
    const after = at === 0 ? wide : at + SPACE * sizeMm + wide;
    if (at > 0 && after > widthAt(line)) [line, at] = [line + 1, wide];
    else at = after;
  }
  return words.length === 0 ? 0 : line + 1;
}

/** Height of words of one size. [mm] */
export function wordsHigh(words: string, { points, leading }: StepType, widthMm: number): number {
  const sizeMm = points * MM_PER_POINT;
  return linesOf(wordsOf(words), sizeMm, () => widthMm) * sizeMm * leading;
}

function stepHigh(
  { words, boxes, grid, tableRows }: Taken,
  { points, leading }: StepType,
  widthMm: number,
): number {
  const sizeMm = points * MM_PER_POINT;
  const line = sizeMm * leading;
  const wide = widthMm - CARD.numberMm;
  const rows = Math.ceil(boxes / (grid === null ? 1 : IN_ROW[grid])) * BOXES.rowMm;
  const aside = boxes > 0 && (grid === null || grid === "wide");
  const narrow = aside ? Math.ceil(rows / line) : 0;
  const lost = grid === "wide" ? BOXES.two : BOXES.one;
  const lines = linesOf(wordsOf(words), sizeMm, (at) => (at < narrow ? wide - lost : wide));
  // Words that are shorter than their boxes are high.
  const high = Math.max(lines * line, aside ? rows : 0) + (aside ? 0 : rows);
  return high + tableRows * BOXES.tableRowMm + 2 * CARD.padMm;
}

/** Height of a card of steps. [mm] */
export const cardHigh = (steps: readonly Taken[], type: StepType, widthMm: number): number =>
  steps.reduce((sum, one) => sum + stepHigh(one, type, widthMm), 0);

import { CAP_PER_SIZE, textWidth } from "../../drawing/lettering.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
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
const CARD = { numberMm: 8, padMm: 0.45 };
/** Lines end before the margin where the next word is too long; the measure of lettering has that much to spare for other fonts. [-] */
const RAGGED = 1;
/** Beside the words: one column of boxes, or two. A row of them, and of a table to correct by. [mm] */
const BOXES = { one: 50.5, two: 84.5, rowMm: 4, tableRowMm: 2.9 };
/** Boxes in a row, by how they stand. */
const IN_ROW: Readonly<Record<Grid, number>> = { sums: 3, "zone-sums": 3, pairs: 2, wide: 2 };

/** What a step takes room for. */
export interface Taken {
  readonly words: string;
  readonly boxes: number;
  readonly grid: Grid | null;
  readonly tableRows: number;
}

const longOf = (words: string, points: number): number =>
  textWidth(words, points * MM_PER_POINT * CAP_PER_SIZE) * RAGGED;

/** Height of words of one size. [mm] */
export function wordsHigh(words: string, { points, leading }: StepType, widthMm: number): number {
  return Math.ceil(longOf(words, points) / widthMm) * points * leading * MM_PER_POINT;
}

function stepHigh(
  { words, boxes, grid, tableRows }: Taken,
  { points, leading }: StepType,
  widthMm: number,
): number {
  const line = points * leading * MM_PER_POINT;
  const wide = widthMm - CARD.numberMm;
  const rows = Math.ceil(boxes / (grid === null ? 1 : IN_ROW[grid])) * BOXES.rowMm;
  const aside = boxes > 0 && (grid === null || grid === "wide");
  const narrow = aside ? Math.ceil(rows / line) : 0;
  const lost = narrow * (grid === "wide" ? BOXES.two : BOXES.one);
  const lines = Math.ceil((longOf(words, points) + lost) / wide);
  // Words that are shorter than their boxes are high.
  const high = Math.max(lines * line, aside ? rows : 0) + (aside ? 0 : rows);
  return high + tableRows * BOXES.tableRowMm + 2 * CARD.padMm;
}

/** Height of a card of steps. [mm] */
export const cardHigh = (steps: readonly Taken[], type: StepType, widthMm: number): number =>
  steps.reduce((sum, one) => sum + stepHigh(one, type, widthMm), 0);

import type { Block } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { flowed, type Setting } from "../../output/pdf/flow.ts";
import { offsetOf } from "../../drawing/views/ends.ts";
import type { Report } from "../../report/report.ts";
import { type CardAround, type CardSizes, partCard } from "./partCard.ts";

/** A card is read on both sides of one sheet, or on two that hang side by side. */
const MOST_SHEETS = 2;

/** The largest first. [mm] */
const USUAL: readonly CardSizes[] = [
  { viewsMm: 74, patternMm: 74, three: false },
  { viewsMm: 74, patternMm: 62, three: false },
  { viewsMm: 66, patternMm: 54, three: false },
  { viewsMm: 60, patternMm: 48, three: false },
];
/** Three views need height as well as width; where they have it not, two say as much and are larger. [mm] */
const LEANING: readonly CardSizes[] = [
  { viewsMm: 112, patternMm: 74, three: true },
  { viewsMm: 104, patternMm: 62, three: true },
  { viewsMm: 96, patternMm: 54, three: true },
  ...USUAL,
];

/** The part card with its drawings as large as two sheets of its paper allow. */
export function cardOnSheets(
  pdf: Pdf,
  report: Report,
  around: CardAround,
  setting: Setting,
): (Block | null)[] {
  const isLeaning = offsetOf(report)[1] !== 0;
  let fewest: { blocks: (Block | null)[]; pages: number } | undefined;
  for (const sizes of isLeaning ? LEANING : USUAL) {
    const blocks = partCard(pdf, report, around, sizes);
    const { pages } = flowed(pdf, blocks, setting);
    if (pages <= MOST_SHEETS) return blocks;
    if (pages < (fewest?.pages ?? Infinity)) fewest = { blocks, pages };
  }
  return fewest?.blocks ?? [];
}

import type { Block } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { flowed, type Setting } from "../../output/pdf/flow.ts";
import { offsetOf } from "../../drawing/views/ends.ts";
import type { Report } from "../../report/report.ts";
import { LEAST_MM } from "../parts/pairPaper.ts";
import { type CardAround, partCard, type ViewsSize } from "./partCard.ts";

type Blocks = readonly (Block | null)[];

/** A card is read on both sides of one sheet, or on two that hang side by side. */
const MOST_SHEETS = 2;

const sized = (three: boolean, heights: readonly number[]): ViewsSize[] =>
  heights.map((heightMm) => ({ three, heightMm }));
/** Heights of the views, the largest first. [mm] */
const TWO = sized(false, [150, 130, 116, 104, 94, 84, 74, 66, 60]);
/** Three views need height as well as width; where they have it not, two say as much and are larger. [mm] */
const THREE = [...sized(true, [150, 134, 120, 112, 104, 96]), ...TWO];
/** Heights of the pattern, or of all patterns of a part in pieces. [mm] */
const PATTERN = [110, 100, 90, 82, 74, LEAST_MM];
const PATTERNS = [180, 160, 140, 124, ...PATTERN];

/** The part card with its drawings as large as two sheets of its paper allow: the views on one, the pattern on the other. What needs more sheets has its patterns as large as those allow. */
export function cardOnSheets(
  pdf: Pdf,
  report: Report,
  around: CardAround,
  setting: Setting,
): (Block | null)[] {
  const card = partCard(pdf, report, around);
  const pages = (blocks: Blocks) => flowed(pdf, blocks, setting).pages;
  const isLeaning = offsetOf(report)[1] !== 0;
  const front = largest(isLeaning ? THREE : TWO, card.front, (blocks) => pages(blocks) === 1);
  const inPieces = report.blanks.filter(({ sameAs }) => sameAs === null).length > 1;
  const turned = pages(front) === 1 ? [null] : [];
  const whole = (patternMm: number) => [...front, ...turned, ...card.back(patternMm)];
  const sizes = inPieces ? PATTERNS : PATTERN;
  const made = largest(sizes, whole, (blocks) => pages(blocks) <= MOST_SHEETS);
  const taken = pages(made);
  return taken <= MOST_SHEETS ? made : largest(sizes, whole, (blocks) => pages(blocks) <= taken);
}

/** What is made with the first size that fits; with the smallest where none does. */
function largest<Size>(
  sizes: readonly Size[],
  make: (size: Size) => Blocks,
  fits: (blocks: Blocks) => boolean,
): (Block | null)[] {
  let made: Blocks = [];
  for (const size of sizes) {
    made = make(size);
    if (fits(made)) break;
  }
  return [...made];
}

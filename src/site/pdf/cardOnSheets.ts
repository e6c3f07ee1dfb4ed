import type { Block } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { flowed, type Setting } from "../../output/pdf/flow.ts";
import { offsetOf } from "../../drawing/views/ends.ts";
import type { Report } from "../../report/report.ts";
import { LEAST_MM } from "../parts/pairPaper.ts";
import { type CardAround, type Letters, partCard, type ViewsSize } from "./partCard.ts";

/** Letters of the checks, the largest first: 8.9, 8.1 and 7.5 points, as small as a card on a wall is read. [mm] */
const LETTERS: readonly Letters[] = [
  { checkMm: 2.2, reasonMm: 2 },
  { checkMm: 2, reasonMm: 1.85 },
  { checkMm: 1.85, reasonMm: 1.73 },
];
const LEAST_LETTERS = LETTERS.at(-1) as Letters;
/** Only where the checks would otherwise run on over another sheet. */
const TIGHT: Letters = { checkMm: 1.7, reasonMm: 1.6 };

type Blocks = readonly (Block | null)[];

/** A card is read on both sides of one sheet, or on two that hang side by side. */
const MOST_SHEETS = 2;

const sized = (three: boolean, heights: readonly number[]): ViewsSize[] =>
  heights.map((heightMm) => ({ three, heightMm }));
/** Heights of the views, the largest first. [mm] */
const SMALLEST: ViewsSize = { three: false, heightMm: 60 };
const TWO = [...sized(false, [150, 130, 116, 104, 94, 84, 74, 66]), SMALLEST];
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
  const onOne = (blocks: Blocks) => pages(blocks) === 1;
  const views = isLeaning ? THREE : TWO;
  // Views as large as letters to be read on a wall leave room for; then the letters as large as these views do.
  const sizeOf = (letters: Letters) => views.find((size) => onOne(card.front(size, letters)));
  const roomy = sizeOf(LEAST_LETTERS);
  const size = roomy ?? sizeOf(TIGHT) ?? SMALLEST;
  const front = roomy
    ? largest(LETTERS, (letters) => card.front(size, letters), onOne)
    : card.front(size, TIGHT);
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

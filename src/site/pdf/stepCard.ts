import type { Units } from "../../geometry/units.ts";
import { CAP_PER_SIZE } from "../../drawing/lettering.ts";
import type { FormingPlan } from "../../forming/plan.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import { type Block, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { ruled } from "../../output/pdf/ruled.ts";
import { tableBlock } from "../../output/pdf/tableBlock.ts";
import { paragraph, type Run } from "../../output/pdf/words.ts";
import { type ByHandRow, byHandRows } from "../forming/byHandWords.ts";
import { type Footnote, marked, markOf } from "../forming/footnotes.ts";
import { joined } from "../forming/joined.ts";
import { type Grid, gridOf } from "../forming/planned.ts";
import type { Explained } from "../forming/rollWords.ts";
import type { StepType } from "../forming/stepSides.ts";
import { BASIS_NOTE } from "../forming/sheetWords.ts";
import { basisRun } from "./basisRun.ts";
import { bold, SMALL_CAP, soft } from "./blocks.ts";
import { boxesBlock } from "./writeBoxes.ts";

type Step = FormingPlan["steps"][number];

const MM_PER_POINT = MM_PER_INCH / 72;
const NUMBER_MM = 7;
/** The letter of a footnote is no larger than that. [mm] */
const MARK_CAP = 1.8;
/** Lines to write on in a row. */
const COLUMNS: Readonly<Record<Grid, number>> = { sums: 3, "zone-sums": 3, fours: 4, pairs: 2, wide: 2 };
/** Boxes stand at the right: one column of them, or two where several zones are set. [mm] */
const BOXES = { one: 47, two: 84, gap: 2.5 };

/** Steps to work by, what is to be set and lines for what it came to. */
export const stepCard = (
  pdf: Pdf,
  steps: readonly Step[],
  how: { units: Units; notes: readonly Footnote[]; type: StepType },
): Block =>
  ruled(
    pdf,
    steps.map((step) => stepBlock(pdf, step, how)),
  );

/** At the foot of the steps. */
const FOOT = { capMm: SMALL_CAP, leading: 1.5 };

/** What they rest on, by its letters. */
export function stepNotes(
  pdf: Pdf,
  { notes, known }: { notes: readonly Footnote[]; known: ReadonlyMap<string, string> },
): Block {
  const basis = notes.flatMap(({ mark, basis: own }, i): Run[] => [
    soft(i > 0 ? "; " : " "),
    { ...soft(`${mark} `), bold: true },
    basisRun(known, own),
  ]);
  return paragraph(pdf, [soft(BASIS_NOTE), ...basis, soft(".")], FOOT);
}

/** What their words mean, a sentence each. */
export const stepWords = (pdf: Pdf, words: readonly Explained[]): Block[] =>
  words.length === 0
    ? []
    : [
        paragraph(
          pdf,
          words.flatMap(({ word, means }) => [bold(`${word}: `), { text: `${means} ` }]),
          FOOT,
        ),
      ];

function stepBlock(
  pdf: Pdf,
  step: Step,
  { units, notes, type }: { units: Units; notes: readonly Footnote[]; type: StepType },
): Block {
  const capMm = type.points * MM_PER_POINT * CAP_PER_SIZE;
  const raised = (text: string): Run => ({ text, raised: true, capMm: Math.min(capMm * 0.62, MARK_CAP) });
  const grid = gridOf(step);
  const wide = grid === "wide";
  const sums = grid !== null && !wide;
  const boxes =
    step.toNote.length === 0
      ? undefined
      : boxesBlock(pdf, step.toNote, { units, columns: grid === null ? 1 : COLUMNS[grid] });
  const boxesMm = wide ? BOXES.two : BOXES.one;
  const aside =
    boxes && !sums ? { widthMm: boxesMm + BOXES.gap, heightMm: boxes.height(boxesMm) } : undefined;
  const words = paragraph(
    pdf,
    [
      bold(`${step.title}.`),
      raised(markOf(notes, step.basis)),
      { text: " " },
      ...marked(step, units, notes).flatMap(({ text, mark }): Run[] => [
        { text: joined(text) },
        ...(mark === null ? [] : [raised(mark)]),
      ]),
      ...step.cautions.map((caution) => bold(` ${joined(caution)}`)),
    ],
    {
      capMm,
      mark: String(step.number),
      indentMm: NUMBER_MM,
      leading: type.leading / CAP_PER_SIZE,
      aside,
    },
  );
  const rows = byHandRows(step, units);
  const table = rows.length > 0 ? byHand(pdf, rows) : undefined;
  const under = [...(table ? [table] : []), ...(sums && boxes ? [boxes] : [])];
  const left =
    under.length > 0 ? stack([words, indented(stack(under, 0.5), table && aside?.widthMm)], 0.4) : words;
  return {
    height: (width) => Math.max(left.height(width), aside?.heightMm ?? 0),
    draw: (x, y, width) => {
      left.draw(x, y, width);
      if (aside) boxes?.draw(x + width - boxesMm, y, boxesMm);
    },
  };
}

/** Under the words of a step, beside its number and clear of the boxes at its right. */
const indented = (inner: Block, asideMm = 0): Block => ({
  height: (width) => inner.height(width - NUMBER_MM - asideMm),
  draw: (x, y, width) => inner.draw(x + NUMBER_MM, y, width - NUMBER_MM - asideMm),
});

/** The tables to work by without a screen, their columns as wide as their words. */
function byHand(pdf: Pdf, rows: readonly ByHandRow[]): Block {
  const columns = Math.max(...rows.map(({ cells }) => cells.length));
  const widest = (texts: readonly string[], isBold: boolean) =>
    Math.max(...texts.map((text) => pdf.width(text, { capMm: SMALL_CAP, bold: isBold }) + 2));
  const each = Array.from({ length: columns }, (_, i) => i);
  return tableBlock(pdf, {
    capMm: SMALL_CAP,
    columns: [
      {
        align: "left",
        share: widest(
          rows.map(({ name }) => name),
          true,
        ),
      },
      ...each.map((i) => ({
        align: "right" as const,
        share: widest(
          rows.map(({ cells }) => cells[i] ?? ""),
          false,
        ),
      })),
    ],
    edges: each.map((i) => i + 1),
    head: [],
    rows: rows.map(({ name, cells }) => [
      { text: [bold(name)] },
      ...each.map((i) => ({ text: cells[i] ?? "" })),
    ]),
  });
}

import type { Units } from "../../geometry/units.ts";
import { CAP_PER_SIZE } from "../../drawing/lettering.ts";
import type { FormingPlan } from "../../forming/plan.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import { type Block, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { ruled } from "../../output/pdf/ruled.ts";
import { tableBlock, textOf } from "../../output/pdf/tableBlock.ts";
import { paragraph, type Run } from "../../output/pdf/words.ts";
import { byHandWords } from "../forming/byHandWords.ts";
import { type Footnote, footnotes, marked, markOf } from "../forming/footnotes.ts";
import { joined } from "../forming/joined.ts";
import { type Grid, gridOf } from "../forming/planned.ts";
import { BASIS_NOTE } from "../forming/sheetWords.ts";
import { basisRun } from "./basisRun.ts";
import { bold, SMALL_CAP, soft } from "./blocks.ts";
import { boxesBlock } from "./writeBoxes.ts";

/** How large the steps are set. */
export interface StepType {
  readonly points: number;
  /** From line to line, over the size of the letters. [-] */
  readonly leading: number;
}

/** From the largest, read from further off, to the least that is still read at arm's length. */
export const STEP_TYPES: readonly [StepType, ...StepType[]] = [
  { points: 12.5, leading: 1.15 },
  { points: 11.5, leading: 1.12 },
  { points: 10.5, leading: 1.12 },
  { points: 10.5, leading: 1.05 },
  { points: 10, leading: 1.05 },
  { points: 10, leading: 1.02 },
];

type Step = FormingPlan["steps"][number];

const MM_PER_POINT = MM_PER_INCH / 72;
const NUMBER_MM = 7;
/** Lines to write on in a row. */
const COLUMNS: Readonly<Record<Grid, number>> = { sums: 3, "zone-sums": 3, pairs: 2, wide: 2 };
/** Boxes stand at the right: one column of them, or two where several zones are set. [mm] */
const BOXES = { one: 47, two: 84, gap: 2.5 };

/** All steps to work by, what is to be set and lines for what it came to; then what they rest on, by its letters. */
export function stepCard(
  pdf: Pdf,
  plan: Pick<FormingPlan, "steps">,
  { units, known, type }: { units: Units; known: ReadonlyMap<string, string>; type: StepType },
): Block[] {
  const notes = footnotes(plan);
  const basis = notes.flatMap(({ mark, basis: own }, i): Run[] => [
    soft(i > 0 ? "; " : " "),
    { ...soft(`${mark} `), bold: true },
    basisRun(known, own),
  ]);
  return [
    ruled(
      pdf,
      plan.steps.map((step) => stepBlock(pdf, step, { units, notes, type })),
    ),
    paragraph(pdf, [soft(BASIS_NOTE), ...basis, soft(".")], { capMm: SMALL_CAP, leading: 1.5 }),
  ];
}

function stepBlock(
  pdf: Pdf,
  step: Step,
  { units, notes, type }: { units: Units; notes: readonly Footnote[]; type: StepType },
): Block {
  const capMm = type.points * MM_PER_POINT * CAP_PER_SIZE;
  const raised = (text: string): Run => ({ text, raised: true, capMm: capMm * 0.62 });
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
      ...(step.beware === undefined ? [] : [bold(` ${joined(step.beware)}`)]),
    ],
    {
      capMm,
      mark: String(step.number),
      indentMm: NUMBER_MM,
      leading: type.leading / CAP_PER_SIZE,
      aside,
    },
  );
  const table = step.byHand && byHand(pdf, step.byHand, units);
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

/** The table to correct by without a screen, its columns as wide as their words. */
function byHand(pdf: Pdf, rows: NonNullable<Step["byHand"]>, units: Units): Block {
  const { gaps, raises } = byHandWords(rows, units);
  const line = ({ name, cells }: typeof gaps) => [{ text: [bold(name)] }, ...cells.map((text) => ({ text }))];
  const share = (i: number, isBold: boolean) =>
    Math.max(
      ...[line(gaps), line(raises)].map((cells) => {
        const words = textOf(cells[i] ?? { text: "" });
        return pdf.width(words, { capMm: SMALL_CAP, bold: isBold }) + 2;
      }),
    );
  return tableBlock(pdf, {
    capMm: SMALL_CAP,
    columns: [
      { align: "left", share: share(0, true) },
      ...rows.map((_, i) => ({ align: "right" as const, share: share(i + 1, false) })),
    ],
    edges: rows.map((_, i) => i + 1),
    head: [],
    rows: [line(gaps), line(raises)],
  });
}

import type { Drawing } from "../../drawing/model.ts";
import { height, width } from "../../drawing/box.ts";
import { beside, type Block, framed, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { putDrawing } from "../../output/pdf/picture.ts";
import { paragraph, type Run, TICK } from "../../output/pdf/words.ts";
import type { Verdict } from "../../forming/check.ts";
import { VERDICTS } from "../words/verdict.ts";
import { CAUTION, READ_FIRST } from "../words/work.ts";

/** Signs that say the same as the words beside them, where a printer has no colour. */
const SIGNS: Readonly<Record<Verdict, string>> = { pass: "✓", caution: "!", fail: "×" };
export const verdictWords = (verdict: Verdict): string => `${SIGNS[verdict]} ${VERDICTS[verdict]}`;

/** Letters of notes and of what figures rest on. [mm] */
export const SMALL_CAP = 1.6;
const SOFT = 0.35;
export const soft = (text: string): Run => ({ text, capMm: SMALL_CAP, ink: SOFT });
export const bold = (text: string): Run => ({ text, bold: true });

export const heading = (pdf: Pdf, text: string): Block => ({
  ...paragraph(pdf, [bold(text)], { capMm: 2.8 }),
  withNext: true,
  bookmark: text,
});

/** A drawing at its own scale, in the middle of its place. */
export const picture = (pdf: Pdf, drawing: Drawing): Block => {
  const { extent, unit } = drawing;
  return {
    height: () => height(extent) / unit,
    draw: (x, y, widthMm) => putDrawing(pdf, drawing, [x + (widthMm - width(extent) / unit) / 2, y]),
  };
};

/** Names and values in two columns, lighter what only explains. */
export const facts = (
  pdf: Pdf,
  all: readonly { readonly name: string; readonly value: string; readonly beside?: string | undefined }[],
): Block =>
  stack(
    all.map(({ name, value, beside: more }) =>
      beside(
        [
          paragraph(pdf, [{ text: name, ink: SOFT }]),
          paragraph(pdf, [bold(value), ...(more === undefined ? [] : [soft(`  ${more}`)])]),
        ],
        [1, 2.2],
        2,
      ),
    ),
    0.2,
  );

export const ticks = (pdf: Pdf, steps: readonly string[]): Block =>
  stack(
    steps.map((one) => paragraph(pdf, one, { mark: TICK })),
    0.5,
  );

/** Where the pages on safety begin, in a file that has them. */
export const SAFETY_PLACE = "safety";

export const caution = (pdf: Pdf, never: readonly string[]): Block =>
  framed(
    pdf,
    stack(
      [
        paragraph(pdf, [
          bold("Caution. "),
          { text: `${CAUTION} ${READ_FIRST.before} ` },
          { text: READ_FIRST.what, to: SAFETY_PLACE },
          { text: ` ${READ_FIRST.after}` },
        ]),
        ...never.map((one) => paragraph(pdf, [bold(one)], { mark: "–" })),
      ],
      0.3,
    ),
  );

/** Blocks in rows of two, so that a page may end between the rows. */
export function pairs(blocks: readonly Block[]): Block[] {
  const rows: Block[] = [];
  for (let i = 0; i < blocks.length; i += 2) {
    const [left, right] = [blocks[i], blocks[i + 1]];
    if (left) rows.push(beside(right ? [left, right] : [left], right ? [1, 1] : [1]));
  }
  return rows;
}

import { type Block, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { tableBlock } from "../../output/pdf/tableBlock.ts";
import { paragraph } from "../../output/pdf/words.ts";
import { heading } from "./blocks.ts";
import { markdown, type MarkdownBlock } from "./markdown.ts";

/** Letters of a text that is read from end to end. [mm] */
const CAP = 2.1;

/** A text page as blocks: each item of a list may stand on another page than the one before. */
export const prose = (pdf: Pdf, text: string): Block[] =>
  markdown(text).flatMap((block) => proseBlock(pdf, block));

function proseBlock(pdf: Pdf, block: MarkdownBlock): Block[] {
  switch (block.kind) {
    case "heading":
      return [heading(pdf, block.text)];
    case "paragraph":
      return [paragraph(pdf, runs(block.words), { capMm: CAP })];
    case "list":
      return block.items.map((words, i) =>
        paragraph(pdf, runs(words), { capMm: CAP, mark: block.numbered ? `${i + 1}` : "–", indentMm: 5 }),
      );
    case "table":
      return [
        stack([
          tableBlock(pdf, {
            columns: block.head.map((_, i) => ({ align: i === 0 ? "left" : "right", share: 1 })),
            head: [block.head.map((text) => ({ text }))],
            rows: block.rows.map((row) => row.map((text) => ({ text }))),
          }),
        ]),
      ];
  }
}

const runs = (words: readonly { text: string; strong: boolean }[]) =>
  words.map(({ text, strong }) => ({ text, bold: strong }));

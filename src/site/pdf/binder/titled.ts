import type { Block } from "../../../output/pdf/block.ts";
import type { Pdf } from "../../../output/pdf/document.ts";
import { paragraph } from "../../../output/pdf/words.ts";
import { bold } from "../blocks.ts";

/** The head of a sheet: its title, and in a sentence what it is for. */
export const titled = (pdf: Pdf, title: string, lead?: string): Block[] => [
  paragraph(pdf, [bold(title)], { capMm: 4.2 }),
  ...(lead === undefined ? [] : [paragraph(pdf, lead, { capMm: 2.2 })]),
];

/** A block that links may lead to. */
export function placed(pdf: Pdf, name: string, block: Block): Block {
  const { split } = block;
  return {
    ...block,
    draw: (x, y, widthMm) => {
      pdf.place(name, Math.max(0, y - 2));
      block.draw(x, y, widthMm);
    },
    ...(split && {
      split: (widthMm: number, roomMm: number) => {
        const parts = split(widthMm, roomMm);
        return parts && ([placed(pdf, name, parts[0]), parts[1]] as const);
      },
    }),
  };
}

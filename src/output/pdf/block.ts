import type { Pdf } from "./document.ts";

/** Something that takes the width it is given and tells its height; laid down from above. Millimetres of paper. */
export interface Block {
  readonly height: (widthMm: number) => number;
  readonly draw: (x: number, y: number, widthMm: number) => void;
  /** Cut in two where it may be, so that the first part fits a height; undefined where nothing of it would. */
  readonly split?: (widthMm: number, roomMm: number) => readonly [Block, Block] | undefined;
  /** Not left alone at the foot of a page: a heading. */
  readonly withNext?: boolean;
  /** Its entry in the list of contents. */
  readonly bookmark?: string;
}

const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);

/** Blocks one under the other, kept together. */
export function stack(blocks: readonly Block[], gapMm = 1.5): Block {
  return {
    height: (width) => sum(blocks.map((one) => one.height(width))) + gapMm * Math.max(0, blocks.length - 1),
    draw: (x, y, width) => {
      let at = y;
      for (const one of blocks) {
        one.draw(x, at, width);
        at += one.height(width) + gapMm;
      }
    },
  };
}

/** Blocks side by side, by their shares of the width. */
export function beside(blocks: readonly Block[], shares: readonly number[], gapMm = 4): Block {
  const whole = sum(shares);
  const widths = (width: number) =>
    shares.map((one) => ((width - gapMm * (blocks.length - 1)) * one) / whole);
  return {
    height: (width) => Math.max(0, ...blocks.map((one, i) => one.height(widths(width)[i] ?? 0))),
    draw: (x, y, width) => {
      let at = x;
      blocks.forEach((one, i) => {
        const own = widths(width)[i] ?? 0;
        one.draw(at, y, own);
        at += own + gapMm;
      });
    },
  };
}

/** A block in a frame. */
export function framed(pdf: Pdf, inner: Block, padMm = 1.5): Block {
  return {
    height: (width) => inner.height(width - 2 * padMm) + 2 * padMm,
    draw: (x, y, width) => {
      pdf.box([x, y], [width, inner.height(width - 2 * padMm) + 2 * padMm], { widthMm: 0.35 });
      inner.draw(x + padMm, y + padMm, width - 2 * padMm);
    },
  };
}

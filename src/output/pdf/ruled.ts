import type { Block } from "./block.ts";
import type { Pdf } from "./document.ts";

/** Above and below what stands between two lines. [mm] */
const PAD_MM = 0.2;

/** Blocks one under the other with a line above each; a page may end between any two of them. */
export function ruled(pdf: Pdf, blocks: readonly Block[]): Block {
  const high = (one: Block, width: number) => one.height(width) + 2 * PAD_MM;
  return {
    height: (width) => blocks.reduce((sum, one) => sum + high(one, width), 0),
    draw: (x, y, width) => {
      let at = y;
      for (const one of blocks) {
        pdf.line([x, at], [x + width, at], { widthMm: 0.2 });
        one.draw(x, at + PAD_MM, width);
        at += high(one, width);
      }
    },
    split: (width, room) => {
      let [at, count] = [0, 0];
      for (const one of blocks) {
        at += high(one, width);
        if (at > room) break;
        count += 1;
      }
      if (count === 0 || count === blocks.length) return undefined;
      return [ruled(pdf, blocks.slice(0, count)), ruled(pdf, blocks.slice(count))];
    },
  };
}

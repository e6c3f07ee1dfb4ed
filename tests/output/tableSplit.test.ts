import { expect, it } from "vitest";
import type { Block } from "../../src/output/pdf/block.ts";
import { createPdf } from "../../src/output/pdf/document.ts";
import { type Cell, tableBlock } from "../../src/output/pdf/tableBlock.ts";
import { fonts } from "./fonts.ts";
import { readPdf } from "./readPdf.ts";

const WIDTH_MM = 100;
const row = (text: string): Cell[] => [{ text }];
const heads = new Map([1, 2].map((piece) => [piece, row(`Piece ${piece}`)]));
const continued = new Map<readonly Cell[], Cell[]>();
for (const [piece, head] of heads) {
  const on = row(`Piece ${piece}, continued`);
  continued.set(head, on).set(on, on);
}

/** A table of two pieces with five lines each, cut where this many rows fit each page; the words of each page. */
async function pagesOf(perPage: number): Promise<string[][]> {
  const pdf = createPdf({ title: "A", subject: "A", date: "D:20260131120000+00'00'", fonts });
  const lines = (piece: number) => [1, 2, 3, 4, 5].map((line) => row(`${piece}.${line}`));
  const rows = [...heads].flatMap(([piece, head]) => [head, ...lines(piece)]);
  const table = tableBlock(pdf, {
    columns: [{ align: "left", share: 1 }],
    head: [row("Line")],
    rows,
    again: (one) => continued.get(one),
  });
  const rowMm = table.height(WIDTH_MM) / (rows.length + 1);
  let rest: Block | undefined = table;
  while (rest) {
    const parts: readonly [Block, Block] | undefined = rest.split?.(WIDTH_MM, (perPage + 1.5) * rowMm);
    pdf.sheet(210, 297);
    (parts?.[0] ?? rest).draw(10, 10, WIDTH_MM);
    rest = parts?.[1];
  }
  const { pages } = await readPdf(pdf.bytes());
  return pages.map(({ texts }) => texts.map(({ text }) => text.trim()).filter((text) => text !== "Line"));
}

it.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 11])(
  "where %i rows fit a page, each begins with its piece and none ends with the name of one",
  async (perPage) => {
    const pages = await pagesOf(perPage);
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      expect(page.length).toBeLessThanOrEqual(perPage);
      expect(page[0]).toMatch(/^Piece \d/);
      expect(page.at(-1)).not.toMatch(/^Piece/);
      let piece: string | undefined;
      for (const text of page) {
        piece = /^Piece (\d)/.exec(text)?.[1] ?? piece;
        if (!text.startsWith("Piece")) expect(text[0]).toBe(piece);
      }
    }
    const written = pages.flat().filter((text) => !text.startsWith("Piece"));
    expect(written).toEqual(["1", "2"].flatMap((piece) => [1, 2, 3, 4, 5].map((line) => `${piece}.${line}`)));
  },
);

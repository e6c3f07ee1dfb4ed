import { expect, it } from "vitest";
import { columnWidths } from "../../src/output/pdf/columnWidths.ts";
import { createPdf } from "../../src/output/pdf/document.ts";
import { tableBlock } from "../../src/output/pdf/tableBlock.ts";
import { paragraph } from "../../src/output/pdf/words.ts";
import { readPdf } from "./readPdf.ts";
import { fonts } from "./fonts.ts";

const empty = () => {
  const pdf = createPdf({ title: "A", subject: "A", date: "D:20260131120000+00'00'", fonts });
  pdf.sheet(210, 297);
  return pdf;
};

it.each(["114.797 (114-13/16)", "40.577 (40-9/16)", "± 0.125", "2026-11-04", "1470 × 620"])(
  "keeps the numbers of %s whole, however narrow the column and the line",
  async (text) => {
    const pdf = empty();
    const right = { align: "right" as const, share: 1 };
    const table = tableBlock(pdf, {
      columns: [{ align: "left", share: 20 }, right],
      head: [],
      rows: [[{ text: "circumference" }, { text }]],
    });
    table.draw(10, 10, 120);
    paragraph(pdf, text).draw(10, 60, 3);
    const { pages } = await readPdf(pdf.bytes());
    const written = pages[0]!.texts.map((one) => one.text.trim());
    for (const number of text.split(" ").filter((word) => /\d/.test(word)))
      expect(written.filter((one) => one.split(" ").includes(number))).toHaveLength(2);
    const inTable = pages[0]!.texts.filter(({ at }) => at[1] > 297 - 50);
    for (const { at, longMm } of inTable) expect(at[0] + longMm).toBeLessThan(130);
  },
);

it("widens the columns that need it from those that have it to spare", () => {
  expect(columnWidths([1, 1, 2], [0, 0, 0], 100)).toEqual([25, 25, 50]);
  const [a, b, c] = columnWidths([1, 1, 2], [40, 10, 20], 100) as [number, number, number];
  expect(a).toBeCloseTo(40, 9);
  expect(b).toBeGreaterThanOrEqual(10);
  expect(c).toBeGreaterThanOrEqual(20);
  expect(a + b + c).toBeCloseTo(100, 9);
  // Where all need more than there is, each lacks its share.
  expect(columnWidths([1, 1], [80, 60], 100).reduce((sum, one) => sum + one, 0)).toBeCloseTo(100, 9);
});

it("parts what belongs together before its bracket, never within a word", async () => {
  const pdf = empty();
  const gauge = "0.1345\u00a0in\u00a0(10\u00a0ga)";
  const width = (text: string) => pdf.width(text, { capMm: 2.3 });
  const how = { capMm: 2.3 };
  paragraph(pdf, gauge, how).draw(10, 10, width("0.1345\u00a0in\u00a0(10\u00a0g"));
  paragraph(pdf, gauge, how).draw(10, 60, width("0.1345\u00a0i"));
  const { pages } = await readPdf(pdf.bytes());
  const lines = pages[0]!.texts.map((one) => one.text.replaceAll("\u00a0", " ").trim());
  expect(lines).toEqual(["0.1345 in", "(10 ga)", "0.1345", "in", "(10 ga)"]);
});

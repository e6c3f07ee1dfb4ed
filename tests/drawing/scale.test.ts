import { expect, it } from "vitest";
import { fittingScales, ISO_SCALES, NARROW_SCALES, SHEET_SCALES } from "../../src/drawing/scale.ts";

it("has the scales of ISO 5455, table 1, and writes them as that standard does", () => {
  // ISO 5455:1979, clause 4: enlargement 50:1, 20:1, 10:1, 5:1, 2:1; full size 1:1; reduction 1:2 … 1:10 000.
  const written = ISO_SCALES.map(({ text }) => text);
  for (const text of [
    "50:1",
    "20:1",
    "10:1",
    "5:1",
    "2:1",
    "1:1",
    "1:2",
    "1:5",
    "1:10",
    "1:20",
    "1:50",
    "1:100",
    "1:200",
    "1:500",
    "1:1000",
    "1:10000",
  ])
    expect(written).toContain(text);
  expect(written).not.toContain("1:4");
});

it.each([
  ["ISO", ISO_SCALES],
  ["sheet", SHEET_SCALES],
  ["narrow", NARROW_SCALES],
] as const)("%s scales fall steadily", (_, scales) => {
  for (const [i, { unit }] of scales.entries()) if (i > 0) expect(unit).toBeGreaterThan(scales[i - 1]!.unit);
});

it.each([
  { widthMm: 1640, heightMm: 900, room: [166, 190], text: "1:10" },
  { widthMm: 1661, heightMm: 900, room: [166, 190], text: "1:20" },
  { widthMm: 100, heightMm: 1000, room: [166, 190], text: "1:10" },
  { widthMm: 166, heightMm: 10, room: [166, 190], text: "1:1" },
  { widthMm: 30, heightMm: 10, room: [166, 190], text: "5:1" },
] as const)("$widthMm × $heightMm mm goes on the sheet at $text", ({ text, ...what }) => {
  expect(fittingScales(ISO_SCALES, what)[0]!.text).toBe(text);
});

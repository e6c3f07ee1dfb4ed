import { describe, expect, it } from "vitest";
import { endsInStop, lineText } from "../../src/output/pdf/numberedLines.ts";

describe("what is written along a line of a template", () => {
  it.each([
    [[7], undefined, "7"],
    [[6], 12, "6. (12°)"],
    [[13, 1, 7], 12.34, "1 · 7 · 13 (12.3°)"],
    [[8, 2, 6], undefined, "2 · 6. · 8"],
  ])("%j with %s°", (numbers, bendDeg, text) => {
    expect(lineText(numbers, bendDeg)).toBe(text);
  });

  it("is known by its full stop, wherever in a row of numbers that stands", () => {
    const all = [
      "6.",
      "6. (12.0°)",
      "2 · 6. · 8",
      "1 · 9. (3.0°)",
      "7 (6.1°)",
      "P1",
      "Hood no. 6. half",
      "1 · 7",
    ];
    expect(all.filter(endsInStop)).toEqual(["6.", "6. (12.0°)", "2 · 6. · 8", "1 · 9. (3.0°)"]);
  });
});

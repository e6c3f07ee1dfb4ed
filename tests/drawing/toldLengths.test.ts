import { expect, it } from "vitest";
import { checkDistance, checkUnit } from "../../src/drawing/format.ts";
import { drawnThickness, thickness } from "../../src/drawing/thickness.ts";

it.each([
  [975.487, "in", "38.405 (38-13/32)"],
  [519.2, "in", "20.441 (20-7/16)"],
  [304.8, "in", "12"],
  [975.487, "mm", "975.5"],
] as const)("a distance of %d mm is checked to a thirty-second: in %s %s", (mm, units, words) => {
  expect(checkDistance(mm, units)).toBe(words);
});

it("the fineness of the fractions is told where there are any", () => {
  expect([checkUnit("in"), checkUnit("mm")]).toEqual([
    "inches, fractions to the nearest 1/32",
    "millimetres",
  ]);
});

it("a thickness on a drawing keeps its name", () => {
  expect(drawnThickness(3.4163, "in", "10 ga")).toBe("0.1345 (10 ga)");
  expect(thickness(3.4163, "in", "10 ga").value.replaceAll("\u00a0", " ")).toBe("0.1345 in (10 ga)");
  expect(drawnThickness(6.35, "in", null)).toBe("0.25 (1/4)");
  expect(drawnThickness(3, "mm", null)).toBe("3");
});

import { describe, expect, it } from "vitest";
import { scaleKey, trialsKey } from "../../src/site/trials/keptTrials.ts";
import { raiseIn } from "../../src/site/trials/raiseField.ts";

describe("the raise of a trial as it is typed", () => {
  it("is the raise itself where no reading at 0 is given", () => {
    expect(raiseIn("41,3", "", "mm")).toBe(41.3);
    expect(raiseIn("1-1/2", " ", "in")).toBeCloseTo(38.1, 9);
    for (const wrong of ["", "0", "-3", "x"])
      expect(raiseIn(wrong, "", "mm")).toMatch(
        /^Write the raise at the large edge as millimetres.*above 0\.$/,
      );
  });

  it("is the reading less that at 0, whatever that is", () => {
    expect(raiseIn("153.3", "112", "mm")).toBeCloseTo(41.3, 9);
    expect(raiseIn("12", "−30,5", "mm")).toBeCloseTo(42.5, 9);
    expect(raiseIn("6", "4-1/2", "in")).toBeCloseTo(38.1, 9);
  });

  it("says what is wrong with either", () => {
    expect(raiseIn("153.3", "x", "mm")).toMatch(/^Write the scale’s reading at 0 as .* or leave it empty/);
    expect(raiseIn("", "112", "mm")).toMatch(/^Write the scale’s reading as /);
    for (const raise of ["41.3", "112"])
      expect(raiseIn(raise, "112", "mm")).toContain(
        "where the scale shows 112 mm on the flat plate. Where the raise itself is written, leave",
      );
  });

  it("is kept for a part on a roll, beside its trials", () => {
    const keys = [scaleKey("a", "b"), scaleKey("a", "c"), scaleKey("b", "b"), trialsKey("a", "b")];
    expect(new Set(keys).size).toBe(4);
  });
});

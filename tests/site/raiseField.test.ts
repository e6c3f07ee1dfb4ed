import { describe, expect, it } from "vitest";
import { coneCase, reducer, roll } from "../forming/cases.ts";
import { scaleKey, trialsKey } from "../../src/site/trials/keptTrials.ts";
import { leftOut, questionOf } from "../../src/site/trials/question.ts";
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

it("says by the part why trials of a file are left out, as those of another part are", () => {
  const asked = {
    part: "cone",
    units: "mm",
    item: coneCase(reducer),
    roll: roll({ slide: { origin: [230, -200], angle: 60, travel: 300 } }),
    zones: 1,
    trials: [],
  } as const;
  const question = questionOf(asked);
  const good = { settingMm: 30, gapMm: 900 };
  expect(leftOut(question, [good])).toBe("");
  expect(leftOut(question, [good, { settingMm: 30, gapMm: 4000 }, { settingMm: 30, gapMm: 5000 }])).toMatch(
    /^ 2 left out, because that cannot have been this part: a gap of 4000 mm is longer than the edge itself/,
  );
  expect(leftOut(question, [{ zone: 1, settingMm: 30, largeMm: 900, smallMm: 800 }])).toMatch(
    /^ 1 left out, because that cannot have been this part: a right cone or pipe is corrected as a whole/,
  );
});

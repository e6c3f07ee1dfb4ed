import { describe, expect, it } from "vitest";
import { impossibleAny } from "../../src/forming/impossibleAny.ts";
import { coneCase, reducer, roll } from "../forming/cases.ts";
import { scaleKey, trialsKey } from "../../src/site/trials/keptTrials.ts";
import { leftOut, questionOf } from "../../src/site/trials/question.ts";
import { LARGEST_MM, lengthIn, numberIn } from "../../src/site/trials/find.ts";
import { raiseIn } from "../../src/site/trials/raiseField.ts";
import { withStorage } from "./bench/storage.ts";

describe("the raise of a trial as it is typed", () => {
  it("is the raise itself where no reading at 0 is given", () => {
    expect(raiseIn("41.3", "", "mm")).toBe(41.3);
    expect(raiseIn("1-1/2", " ", "in")).toBeCloseTo(38.1, 9);
    for (const wrong of ["", "0", "-3", "x"])
      expect(raiseIn(wrong, "", "mm")).toMatch(
        /^Write the raise at the large edge as millimetres.*above 0\.$/,
      );
  });

  it("is the reading less that at 0, whatever that is", () => {
    expect(raiseIn("153.3", "112", "mm")).toBeCloseTo(41.3, 9);
    expect(raiseIn("12", "−30.5", "mm")).toBeCloseTo(42.5, 9);
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

  it("takes no comma, as no field of a part does: it is the decimal sign to some and parts thousands to others", () => {
    const instead = /; use a point for decimals, and nothing between thousands\.$/;
    expect(raiseIn("1,350", "", "mm")).toMatch(instead);
    expect(raiseIn("41,3", "112", "mm")).toMatch(instead);
    expect(raiseIn("153", "112,5", "mm")).toMatch(instead);
    expect(raiseIn("soon", "", "mm")).not.toMatch(instead);
    expect(lengthIn("1,350", "mm", [0, LARGEST_MM])).toBeUndefined();
    expect(numberIn("85,5", [0, 100])).toBeUndefined();
    expect(numberIn("85.5", [0, 100])).toBe(85.5);
  });

  it("is kept for a part on a roll, beside its trials", () => {
    withStorage();
    const keys = [scaleKey("a", "b"), scaleKey("a", "c"), scaleKey("b", "b"), trialsKey("a", "b")];
    expect(new Set(keys).size).toBe(4);
  });
});

it("takes no raise that none is set to", () => {
  const slide = { origin: [230, -200] as [number, number], angle: 60, travel: 300 };
  const asked = (units: "mm" | "in") =>
    questionOf({ part: "cone", units, item: coneCase(reducer), roll: roll({ slide }), zones: 1, trials: [] });
  expect(impossibleAny(asked("mm"), { settingMm: 1e-7, gapMm: 900 })).toBe(
    "a raise of less than 0.05 mm is none that can be set",
  );
  expect(impossibleAny(asked("in"), { settingMm: 0.01, gapMm: 900 })).toMatch(/less than 0\.0005 in /);
  expect(impossibleAny(asked("mm"), { settingMm: 0.1, gapMm: 900 })).toBeNull();
  // The scale at 112 mm shows no more than it did on the flat plate.
  expect(raiseIn("112.01", "112", "mm")).toContain("is no raise");
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

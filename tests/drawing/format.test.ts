import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  angleText,
  areaText,
  columnLength,
  dimension,
  fixed,
  lengthText,
  massText,
  plain,
  volumeText,
} from "../../src/drawing/format.ts";
import { inchFraction } from "../../src/geometry/inches.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";

describe("lengths", () => {
  it.each([
    [900, "mm", "900"],
    [412.5, "mm", "412.5"],
    [412.4499, "mm", "412.4"],
    [0.04, "mm", "0"],
    [-0.04, "mm", "0"],
    [-12.34, "mm", "-12.3"],
    [304.8, "in", "12"],
    [412.75, "in", "16.25 (16-1/4)"],
    [744.5375, "in", "29.313 (29-5/16)"],
    [745, "in", "29.331 (29-11/32)"],
    // A check told to a thirty-second beside a card told to a sixteenth gave one length two fractions.
    [25.4 * 16.108, "in", "16.108 (16-3/32)"],
    [25.4 * 38.28, "in", "38.28 (38-9/32)"],
    [25.4 * (2 + 3 / 32), "in", "2.094 (2-3/32)"],
    [25.4 * 0.1406, "in", "0.141 (9/64)"],
    // Thin sheet: no rule has a mark near enough.
    [1.9, "in", "0.075"],
    [25.4 * 0.013, "in", "0.013"],
    [0, "in", "0"],
  ] as const)("%d mm in %s is %s", (mm, units, text) => {
    expect(dimension(mm, units)).toBe(text);
  });

  it("names the unit in sentences and keeps noughts in columns", () => {
    expect(lengthText(412.5, "mm")).toBe("412.5 mm");
    expect(lengthText(412.75, "in")).toBe("16.25 in (16-1/4)");
    expect(lengthText(304.8, "in")).toBe("12 in");
    expect(columnLength(900, "mm")).toBe("900.0");
    expect(columnLength(304.8, "in")).toBe("12.000");
  });
});

describe("fractions of an inch", () => {
  it.each([
    [25.4, 16, "1"],
    [25.4 / 2, 16, "1/2"],
    [25.4 * 3.9999, 16, "4"],
    [25.4 / 64, 16, "0"],
    [25.4 / 32, 32, "1/32"],
    [-25.4 * 1.25, 16, "-1-1/4"],
    [-25.4 / 64, 16, "0"],
  ] as const)("%d mm to 1/%d is %s", (mm, denominator, text) => {
    expect(inchFraction(mm, denominator)).toBe(text);
  });

  it("is never further off than half its last part, and always in lowest terms", () => {
    fc.assert(
      fc.property(even(0, 20_000), fc.constantFrom(8, 16, 32), (mm, denominator) => {
        const text = inchFraction(mm, denominator);
        const [, whole = "0", above = "0", below = "1"] = /^(\d+)??-?(?:(\d+)\/(\d+))?$/.exec(text)!;
        expect(Math.abs(Number(whole) + Number(above) / Number(below) - mm / 25.4)).toBeLessThanOrEqual(
          0.5 / denominator + 1e-9,
        );
        if (above !== "0") expect(Number(above) % 2).toBe(1);
      }),
      runs(300),
    );
  });
});

describe("other quantities", () => {
  it("has a plain hyphen for a minus and no minus before nought", () => {
    expect(fixed(-1.25, 2)).toBe("-1.25");
    expect(fixed(-0.001, 2)).toBe("0.00");
    expect(plain(-0.001, 2)).toBe("0");
    expect(plain(100, 0)).toBe("100");
  });
  it("is in the units of the part file", () => {
    expect(angleText(121.0812)).toBe("121.08°");
    expect(angleText(90)).toBe("90°");
    expect(massText(42.04, "mm")).toBe("42 kg");
    expect(massText(0.45359237 * 123.4, "in")).toBe("123 lb");
    expect(areaText(1_234_567, "mm")).toBe("1.23 m²");
    // A third decimal is told only where two would leave one figure.
    expect(areaText(46_700, "mm")).toBe("0.047 m²");
    expect(volumeText(1.2345e9, "mm")).toBe("1.23 m³");
    expect(volumeText(304.8 ** 3 * 0.0123, "in")).toBe("0.012 ft³");
    expect(areaText(304.8 ** 2 * 2.5, "in")).toBe("2.5 ft²");
    expect(volumeText(250e6, "mm")).toBe("250 litres");
    expect(volumeText(1.5e9, "mm")).toBe("1.5 m³");
    expect(volumeText(304.8 ** 3, "in")).toBe("1 ft³");
  });
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { printJson } from "../../src/output/json.ts";

it("puts short rows of numbers on one line and leaves all else indented", () => {
  expect(
    printJson({
      points: [
        [1, -2.5],
        [3e-7, 4],
      ],
      none: [],
      text: ["[\n  1\n]"],
      mixed: [1, "a"],
    }),
  ).toBe(`{
  "points": [
    [1, -2.5],
    [3e-7, 4]
  ],
  "none": [],
  "text": [
    "[\\n  1\\n]"
  ],
  "mixed": [
    1,
    "a"
  ]
}`);
});

it("means the same as plain JSON, for any value", () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(JSON.parse(printJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
    { seed: 7, numRuns: 500 },
  );
});

it.each([NaN, Infinity, -Infinity])("refuses to turn %d into nothing", (value) => {
  expect(() => printJson({ a: [{ heightMm: value }] })).toThrow(`heightMm: ${value}`);
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLength } from "../../src/input/length.ts";
import type { Units } from "../../src/input/units.ts";

const RUNS = { seed: 7, numRuns: 300 };

/** Text, units of the file, and the length: given as whole numbers where the division is the only rounding step. [mm] */
const lengths: [string, Units, number][] = [
  ["900", "mm", 900],
  ["900.5", "mm", 900.5],
  [".5", "mm", 0.5],
  ["12.", "mm", 12],
  ["+12", "mm", 12],
  ["-150", "mm", -150],
  ["- 150", "mm", -150],
  ["−150", "mm", -150],
  ["  12  ", "mm", 12],
  ["007", "mm", 7],
  ["12 mm", "in", 12],
  ["12mm", "in", 12],
  ["12 MM", "in", 12],
  ["1/2 mm", "mm", 0.5],
  ["6", "in", 152.4],
  ["0.1", "in", 2.54],
  ["1.1", "in", 27.94],
  ["3 in", "mm", 76.2],
  ["3in.", "mm", 76.2],
  ["3 inches", "mm", 76.2],
  ["1 inch", "mm", 25.4],
  ['3"', "mm", 76.2],
  ["3″", "mm", 76.2],
  ["3”", "mm", 76.2],
  ["3''", "mm", 76.2],
  ["12-3/8", "in", (99 * 127) / 40],
  ["12 3/8", "in", (99 * 127) / 40],
  ["12 - 3/8", "in", (99 * 127) / 40],
  ["12–3⁄8", "in", (99 * 127) / 40],
  ["12\u00a03/8\u00a0in", "mm", (99 * 127) / 40],
  ["-12-3/8", "in", (-99 * 127) / 40],
  ["5/8", "in", 15.875],
  ["5 / 8", "in", 15.875],
  ["9/8", "in", 28.575],
  ['4 5/8"', "mm", 117.475],
  ["4½", "in", 114.3],
  ["4-½", "in", 114.3],
  ["4 ½ in", "mm", 114.3],
  ["½", "in", 12.7],
  ["⅛", "in", 3.175],
  ["⅜", "in", 9.525],
  ["⅝", "in", 15.875],
  ["⅞", "in", 22.225],
  ["¼", "in", 6.35],
  ["¾", "in", 19.05],
  ["⅓", "in", 127 / 15],
  ["3'", "mm", 914.4],
  ["3 ft", "mm", 914.4],
  ["3 feet", "mm", 914.4],
  ["1 foot", "mm", 304.8],
  ["3' 4\"", "mm", 1016],
  ["3'4\"", "mm", 1016],
  ["3'-4\"", "mm", 1016],
  ["3 ft 4 in", "mm", 1016],
  ["3ft4in", "mm", 1016],
  ["3' 4", "mm", 1016],
  ["3' 4-1/2\"", "mm", 1028.7],
  ["3'-4 1/2\"", "mm", 1028.7],
  ["3'-4½\"", "mm", 1028.7],
  ["3′ 4⅝″", "mm", (325 * 127) / 40],
  ["3’ 4.5”", "mm", 1028.7],
  ["0' 6\"", "mm", 152.4],
  ["1' 11-7/8\"", "mm", (191 * 127) / 40],
  ["1/2'", "mm", 152.4],
  ["-3' 4\"", "mm", -1016],
  ["0", "mm", 0],
  ["-0", "mm", 0],
  ["0.30000000000000004", "mm", 0.30000000000000004],
];

it.each(lengths)("reads %s in a file in %s as %d mm", (text, units, mm) => {
  expect(readLength(text, units)).toEqual({ kind: "read", value: mm });
});

const LIKE_MM = "give a number, as in 12.5";
const LIKE_IN = `give a number, as in 12.375, 12-3/8 or 3' 4-1/2"`;

const refusals: [string, Units, string, string][] = [
  [
    "1' 12\"",
    "mm",
    "1' 12\" has twelve inches or more beside feet",
    "carry them over, as in 2' 3\" for 1' 15\"",
  ],
  ["", "mm", "there is no number here", LIKE_MM],
  ["   ", "in", "there is no number here", LIKE_IN],
  ["-", "mm", "there is no number here", LIKE_MM],
  ["4,625", "mm", "4,625 has a comma", "use a point for decimals, and nothing between thousands"],
  ["1,250.5", "in", "1,250.5 has a comma", "use a point for decimals, and nothing between thousands"],
  ["4,625 in", "in", "4,625 in has a comma", "use a point for decimals, and nothing between thousands"],
  ["1.250.000", "mm", "1.250.000 has two points", "use one point, before the decimals"],
  ["1/0", "in", "1/0 divides by 0", "write the fraction as in 5/8"],
  ["1/0", "mm", "1/0 divides by 0", "write the fraction as in 5/8"],
  ["12-3/0", "in", "12-3/0 divides by 0", "write the fraction as in 5/8"],
  ["5/8/3", "in", "5/8/3 has two fraction bars", "write one fraction, as in 12-5/8"],
  ["5/½", "in", "5/½ has two fraction bars", "write one fraction, as in 12-5/8"],
  ["1.5/2", "in", "1.5/2 has a point inside a fraction", "write either a fraction or a decimal number"],
  ["3/2.5", "in", "3/2.5 has a point inside a fraction", "write either a fraction or a decimal number"],
  [
    "4 9/8",
    "in",
    "4 9/8 has a fraction of one or more beside a whole number",
    "carry it over, as in 5-1/8 for 4-9/8",
  ],
  ["3\" 2'", "in", "3\" 2' has inches before feet", "write the feet first, as in 2' 3\""],
  ["3 in 2 ft", "in", "3 in 2 ft has inches before feet", "write the feet first, as in 2' 3\""],
  ["1'200", "mm", "1'200 has twelve inches or more beside feet", "carry them over, as in 2' 3\" for 1' 15\""],
  ["1e3", "mm", "1e3 is a power of ten", "write the number out, as in 1000"],
  ["1E308", "mm", "1E308 is a power of ten", "write the number out, as in 1000"],
  [".inf", "mm", ".inf is not a length", LIKE_MM],
  ["Infinity", "mm", "Infinity is not a length", LIKE_MM],
  [".nan", "mm", ".nan is not a length", LIKE_MM],
  ["abc", "in", "abc is not a length", LIKE_IN],
  ["--3", "mm", "--3 is not a length", LIKE_MM],
  ["0x10", "mm", "0x10 is not a length", LIKE_MM],
  ["12.5-3/8", "in", "12.5-3/8 is not a length", LIKE_IN],
  ["12 mm 3 in", "mm", "12 mm 3 in is not a length", LIKE_MM],
  [
    "1 250",
    "mm",
    "1 250 is more than one number",
    "write one number without spaces, or a fraction as in 12-3/8",
  ],
  [
    "1 1/2 1/2",
    "in",
    "1 1/2 1/2 is more than one number",
    "write one number without spaces, or a fraction as in 12-3/8",
  ],
  ["90 cm", "mm", "90 cm is in cm, which is not a unit here", "give it in mm or in"],
  ["1.2 m", "mm", "1.2 m is in m, which is not a unit here", "give it in mm or in"],
  ["10 ga", "mm", "10 ga is a gauge, which is for thicknesses only", LIKE_MM],
  [
    "5/8",
    "mm",
    "5/8 is a fraction, and this file is in millimetres",
    "write 5/8 in for inches, or the millimetres as a decimal number",
  ],
  [
    "12-⅜",
    "mm",
    "12-⅜ is a fraction, and this file is in millimetres",
    "write 12-3/8 in for inches, or the millimetres as a decimal number",
  ],
  ["9".repeat(400), "mm", `${"9".repeat(39)}… is not a length`, LIKE_MM],
];

it.each(refusals)("refuses %j in a file in %s", (text, units, problem, remedy) => {
  expect(readLength(text, units)).toEqual({ kind: "unreadable", problem, remedy });
});

it("takes a fraction without a mark where the file does not say its units", () => {
  expect(readLength("5/8", undefined)).toEqual({ kind: "read", value: 0.625 });
});

describe("for any length", () => {
  const whole = fc.integer({ min: 0, max: 2000 });
  const fraction = fc
    .record({ power: fc.integer({ min: 1, max: 6 }), pick: fc.nat(1_000_000) })
    .map(({ power, pick }) => ({ under: 2 ** power, over: 1 + (pick % (2 ** power - 1 || 1)) }));
  const value = (text: string, units: Units) => {
    const reading = readLength(text, units);
    return reading.kind === "read" ? reading.value : NaN;
  };

  it("gives back every decimal number of millimetres that was printed", () => {
    const number = fc.integer({ min: -20_000_000, max: 20_000_000 }).map((n) => n / 1000);
    fc.assert(
      fc.property(number, (mm) => {
        expect(value(String(mm), "mm")).toBe(mm === 0 ? 0 : mm);
      }),
      RUNS,
    );
  });

  it("converts decimal inches with one rounding", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000_000 }), (mils) => {
        // 127/5 mm an inch: thousandths of an inch times 127 over 5000, numerator and denominator exact.
        expect(value(`${Math.floor(mils / 1000)}.${String(mils % 1000).padStart(3, "0")}`, "in")).toBe(
          (mils * 127) / 5000,
        );
      }),
      RUNS,
    );
  });

  it("reads a fraction the same however it is set", () => {
    fc.assert(
      fc.property(whole, fraction, (n, { over, under }) => {
        const exact = ((n * under + over) * 127) / (under * 5);
        for (const text of [`${n}-${over}/${under}`, `${n} ${over}/${under}`, `${n} - ${over} / ${under}`])
          for (const mark of ["", '"', " in", "″"]) expect(value(text + mark, "in")).toBe(exact);
      }),
      RUNS,
    );
  });

  it("reads feet and inches as twelve times the feet and the inches", () => {
    fc.assert(
      fc.property(whole, fc.integer({ min: 0, max: 11 }), fraction, (feet, inches, { over, under }) => {
        const exact = (((feet * 12 + inches) * under + over) * 127) / (under * 5);
        for (const text of [
          `${feet}' ${inches}-${over}/${under}"`,
          `${feet} ft ${inches} ${over}/${under} in`,
        ])
          expect(value(text, "mm")).toBe(exact);
      }),
      RUNS,
    );
  });

  it("turns the sign and nothing else", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...lengths.filter(([text, , mm]) => mm > 0 && !/^\s*[+]/.test(text))),
        ([text, units, mm]) => {
          expect(value(`-${text.trimStart()}`, units)).toBe(-mm);
        },
      ),
      RUNS,
    );
  });
});

it("answers any text at all, and with a finite length or with words", () => {
  const signs = fc.constantFrom(...Array.from(`0123456789.,/-+'" eftinmgac°½⅝′″\u00a0`));
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: "binary" }),
        fc.array(signs).map((list) => list.join("")),
      ),
      (text) => {
        for (const units of ["mm", "in", undefined] as const) {
          const reading = readLength(text, units);
          if (reading.kind === "read") expect(Number.isFinite(reading.value)).toBe(true);
          else expect(`${reading.problem}; ${reading.remedy}`).toMatch(/^\P{Cc}+; \P{Cc}+$/u);
        }
      },
    ),
    { seed: 7, numRuns: 3000 },
  );
});

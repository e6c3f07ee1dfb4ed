import fc from "fast-check";
import { expect, it } from "vitest";
import * as z from "zod/mini";
import { check } from "../../src/input/check.ts";
import { alternativesOf } from "../../src/input/introspect.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { outlineOf, type Outline } from "../../src/input/outline.ts";
import { readPlainly } from "../../src/input/plainly.ts";
import type { Typed, TypedGroup } from "../../src/input/typed.ts";
import { treeOf } from "../../src/input/typedTree.ts";
import { Part } from "../../src/shapes/part.ts";

const tables = loadCatalogue();
const outlines = [...(alternativesOf(Part)?.options.values() ?? [])].map((schema) => outlineOf(schema));

/** What the reader of files makes of it; undefined where anything is wrong. */
function fully(typed: TypedGroup): Part | undefined {
  const { value, problems } = check(Part, treeOf(typed), tables);
  return problems.length === 0 ? value : undefined;
}

/** Numbers at and about every limit, and other ways to write one. */
const numbers = (outline: Extract<Outline, { kind: "number" }>): fc.Arbitrary<Typed> => {
  const { min, max } = outline.limits;
  const [least, most] = [min?.value ?? -500, max?.value ?? 500];
  const near = [least, most].flatMap((at) => [at - 1, at - 0.001, at, at + 0.001, at + 1]);
  const middle = fc.nat(1000).map((share) => least + Math.round((most - least) * share) / 1000);
  const number = fc.oneof({ weight: 6, arbitrary: middle }, fc.constantFrom(...near));
  return fc.oneof(
    { weight: 6, arbitrary: number.map((value) => String(Number(value.toFixed(outline.whole ? 0 : 3)))) },
    number.map((value) => value.toFixed(9)),
    number.map((value) => ` ${Math.round(value)} `),
    fc.constantFrom(
      ..."2.5 4.5 0 -0 00 -0.0 1e2 1e400 +3 .5 5. 12-3/8 10 ga 5/8 in 0x10 Infinity NaN 1,5 ١٢".split(" "),
    ),
    fc.constantFrom("12 3/8", "3' 4\"", "10 ga", "25 mm", "45°", "front", "2 in", "1".repeat(30), "400 MPa"),
  );
};

const texts: fc.Arbitrary<Typed> = fc.oneof(
  fc.constantFrom(
    "Cone",
    "12",
    "-0",
    "true",
    "null",
    " spout ",
    "a\nb",
    "\u200b",
    "\u00a0",
    "½ é",
    "x".repeat(130),
  ),
  fc.constantFrom(
    "a\u202eb",
    "\ud800",
    "\u00ad",
    "\u3164",
    "‘’",
    "Trichter Ø 400",
    "{",
    "#10",
    "10 ga",
    "\t",
  ),
  fc.string({ unit: "binary", maxLength: 8 }),
);

const hostile: fc.Arbitrary<Typed> = fc.constantFrom<Typed>(
  "",
  "  ",
  true,
  false,
  [],
  ["", ""],
  ["1", "2"],
  ["1", ""],
  ["1", "2", "3"],
  [["1"], "2"],
  {},
  { a: "" },
  { diameter: "5" },
  JSON.parse('{"__proto__": "1"}') as TypedGroup,
  "constructor",
);

const materials = fc.constantFrom(
  ...Object.keys(tables.catalogue.materials),
  ...["S235", "304L", "steel", "toString", "A 36", "304 "],
);

/** Mostly what the outline asks for, and now and then anything else. */
function answers(outline: Outline, key: string): fc.Arbitrary<Typed> {
  const right = ((): fc.Arbitrary<Typed> => {
    switch (outline.kind) {
      case "group":
        return groups(outline.keys);
      case "pair":
        return fc.tuple(...outline.items.map((item) => answers(item, ""))).map((items): Typed => items);
      case "number":
        return numbers(outline);
      case "text":
        return key === "material" ? materials : texts;
      case "choice":
        return fc.oneof(
          { weight: 9, arbitrary: fc.constantFrom(...outline.words) },
          fc.constantFrom(...outline.words.flatMap((word) => [word.toUpperCase(), ` ${word}`, `${word}s`])),
        );
      case "yes":
        return fc.oneof({ weight: 9, arbitrary: fc.boolean() }, fc.constantFrom("yes", "true"));
      case "list":
      case "other":
        return hostile;
    }
  })();
  return fc.oneof({ weight: 40, arbitrary: right }, hostile);
}

const groups = (keys: Readonly<Record<string, Outline>>): fc.Arbitrary<Typed> =>
  fc
    .tuple(
      fc.tuple(
        ...Object.entries(keys).map(([key, inner]) =>
          fc.tuple(
            fc.constant(key),
            answers(inner, key),
            // What must be there mostly is; the rest seldom, so that many a part is right as a whole.
            fc.nat(inner.optional ? 9 : 60).map((n) => (inner.optional ? n < 3 : n > 0)),
          ),
        ),
      ),
      fc.oneof(
        { weight: 30, arbitrary: fc.constant(undefined) },
        fc.tuple(fc.constantFrom("x", "yield", "heigth"), hostile),
      ),
    )
    .map(([entries, more]) => {
      const given = entries.flatMap(([key, value, isGiven]) => (isGiven ? [[key, value] as const] : []));
      return Object.fromEntries(more ? [...given, more] : given);
    });

/** The same part in the plainest words that its schema knows, so that much of what is tried is right. */
const plainOnes = (outline: Outline): fc.Arbitrary<Typed> =>
  outline.kind === "group"
    ? fc
        .tuple(
          ...Object.entries(outline.keys).map(([key, inner]) =>
            fc.tuple(
              fc.constant(key),
              plainValue(inner, key),
              fc.nat(3).map((n) => !inner.optional || n === 0),
            ),
          ),
        )
        .map((all) =>
          Object.fromEntries(all.flatMap(([key, value, on]) => (on ? [[key, value] as const] : []))),
        )
    : plainValue(outline, "");

function plainValue(outline: Outline, key: string): fc.Arbitrary<Typed> {
  if (outline.kind === "group") return plainOnes(outline);
  if (outline.kind === "pair")
    return fc.tuple(...outline.items.map((item) => plainValue(item, ""))).map((items): Typed => items);
  if (outline.kind === "number") {
    const { min, max, multipleOf = 1 } = outline.limits;
    const [least, most] = [Math.ceil(min?.value ?? -500), Math.floor(max?.value ?? 500)];
    const whole = fc.integer({ min: least, max: most }).map((n) => String(n - (n % multipleOf)));
    return fc.oneof({ weight: 40, arbitrary: whole }, fc.constantFrom("-0", "2.5", "4.5"));
  }
  if (outline.kind === "text")
    return key === "material"
      ? fc.constantFrom(...Object.keys(tables.catalogue.materials))
      : fc.constantFrom("Cone", "Trichter Ø 400", "12");
  return outline.kind === "choice"
    ? fc.constantFrom(...(key === "units" ? ["mm"] : outline.words))
    : fc.boolean();
}

it("knows of three shapes", () => {
  expect(outlines.length).toBe(3);
});

it.each(outlines)(
  "reads what is plainly written as the reader of files does, and nothing that is wrong",
  (outline) => {
    const tried = { plain: 0, right: 0, wrong: 0 };
    const compare = (typed: Typed) => {
      const plain = readPlainly(outline, typed as TypedGroup, tables.catalogue);
      const full = fully(typed as TypedGroup);
      if (full === undefined) tried.wrong++;
      else tried.right++;
      if (plain === undefined) return;
      tried.plain++;
      expect(plain).toEqual(full);
      // A report has its keys in the order of the schema.
      expect(JSON.stringify(plain)).toBe(JSON.stringify(full));
    };
    const options = { seed: 7, numRuns: 2000 };
    fc.assert(fc.property(groups(outline.kind === "group" ? outline.keys : {}), compare), options);
    fc.assert(fc.property(plainOnes(outline), compare), options);
    // Enough of each kind came up for the comparison to mean something.
    expect(tried.plain).toBeGreaterThan(500);
    expect(tried.right - tried.plain).toBeGreaterThan(100);
    expect(tried.wrong).toBeGreaterThan(500);
  },
);

it("leaves to the schema what has rules beyond its limits", () => {
  const typed = { units: "mm", height: "5" };
  const keys = (ruled: boolean): Record<string, Outline> => ({
    units: { kind: "choice", optional: false, words: ["mm"] },
    height: { kind: "number", optional: false, whole: false, limits: {}, ...(ruled && { ruled: true }) },
  });
  const read = (ruled: boolean) =>
    readPlainly({ kind: "group", optional: false, keys: keys(ruled) }, typed, tables.catalogue);
  expect(read(false)).toEqual({ units: "mm", height: 5 });
  expect(read(true)).toBeUndefined();
  const odd = z.number().check(z.refine((value) => value % 2 === 1));
  expect(outlineOf(odd)).toMatchObject({ kind: "number", ruled: true });
});

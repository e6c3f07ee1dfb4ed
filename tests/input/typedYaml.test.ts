import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import { alternativesOf, shapeOf } from "../../src/input/introspect.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readPart } from "../../src/input/readPart.ts";
import type { Typed, TypedGroup } from "../../src/input/typed.ts";
import { typedOf } from "../../src/input/typedTree.ts";
import { typedYaml } from "../../src/input/typedYaml.ts";
import { yamlTree } from "../../src/input/yamlTree.ts";
import { Part } from "../../src/shapes/part.ts";
import { typedExample } from "../../src/site/bench/typedExample.ts";
import { anyPart, runs } from "../arbitraries.ts";

const tables = loadCatalogue();
const file = (text: string, name = "part") => readPart(text, { path: `${name}.yaml`, ...tables });

/** What a file says when it is read again, by the reader that every file goes through. */
function again(text: string): Typed | undefined {
  const { tree, problems } = yamlTree(text);
  expect(problems, text).toEqual([]);
  return tree && typedOf(tree);
}

/** With the few decimals that somebody types, and no sign before a nought. */
const asTyped = (part: unknown): unknown =>
  JSON.parse(
    JSON.stringify(part, (_, value: unknown) =>
      typeof value === "number" ? Number(value.toFixed(4)) + 0 : value,
    ),
  );

it("writes any part so that it is read back the very same", () => {
  fc.assert(
    fc.property(anyPart, ({ name, ...exact }) => {
      const part = asTyped(exact) as Record<string, unknown>;
      const { part: read, problems } = file(typedYaml(typedExample(part)), name);
      expect(problems).toEqual([]);
      expect(read).toEqual({ ...part, name });
    }),
    runs(200),
  );
});

const HOSTILE = [
  ..."'\"#:,-?*&!|>%@`{}[]~=<\\".split(""),
  ...[
    "yes",
    "no",
    "true",
    "null",
    "~",
    "0x10",
    "0o7",
    ".inf",
    ".nan",
    "1e3",
    "-0",
    "007",
    "+5",
    "5.",
    "12.50",
  ],
  ...[
    "a: b",
    "a #b",
    "#10",
    "- x",
    "--- x",
    "...",
    "{ a: b }",
    "[1",
    `3' 4-1/2"`,
    "12-3/8",
    "10 ga",
    "&a *b",
  ],
  ...[
    "öäß",
    "数字",
    "🙂",
    "a\tb",
    "a\nb",
    "a\r\nb",
    "\u0000",
    "\u0085x",
    "a\u2028b",
    "x\ufeffy",
    "\u202eevil",
    "\ud800",
  ],
  ...[
    "line\n\n  indented\n# not a comment\n",
    "  padded  ",
    "x".repeat(5000),
    "word ".repeat(500),
    "2001-01-01",
  ],
  ...["<<", "=", "__proto__", "constructor", "1_000", "190:20:30", "1,5", "!!str x", "a\\nb", "'", '"', "''"],
];
const text = fc.oneof(
  fc.constantFrom(...HOSTILE),
  fc.tuple(fc.constantFrom(...HOSTILE), fc.constantFrom(...HOSTILE)).map(([a, b]) => a + b),
  fc.string({ unit: "binary", maxLength: 60 }),
);
/** As a field gives it: something in it, and no space about it. */
const filled = text.map((one) => one.trim() || "x");

it("writes any words so that they are read back the very same, wherever they stand", () => {
  fc.assert(
    fc.property(filled, filled, fc.boolean(), (one, two, yes) => {
      const typed: TypedGroup = {
        title: one,
        mirror: yes,
        largeEnd: { diameter: two, measured: one },
        offset: [one, two],
        machines: [{ name: two, rating: { thickness: one }, dies: ["1", one] }],
        notes: two,
        [`x${one}`]: two,
      };
      expect(again(typedYaml(typed))).toEqual(typed);
    }),
    { ...runs(2000), examples: HOSTILE.map((one) => [one.trim() || "x", one.trim() || "x", true]) },
  );
});

const demo = readdirSync("demo-data/parts").filter((name) => !name.includes(".trials."));

it.each(demo)("%s is read the same after it has been opened and saved", (name) => {
  const before = readFileSync(`demo-data/parts/${name}`, "utf8");
  const typed = again(before) as TypedGroup;
  const saved = typedYaml(typed);
  expect(again(saved)).toEqual(typed);
  expect(file(saved).part).toEqual(file(before).part);
  expect(file(saved).part).toBeDefined();
});

it("writes a file as the README does: its order, short groups on a line, sizes as they were typed", () => {
  const typed = {
    notes: "first\nsecond",
    quantity: "4",
    height: `3' 4-1/2"`,
    smallEnd: { offset: ["150", "0"], diameter: "400.00", measured: "outside" },
    largeEnd: { measured: "outside", diameter: "0900" },
    seam: { at: "", gap: " " },
    thickness: "10 ga",
    mirror: true,
    shape: "eccentric-cone",
    title: "Spout: #4",
    units: "mm",
    material: "s235",
  };
  expect(typedYaml(typed)).toBe(`shape: eccentric-cone
title: "Spout: #4"
units: mm
material: s235
thickness: 10 ga
largeEnd: { diameter: 0900, measured: outside }
smallEnd: { diameter: 400.00, measured: outside, offset: [ 150, 0 ] }
height: 3' 4-1/2"
quantity: 4
mirror: true
notes: |-
  first
  second
`);
});

it("has a place for every key that a part file knows", () => {
  const last = "zzz";
  for (const schema of alternativesOf(Part)?.options.values() ?? []) {
    for (const key of Object.keys(shapeOf(schema) ?? {})) {
      const lines = typedYaml({ [last]: "1", [key]: "1" }).split("\n");
      expect(lines[0], key).toBe(`${key}: 1`);
    }
  }
});

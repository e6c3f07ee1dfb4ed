import fc from "fast-check";
import { expect, it } from "vitest";
import { printProblem } from "../../src/input/problem.ts";
import { readJob } from "../../src/input/readJob.ts";
import { readPart } from "../../src/input/readPart.ts";
import { readShop } from "../../src/input/readShop.ts";
import { GOOD, tables } from "./files.ts";

const file = { path: "a.yaml", ...tables };

/** Pieces that YAML and the part file are made of, so that random texts come near to something meant. */
const PIECES = [
  ...GOOD.split(/(?<=[\n :{},[\]])|(?=[\n :{},[\]])/),
  ..."\n|\n  |\n- |: |, |[|]|{|}|# |\"|'|&a |*a|? || |---\n|...\n|!!str |!x |~|.nan|.inf|1e3|0x1|-|+|\t|\r\n|%|@|`|\\|>\n".split(
    "|",
  ),
  ...[
    "machines",
    "kind",
    "plate roll",
    "press brake",
    "dies",
    "stock",
    "name",
    "parts",
    "__proto__",
    "\0",
    "\ufeff",
    "½",
    "3' 4\"",
    "10 ga",
    "|\n",
  ],
  ...["99999999999999999999", "\u2028", "\ud800", "\u{1f600}", "constructor"],
];

const yamlish = fc.array(
  fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...PIECES) }, fc.string({ unit: "binary", maxLength: 5 })),
  {
    maxLength: 80,
  },
);

/** The good file with a few of its pieces left out, doubled or put elsewhere. */
const nearly = fc
  .array(fc.record({ at: fc.nat(GOOD.length), cut: fc.nat(12), piece: fc.constantFrom(...PIECES) }), {
    minLength: 1,
    maxLength: 4,
  })
  .map((edits) =>
    edits.reduce((text, { at, cut, piece }) => text.slice(0, at) + piece + text.slice(at + cut), GOOD),
  );

it("answers any text with a part or with lines, never with an exception", () => {
  fc.assert(
    fc.property(
      fc.oneof(
        yamlish.map((list) => list.join("")),
        nearly,
      ),
      (text) => {
        for (const read of [
          () => readPart(text, file),
          () => readShop(text, file),
          () => readJob(text, file, ["a", "b"]),
        ]) {
          const reading = read();
          const value = "part" in reading ? reading.part : reading.value;
          expect(reading.problems.length === 0).toBe(value !== undefined);
          const lines = text.split("\n");
          for (const problem of reading.problems) {
            expect(problem.line).toBeLessThanOrEqual(lines.length);
            expect(problem.column).toBeGreaterThan(0);
            // One line, whatever was in the text.
            expect(printProblem(problem)).toMatch(
              /^a\.yaml:\d+:\d+: [^\p{Cc}\p{Cs}\u2028\u2029]+: [^\p{Cc}\p{Cs}\u2028\u2029]+; [^\p{Cc}\p{Cs}\u2028\u2029]+$/u,
            );
            expect(problem.problem).not.toBe("something in it does not fit");
          }
        }
      },
    ),
    { seed: 7, numRuns: 1500 },
  );
});

it("lets nothing through but numbers that can be laid out", () => {
  const value = fc.oneof(
    fc.double().map(String),
    fc.constantFrom(...PIECES),
    fc.float().map((n) => n.toFixed(3)),
  );
  fc.assert(
    fc.property(value, (text) => {
      const { part } = readPart(GOOD.replace("700", text), file);
      if (part?.shape !== "eccentric-cone") return;
      expect(part.height).toBeGreaterThan(0);
      expect(part.height).toBeLessThanOrEqual(20_000);
    }),
    { seed: 7, numRuns: 500 },
  );
});

it.each([
  ["open brackets", "[".repeat(200_000)],
  ["open braces", "{a: ".repeat(100_000)],
  ["hyphens", "- ".repeat(100_000)],
  ["quotes", '"\n'.repeat(100_000)],
  ["anchors", "&a ".repeat(100_000)],
  ["references", `a: &a [1]\nb: [${"*a,".repeat(100_000)}]\n`],
  ["colons", ": ".repeat(100_000)],
  ["commas", `[${",".repeat(100_000)}`],
  ["documents", "---\n".repeat(100_000)],
  ["directives", "%YAML 1.2\n".repeat(50_000)],
  ["a long word", "a".repeat(900_000)],
  ["a long key", `${"a".repeat(900_000)}: 1`],
  ["a long number", GOOD.replace("900", "9".repeat(900_000))],
  ["long spaces", GOOD.replace("900", `"9${" ".repeat(900_000)}9"`)],
])("answers a file full of %s in seconds", (_, text) => {
  const before = performance.now();
  const { part, problems } = readPart(text, file);
  expect(part).toBeUndefined();
  expect(problems.length).toBeGreaterThan(0);
  expect(problems.length).toBeLessThan(20);
  for (const problem of problems) expect(printProblem(problem).length).toBeLessThan(1000);
  expect(performance.now() - before).toBeLessThan(30_000);
});

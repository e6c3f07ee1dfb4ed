import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fieldName, printProblems, refusalProblems, type FieldPath } from "../../src/input/problem.ts";
import { readPart } from "../../src/input/readPart.ts";
import { GOOD, tables } from "./files.ts";

const { locate } = readPart(GOOD, { path: "a.yaml", ...tables });

describe("locate", () => {
  it.each<[FieldPath, number, number, string]>([
    [["thickness"], 5, 12, "the value"],
    [["largeEnd", "diameter"], 6, 23, "the value in a group"],
    [["smallEnd", "offset", 1], 7, 61, "the item of a list"],
    [["largeEnd"], 6, 11, "the group"],
    [["largeEnd", "nothing"], 6, 1, "the key of the group where something is missing"],
    [["smallEnd", "offset", 7], 7, 47, "the key of the list where something is missing"],
    [["smallEnd", "nothing", "at", "all"], 7, 1, "the key of the nearest group that is there"],
    [["slant"], 1, 1, "the top of the file where something is missing there"],
    [[], 1, 1, "the file"],
    [["__proto__", "toString"], 1, 1, "nothing but the file for a key of the language"],
  ])("%j is at %d:%d: %s", (path, line, column) => {
    expect(locate(path)).toEqual({ line, column });
  });

  it("knows a file that has bad values too", () => {
    const { part, locate: find } = readPart(GOOD.replace("900", "x"), { path: "a.yaml", ...tables });
    expect(part).toBeUndefined();
    expect(find(["height"])).toEqual({ line: 8, column: 9 });
  });
});

it("prints what the geometry refuses like all else, in the order of the file", () => {
  const refusals = [
    { path: ["height"], problem: "it is too low", remedy: "give more" },
    { path: ["smallEnd", "offset", 0], problem: "it is too far", remedy: "give less" },
    { path: [], problem: "no slant is given", remedy: "give one" },
  ];
  expect(printProblems(refusalProblems(refusals, { path: "parts/a.yaml", locate }))).toEqual([
    "parts/a.yaml:1:1: file: no slant is given; give one",
    "parts/a.yaml:7:56: smallEnd.offset[1]: it is too far; give less",
    "parts/a.yaml:8:9: height: it is too low; give more",
  ]);
});

it("names fields as one would say them, and never breaks the line", () => {
  expect(fieldName(["machines", 1, "slide", "origin", 0])).toBe("machines[2].slide.origin[1]");
  expect(fieldName([])).toBe("file");
  expect(fieldName(["a\nb"])).toBe("a⏎b");
});

it("sorts by file, then line, then column, by number and not by text", () => {
  const at = (path: string, line: number, column: number) => ({
    ...{ path, line, column, field: "f", problem: "p", remedy: "r" },
  });
  const lines = printProblems([at("b", 1, 1), at("a", 10, 1), at("a", 9, 10), at("a", 9, 9)]);
  expect(lines.map((line) => line.slice(0, 6))).toEqual(["a:9:9:", "a:9:10", "a:10:1", "b:1:1:"]);
});

it("finds a bad value wherever it is moved to", () => {
  const blanks = fc.nat(20).map((n) => "\n".repeat(n));
  const spaces = fc.nat(20).map((n) => " ".repeat(n));
  fc.assert(
    fc.property(
      blanks,
      spaces,
      fc.boolean(),
      fc.shuffledSubarray(GOOD.trim().split("\n"), { minLength: 8 }),
      (above, before, crlf, lines) => {
        const order = lines.map((line) => line.replace("height: 700", `height: ${before}seven`));
        const text = above + order.join("\n");
        const { problems } = readPart(crlf ? text.replaceAll("\n", "\r\n") : text, {
          path: "a.yaml",
          ...tables,
        });
        const at = order.findIndex((line) => line.startsWith("height"));
        expect(problems).toMatchObject([
          { line: above.length + at + 1, column: "height: ".length + before.length + 1, field: "height" },
        ]);
      },
    ),
    { seed: 7, numRuns: 200 },
  );
});

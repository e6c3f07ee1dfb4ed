import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editDistance, either, nearest } from "../../src/input/nearest.ts";
import { partName } from "../../src/input/partName.ts";
import { onOneLine, shown } from "../../src/input/reading.ts";
import { cleanText, decode } from "../../src/input/text.ts";
import { showLength } from "../../src/input/units.ts";

const RUNS = { seed: 7, numRuns: 300 };

describe("nearest", () => {
  const keys = ["thickness", "title", "largeEnd", "smallEnd", "at", "lap", "s235", "s275", "304"];

  it.each([
    ["thikness", "thickness"],
    ["Thickness", "thickness"],
    ["THICKNESS", "thickness"],
    ["large_end", "largeEnd"],
    ["largend", "largeEnd"],
    ["smallend", "smallEnd"],
    ["titel", "title"],
    ["lpa", "lap"],
    ["S235", "s235"],
    ["s253", "s235"],
    ["s265", "s235"],
    ["AT", "at"],
    ["it", undefined],
    ["colour", undefined],
    ["", undefined],
    ["x".repeat(100_000), undefined],
  ])("of %j is %s", (word, known) => {
    expect(nearest(word, keys)).toBe(known);
  });

  it("counts letters put in, left out, changed and swapped", () => {
    expect(editDistance("", "abc")).toBe(3);
    expect(editDistance("abc", "acb")).toBe(1);
    expect(editDistance("abc", "abd")).toBe(1);
    expect(editDistance("kitten", "sitting")).toBe(3);
  });

  it("counts the same both ways, and nothing only between equals", () => {
    const word = fc
      .array(fc.constantFrom("a", "b", "c"), { maxLength: 8 })
      .map((letters) => letters.join(""));
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b) === 0).toBe(a === b);
        expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
      RUNS,
    );
  });

  it("lists as one would say it", () => {
    expect(either(["a"])).toBe("a");
    expect(either(["a", "b"])).toBe("a or b");
    expect(either(["a", "b", "c"])).toBe("a, b or c");
  });
});

describe("showLength", () => {
  it.each<[number, "mm" | "in", "up" | "down", string]>([
    [20_000, "mm", "down", "20000 mm"],
    [20_000, "in", "down", "787.4 in"],
    [0.2, "mm", "up", "0.2 mm"],
    [0.2, "in", "up", "0.007875 in"],
    [200, "in", "down", "7.874 in"],
    [-20_000, "in", "up", "-787.4 in"],
    [25.4, "in", "down", "1 in"],
    [152.4, "in", "up", "6 in"],
  ])("shows %d mm in %s, rounded %s, as %s", (mm, units, inwards, text) => {
    expect(showLength(mm, units, inwards)).toBe(text);
  });

  it("never names a limit that would itself be refused", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 20_000, noNaN: true }),
        fc.constantFrom<"mm" | "in">("mm", "in"),
        (mm, units) => {
          const value = (inwards: "up" | "down") =>
            Number(showLength(mm, units, inwards).split(" ")[0]) * (units === "in" ? 25.4 : 1);
          // Rounding of the last binary digit aside.
          expect(value("up")).toBeGreaterThanOrEqual(mm * (1 - 1e-14));
          expect(value("down")).toBeLessThanOrEqual(mm * (1 + 1e-14));
          expect(Math.abs(value("up") - mm)).toBeLessThan(mm * 0.0011);
        },
      ),
      RUNS,
    );
  });
});

describe("partName", () => {
  it.each([
    ["parts/feed-spout.yaml", "feed-spout"],
    ["A_1.2~b.YAML", "A_1.2~b"],
    ["job.yaml", "job"],
    ["console.yaml", "console"],
  ])("of %s is %s", (path, name) => {
    expect(partName(path)).toEqual({ kind: "read", value: name });
  });

  it.each([
    ["a.txt", "its name does not end in .yaml", "rename it to end in .yaml"],
    [".yaml", "there is no name before the ending", "give it a name of letters, digits and hyphens"],
    [".a.yaml", "its name begins with a point, which hides it on many systems", "rename it to a.yaml"],
    [
      "..yaml",
      "its name begins with a point, which hides it on many systems",
      "give it a name of letters, digits and hyphens",
    ],
    [
      "...yaml",
      "its name begins with a point, which hides it on many systems",
      "give it a name of letters, digits and hyphens",
    ],
    ["a..yaml", "its name ends in a point", "rename it to a.yaml"],
    ["con.yaml", "con is a name that some systems keep for a device", "rename it to part-con.yaml"],
    ["NUL.b.yaml", "NUL.b is a name that some systems keep for a device", "rename it to part-NUL.b.yaml"],
    ["lpt1.yml", "lpt1 is a name that some systems keep for a device", "rename it to part-lpt1.yaml"],
    ["index.yaml", "index is kept for the page that lists the parts", "rename it to part-index.yaml"],
    [
      "feed spout.yaml",
      "its name holds a space, which a web address or another system does not take as it is",
      "rename it to feed-spout.yaml",
    ],
    [
      "a?b#c.yaml",
      "its name holds ? or #, which a web address or another system does not take as it is",
      "rename it to a-b-c.yaml",
    ],
    [
      "Größe.yaml",
      "its name holds ö or ß, which a web address or another system does not take as it is",
      "rename it to Grosse.yaml",
    ],
    [
      "漏斗.yaml",
      "its name holds 漏 or 斗, which a web address or another system does not take as it is",
      "give it a name of letters, digits and hyphens",
    ],
    [
      "a\u0007b.yaml",
      "its name holds \\u0007, which a web address or another system does not take as it is",
      "rename it to a-b.yaml",
    ],
    [
      "a\nb.yaml",
      "its name holds ⏎, which a web address or another system does not take as it is",
      "rename it to a-b.yaml",
    ],
    [`${"a".repeat(81)}.yaml`, "its name is longer than 80 characters", "give it a shorter name"],
  ])("refuses %j", (path, problem, remedy) => {
    expect(partName(path)).toEqual({ kind: "unreadable", problem, remedy });
  });

  it("takes a backslash for the end of a folder only where the system does", () => {
    expect(partName("C:\\parts\\a.yml", "\\")).toEqual({ kind: "read", value: "a" });
    expect(partName("parts/a\\b.yml", "/")).toEqual({
      kind: "unreadable",
      problem: "its name holds \\, which a web address or another system does not take as it is",
      remedy: "rename it to a-b.yaml",
    });
  });

  it("suggests only names that it would take, and lets only such pass that a web address takes as they are", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (name) => {
        const reading = partName(`${name}.yaml`);
        if (reading.kind === "read") expect(encodeURIComponent(reading.value)).toBe(reading.value);
        const suggested =
          reading.kind === "unreadable" ? /^rename it to (.*\.yaml)$/.exec(reading.remedy)?.[1] : undefined;
        if (suggested !== undefined) expect(partName(suggested).kind).toBe("read");
      }),
      { seed: 7, numRuns: 1000 },
    );
  });
});

describe("text of a file in a message", () => {
  it("stays on one line and harmless", () => {
    expect(shown("a\nb\tc\u0000\u001b[31m\u202e")).toBe("a⏎b⇥c\\u0000\\u001b[31m\\u202e");
    expect(shown("é ½ 漏 \u{1f600}")).toBe("é ½ 漏 \u{1f600}");
  });

  it("is cut to a glance, not through a character", () => {
    expect(shown("x".repeat(40))).toBe("x".repeat(40));
    expect(shown("x".repeat(41))).toBe(`${"x".repeat(39)}…`);
    expect(shown(`${"x".repeat(38)}\u{1f600}xxxx`)).toBe(`${"x".repeat(38)}…`);
    expect(onOneLine("x".repeat(41))).toBe("x".repeat(41));
  });
});

describe("decode", () => {
  const bytes = (...list: number[]) => Uint8Array.from(list);
  it.each([
    [
      "UTF-16 little end first",
      bytes(0xff, 0xfe, 0x61, 0),
      "it is saved as UTF-16",
      "save it as UTF-8 in the editor",
    ],
    [
      "UTF-16 big end first",
      bytes(0xfe, 0xff, 0, 0x61),
      "it is saved as UTF-16",
      "save it as UTF-8 in the editor",
    ],
    ["a zero byte", bytes(0x61, 0, 0x62), "it is not a text file", "check that this is the file you mean"],
    [
      "half a character",
      bytes(0x61, 0xc3),
      "it is not a text file in UTF-8",
      "save it as UTF-8 in the editor",
    ],
    [
      "Latin-1",
      bytes(0x47, 0x72, 0xf6, 0xdf, 0x65),
      "it is not a text file in UTF-8",
      "save it as UTF-8 in the editor",
    ],
    [
      "more than a megabyte",
      new Uint8Array(1_000_001).fill(0x20),
      "it is larger than 1 MB",
      "check that this is the file you mean",
    ],
  ])("refuses %s", (_, data, problem, remedy) => {
    expect(decode(data)).toEqual({ kind: "unreadable", problem, remedy });
  });

  it("takes UTF-8 with and without the mark in front", () => {
    const text = "título: ½ 漏\n";
    for (const mark of ["", "\ufeff"]) {
      const decoded = decode(new TextEncoder().encode(mark + text));
      expect(decoded.kind === "read" && cleanText(decoded.value)).toEqual({ kind: "read", value: text });
    }
  });
});

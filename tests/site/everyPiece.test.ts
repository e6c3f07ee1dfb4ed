import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Report } from "../../src/report/report.ts";
import { cutParagraphs, girthSentence } from "../../src/site/words/blankWords.ts";
import { keyFigures } from "../../src/site/words/keyFigures.ts";
import { numbersIn } from "../../src/site/words/numbers.ts";
import { workedFigures } from "../../src/site/words/worked.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { catalogue, named, reportOf } from "../parts.ts";

/** A part in pieces; the two seams of this one lie at 270° and 90°, and its offset makes them differ. */
const askew = (more: object = {}) =>
  reportOf(
    named({
      shape: "square-to-round",
      thickness: 3,
      rectangularEnd: { length: 600, width: 500, measured: "inside" },
      roundEnd: { diameter: 300, measured: "inside", offset: [120, 0] },
      height: 450,
      pieces: 2,
      ...more,
    }),
  );

const tape = (text: string): string => text.replaceAll("\u00a0", " ");
/** For which pieces a figure speaks, by its own name. */
function spokenFor(name: string, { blanks }: Report): Report["blanks"] {
  const some = /, pieces? ([\d, and]+)$/.exec(name)?.[1]?.match(/\d+/g)?.map(Number);
  return blanks.filter(({ piece }) => !some || some.includes(piece));
}

function judge(report: Report): void {
  const say = numbersIn(report.part.units);
  const plates = keyFigures(report).filter(({ name }) => name.startsWith("Plate as drawn"));
  const worked = workedFigures(report, catalogue.materials["s235"]!);
  const spoken = plates.flatMap(({ name, value }) => {
    const size = value.split(" × ").map((one) => Number.parseFloat(one.replaceAll(/[^\d.]/g, "")));
    const anyOf = name.includes("for any of");
    const blanks = spokenFor(name, report);
    for (const { asDrawn } of blanks)
      if (anyOf) {
        expect(asDrawn.xMm).toBeLessThan(size[0]! + 0.06);
        expect(asDrawn.yMm).toBeLessThan(size[1]! + 0.06);
      } else expect(`${say.bare(asDrawn.xMm)} × ${say.bare(asDrawn.yMm)} mm`).toBe(value);
    const numbers = worked.get(name)!.numbers;
    for (const mm of value.replace(" mm", "").split(" × ")) expect(numbers).toContain(mm);
    return blanks.map(({ piece }) => piece);
  });
  expect(spoken.toSorted((p, q) => p - q)).toEqual(report.blanks.map(({ piece }) => piece));

  const cut = tape(cutParagraphs(report).flat().join(" "));
  const girths = tape(girthSentence(report, { brief: true }));
  for (const { asDrawn, edges, massKg, cutLengthMm } of report.blanks) {
    expect(cut).toContain(tape(`${say.bare(asDrawn.xMm)} × ${say.bare(asDrawn.yMm)} mm`));
    for (const figure of [say.mass(massKg), say.length(cutLengthMm)]) expect(cut).toContain(tape(figure));
    for (const { name, lengthMm } of edges)
      if (lengthMm > 0) expect(girths).toContain(tape(`${name}: ${say.bare(lengthMm)}`));
  }
}

describe("what is said of a blank holds for every one that it speaks of", () => {
  it("in pieces that differ, and in such that are alike", () => {
    const report = askew({ seam: { at: 270 } });
    const two = reportOf(
      named({
        shape: "right-cone",
        thickness: 3,
        largeEnd: { diameter: 600, measured: "inside" },
        smallEnd: { diameter: 300, measured: "inside" },
        height: 400,
        pieces: 2,
      }),
    );
    expect(report.blanks.map(({ sameAs }) => sameAs)).toEqual([null, null]);
    expect(keyFigures(report).map(({ name }) => name)).toEqual(
      expect.arrayContaining(["Plate as drawn, piece 1", "Plate as drawn, piece 2"]),
    );
    expect(keyFigures(two).map(({ name }) => name)).toContain("Plate as drawn, each of 2");
    for (const one of [report, two]) judge(one);
  });

  it("and of more than two sizes the plate that takes any of them is told", () => {
    const report = askew({ pieces: 4, seam: { at: 90 }, height: 600 });
    expect(keyFigures(report).map(({ name }) => name)).toContain("Plate as drawn, for any of 4");
    judge(report);
  });

  it("in any part of any number of pieces", () => {
    fc.assert(
      // What every shape can be split in, where its seams may lie.
      fc.property(anyPart, fc.constantFrom(1, 2, 4), (part, pieces) => {
        judge(reportOf({ ...part, pieces, seam: { at: 0 } }));
      }),
      runs(40),
    );
  });

  it("tells where every seam lies", () => {
    const words = cutParagraphs(askew({ seam: { at: 270 } })).flat();
    expect(words).toContain("The 2 seams lie at 270° and 90° in plan, counter-clockwise from the right.");
    expect(cutParagraphs(askew({ pieces: 1, seam: { at: 270 } })).flat()).toContain(
      "The seam lies at 270° in plan, counter-clockwise from the right.",
    );
  });
});

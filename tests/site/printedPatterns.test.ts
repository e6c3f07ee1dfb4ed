import fc from "fast-check";
import { expect, it } from "vitest";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import type { Report } from "../../src/report/report.ts";
import { pairPaper } from "../../src/site/parts/pairPaper.ts";
import { ACROSS, COLUMN, pairedPaper, patternPaper } from "../../src/site/parts/papers.ts";
import { markingOf } from "../../src/site/words/marking.ts";
import { eccentricCone, rightCone, runs, squareToRound } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";

/** Lower than this no pattern is printed. [mm] */
const LEAST_MM = 46;
/** So many times coarser than alone across the sheet may the coarsest of several patterns be. [-] */
const COARSER = 3;

/** Every room that a pattern is printed in: on the part's page, for both papers, and on its card, large and small. */
function papersOf(report: Report) {
  const own = report.blanks.filter(({ sameAs }) => sameAs === null);
  const marking = markingOf(report);
  const page = own.length > 1 ? pairedPaper : patternPaper;
  const cards = [62, 100, 180].map((heightMm) =>
    own.length > 1
      ? pairPaper(report, COLUMN, { widthMm: ACROSS.widthMm, gapMm: 4, footMm: 12, heightMm })
      : { paper: { ...ACROSS, heightMm } },
  );
  return [page(report, marking, "short"), page(report, marking, "tall"), ...cards].map(({ paper }) => paper);
}

function judge(report: Report): void {
  const own = report.blanks.filter(({ sameAs }) => sameAs === null);
  const alone = Math.max(...own.map((blank) => patternDrawing(report, { blank, paper: ACROSS }).unit));
  for (const paper of papersOf(report)) {
    expect(paper.heightMm).toBeGreaterThanOrEqual(LEAST_MM);
    for (const blank of own)
      expect(patternDrawing(report, { blank, paper }).unit / alone).toBeLessThanOrEqual(COARSER);
  }
}

const inInches = fc.boolean().map((inches) => ({ units: inches ? ("in" as const) : ("mm" as const) }));

it.each([
  ["right cone", rightCone, [1, 2, 3, 4, 6]],
  ["eccentric cone", eccentricCone, [1, 2, 3, 4, 6]],
  ["square-to-round", squareToRound, [1, 2, 4]],
] as const)(
  "a %s in any number of pieces is printed at a scale that can be read",
  (_, shape, numbers) => {
    fc.assert(
      fc.property(shape, fc.constantFrom(...numbers), inInches, (part, pieces, units) => {
        judge(reportOf({ ...part, ...units, pieces, seam: { at: 0 } }));
      }),
      runs(8),
    );
  },
  120_000,
);

it("four blanks that differ are printed side by side, two by two", () => {
  const report = reportOf({
    name: "part",
    title: "A hopper",
    units: "mm",
    material: "s235",
    shape: "square-to-round",
    thickness: 12,
    rectangularEnd: { length: 760, width: 760, measured: "outside" },
    roundEnd: { diameter: 315, measured: "outside", offset: [100, 50] },
    height: 635,
    pieces: 4,
  });
  expect(report.blanks.map(({ sameAs }) => sameAs)).toEqual([null, null, null, null]);
  judge(report);
  expect(pairedPaper(report, markingOf(report), "short").stacked).toBe(false);
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { blankInHand } from "../../src/drawing/blankInHand.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import type { Paper } from "../../src/drawing/paper.ts";
import type { Blank, Report } from "../../src/report/report.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { blankPaper } from "../../src/site/forming/papers.ts";
import { eccentricCone, rightCone, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";
import { coveredLabels, outsideSheet } from "./judge.ts";

/** The names that steps of a work sheet speak of. */
function missing({ labels }: Drawing, blank: Blank): string[] {
  const texts = labels.map(({ text }) => text);
  const names = blank.edges.filter(({ lengthMm }) => lengthMm > 0).map(({ name }) => name);
  return [...names, "through the rolls"].filter((name) => !texts.includes(name));
}

const rolled = readBinder().parts.filter(({ report }) => report.forming.route === "roll");

it.each(rolled)("$report.part.name: the blank on its work sheet tells every edge by name", ({ report }) => {
  const [blank] = report.blanks;
  const drawing = blankInHand(report, { paper: blankPaper(report), blank: blank! });
  expect(blank!.edges.map(({ name }) => name)).toEqual(expect.arrayContaining(["seam 1", "seam 2"]));
  expect(missing(drawing, blank!)).toEqual([]);
});

it("is there for any cone, in a low place too: seams, ends, and the way through the rolls", () => {
  let drawn = 0;
  const draw = (report: Report, paper: Paper) => {
    for (const blank of report.blanks) {
      const drawing = blankInHand(report, { paper, blank });
      expect(missing(drawing, blank)).toEqual([]);
      expect(coveredLabels(drawing)).toEqual([]);
      expect(outsideSheet(drawing)).toEqual([]);
      drawn += 1;
    }
  };
  fc.assert(
    fc.property(fc.oneof(rightCone, eccentricCone), (part) => {
      const report = reportOf(part);
      draw(report, blankPaper(report));
      draw(report, { ...blankPaper(report), heightMm: 38 });
    }),
    runs(100),
  );
  expect(drawn).toBeGreaterThan(200);
});

it("is drawn as large as the sheet of a part of few rows has room for", () => {
  const plain = rolled.find(({ report }) => report.forming.inspection!.rows.length < 15)!;
  expect(blankPaper(plain.report).heightMm).toBeGreaterThanOrEqual(58);
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { closureSketch } from "../../src/drawing/closureSketch.ts";
import { isometricDrawing } from "../../src/drawing/isometric.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import { CARD, FULL, NARROW, type Paper, SHEET } from "../../src/drawing/paper.ts";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import { trueShapeDrawing } from "../../src/drawing/trueShape.ts";
import { viewsDrawing } from "../../src/drawing/views.ts";
import type { Report } from "../../src/report/report.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";
import { coveredLabels, outsideSheet } from "./judge.ts";

const drawings: readonly [string, (report: Report, paper: Paper) => Drawing | undefined][] = [
  ["pattern", (report, paper) => patternDrawing(report, { paper, blank: report.blanks[0]! })],
  ["views", (report, paper) => viewsDrawing(report, { paper })],
  ["true lengths", (report, paper) => trueShapeDrawing(report, { paper, blank: report.blanks.at(-1)! })],
  ["part-rolled end", (report, paper) => closureSketch(report, { paper })],
];

const inEitherUnit = fc
  .record({ part: anyPart, inches: fc.boolean(), divisions: fc.constantFrom(6, 12, 16, 24) })
  .map(({ part, inches, divisions }) => ({
    ...part,
    divisions,
    units: inches ? ("in" as const) : ("mm" as const),
  }));

it.each(drawings)("%s: no label covers another, nothing leaves the sheet, for any part", (_, draw) => {
  let drawn = 0;
  fc.assert(
    fc.property(inEitherUnit, (part) => {
      const report = reportOf(part);
      for (const paper of [SHEET, NARROW]) {
        const drawing = draw(report, paper);
        if (!drawing) continue;
        drawn += 1;
        expect(coveredLabels(drawing)).toEqual([]);
        expect(outsideSheet(drawing)).toEqual([]);
        expect(drawing.paperWidthMm).toBeCloseTo(paper.widthMm, 6);
      }
    }),
    runs(60),
  );
  expect(drawn).toBeGreaterThan(20);
});

it("full size: the same, at 1:1", () => {
  fc.assert(
    fc.property(inEitherUnit, (part) => {
      const report = reportOf(part);
      const drawing = patternDrawing(report, { paper: FULL, blank: report.blanks[0]! });
      expect(drawing.unit).toBe(1);
      expect(coveredLabels(drawing)).toEqual([]);
      expect(outsideSheet(drawing)).toEqual([]);
    }),
    runs(20),
  );
});

it("in the round: nothing leaves the card, for any part", () => {
  fc.assert(
    fc.property(inEitherUnit, (part) => {
      const drawing = isometricDrawing(reportOf(part), { paper: CARD });
      expect(outsideSheet(drawing)).toEqual([]);
      expect(drawing.scale).toBe("not to scale");
    }),
    runs(60),
  );
});

it("what must be on a pattern is on it, for any part: overall sizes, seams, the first and the last number", () => {
  fc.assert(
    fc.property(inEitherUnit, (part) => {
      const report = reportOf(part);
      const { labels, dropped } = patternDrawing(report, { paper: SHEET, blank: report.blanks[0]! });
      expect(dropped.filter((name) => /^overall/.test(name))).toEqual([]);
      const numbers = labels.filter(({ role }) => role === "number").map(({ text }) => text);
      expect(numbers.some((text) => /^1(–|$)/.test(text))).toBe(true);
    }),
    runs(60),
  );
});

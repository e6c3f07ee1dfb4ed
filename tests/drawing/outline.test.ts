import fc from "fast-check";
import { expect, it } from "vitest";
import { FULL, SHEET } from "../../src/drawing/paper.ts";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import { trace } from "../../src/drawing/pen.ts";
import { svgPen } from "../../src/drawing/svgPath.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";
import { areaOf, walkingPen } from "./judge.ts";

it("a pen that measures area finds the blank's in the outline, at any scale and face", () => {
  fc.assert(
    fc.property(anyPart, fc.constantFrom(SHEET, FULL), (part, paper) => {
      const report = reportOf(part);
      const blank = report.blanks[0]!;
      const drawing = patternDrawing(report, { paper, blank });
      const outlines = drawing.strokes.filter(({ kind }) => kind === "outline");
      expect(outlines).toHaveLength(1);
      const pen = walkingPen();
      trace(outlines[0]!.shape, pen);
      // 0.01 mm all along the edge is the most that a polyline within its tolerance can differ by.
      expect(Math.abs(areaOf(pen.points) - blank.areaMm2)).toBeLessThanOrEqual(0.01 * blank.cutLengthMm);
    }),
    runs(60),
  );
});

/** Corners of a path of straight pieces in an SVG. */
const corners = (d: string) =>
  [...d.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]): [number, number] => [Number(x), Number(y)]);

it("the SVG pen turns the sheet over once, leaves out what is not seen, and keeps the area", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const report = reportOf(part);
      const blank = report.blanks[0]!;
      const drawing = patternDrawing(report, { paper: SHEET, blank });
      const pen = svgPen(drawing);
      const d = pen.d(drawing.strokes.find(({ kind }) => kind === "outline")!.shape);
      const points = corners(d);
      expect(points.length).toBeLessThanOrEqual(blank.outline.length);
      // Counter-clockwise on the sheet is clockwise with y down: the area changes its sign, and nothing else.
      const area = -areaOf(points) * drawing.unit ** 2;
      const unseen = 0.025 * drawing.unit * blank.cutLengthMm;
      expect(Math.abs(area - blank.areaMm2)).toBeLessThanOrEqual(unseen);
      const [, , wide, high] = pen.viewBox.split(" ").map(Number) as [number, number, number, number];
      expect(wide).toBeCloseTo(SHEET.widthMm, 3);
      for (const [x, y] of points) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(wide);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(high);
      }
    }),
    runs(60),
  );
});

it("arcs keep their way round when the sheet is turned over", () => {
  const pen = svgPen({ extent: { left: 0, bottom: 0, right: 100, top: 100 }, unit: 1 });
  // A quarter from the right up to the top, counter-clockwise: in SVG sweep flag 0.
  const d = pen.d({ type: "arc", centre: [50, 50], radius: 10, fromRad: 0, toRad: Math.PI / 2 });
  expect(d).toBe("M60,50A10,10,0,0,0,50,40");
  expect(pen.d({ type: "arc", centre: [50, 50], radius: 10, fromRad: Math.PI / 2, toRad: 0 })).toBe(
    "M50,40A10,10,0,0,1,60,50",
  );
  expect(pen.d({ type: "arc", centre: [50, 50], radius: 10, fromRad: 0, toRad: 2 * Math.PI })).toMatch(
    /^M60,50A10,10.*A10,10.*Z$/,
  );
});

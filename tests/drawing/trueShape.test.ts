import fc from "fast-check";
import { expect, it } from "vitest";
import { SHEET } from "../../src/drawing/paper.ts";
import { trueShapeDrawing } from "../../src/drawing/trueShape.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";

it("its slopes are the true lengths of the marking table: elements to the right, diagonals to the left", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const report = reportOf(part);
      const drawing = trueShapeDrawing(report, { paper: SHEET, blank: report.blanks[0]! });
      const slopes = drawing.strokes.flatMap(({ kind, shape }) =>
        kind === "thin" && shape.type === "path"
          ? [
              {
                x: shape.points[0]![0],
                long: Math.hypot(
                  shape.points[1]![0] - shape.points[0]![0],
                  shape.points[1]![1] - shape.points[0]![1],
                ),
              },
            ]
          : [],
      );
      const rows = report.hand.rows.filter(({ piece }) => piece === 1);
      for (const { trueMm, planMm, next } of rows) {
        const steep = planMm < 0.06;
        if (!steep) expect(slopes.some(({ x, long }) => x > 0 && Math.abs(long - trueMm) < 0.051)).toBe(true);
        if (next && Math.sqrt(next.diagonalMm ** 2 - trueMm ** 2 + planMm ** 2) > 0.06)
          expect(slopes.some(({ x, long }) => x < 0 && Math.abs(long - next.diagonalMm) < 0.051)).toBe(true);
      }
    }),
    runs(60),
  );
});

it("names every line once, like ones together", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const report = reportOf(part);
      const { labels, dropped } = trueShapeDrawing(report, { paper: SHEET, blank: report.blanks[0]! });
      const names = [
        ...labels.filter(({ role }) => role === "number").map(({ text }) => text),
        ...dropped.map((one) => one.replace("line ", "")),
      ];
      const elements = names.filter((name) => /^\d/.test(name) && !name.includes("/"));
      const numbers = elements.flatMap((name) =>
        name.split(", ").flatMap((run) => {
          const [from, to] = run.split(" to ").map(Number) as [number, number | undefined];
          return Array.from({ length: (to ?? from) - from + 1 }, (_, i) => from + i);
        }),
      );
      const rows = report.hand.rows.filter(({ piece }) => piece === 1).map(({ number }) => number);
      expect(numbers.sort((p, q) => p - q)).toEqual(rows);
    }),
    runs(60),
  );
});

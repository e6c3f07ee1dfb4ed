import fc from "fast-check";
import { expect, it } from "vitest";
import { closureSketch } from "../../src/drawing/closureSketch.ts";
import { SHEET } from "../../src/drawing/paper.ts";
import { eccentricCone, rightCone, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";

it("the gap between the inside corners, as drawn, is the gap of the table", () => {
  let drawn = 0;
  fc.assert(
    fc.property(rightCone, (part) => {
      const report = reportOf(part);
      const drawing = closureSketch(report, { paper: SHEET });
      const rows = ["start of the window", "end of the window"].map(
        (title) => report.forming.closure.find(({ mark }) => mark?.includes(title))!.large!,
      );
      const walls = drawing!.strokes.flatMap(({ kind, shape }) =>
        kind === "outline" && shape.type === "path" && shape.closed ? [shape.points] : [],
      );
      expect(walls).toHaveLength(2);
      for (const [i, wall] of walls.entries()) {
        // Out along the outside, back along the inside.
        const [first, last] = [wall.at(-1)!, wall[wall.length / 2]!];
        const gap = Math.hypot(first[0] - last[0], first[1] - last[1]);
        // The table gives the share closed to six decimals.
        expect(Math.abs(gap - rows[i]!.insideGapMm)).toBeLessThan(4e-6 * rows[i]!.levelRadiusMm);
        const thick = Math.hypot(wall[0]![0] - first[0], wall[0]![1] - first[1]);
        expect(thick).toBeCloseTo(2 * (rows[i]!.levelRadiusMm - rows[i]!.insideLevelRadiusMm), 5);
        // The gap is up, level.
        expect(first[1]).toBeCloseTo(last[1], 6);
        drawn += 1;
      }
    }),
    runs(40),
  );
  expect(drawn).toBe(80);
});

it("there is none for a part without a first pass", () => {
  fc.assert(
    fc.property(eccentricCone, (part) => {
      expect(closureSketch(reportOf(part), { paper: SHEET })).toBeUndefined();
    }),
    runs(10),
  );
});

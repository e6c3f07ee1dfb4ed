import fc from "fast-check";
import { expect, it } from "vitest";
import { closureSketch } from "../../src/drawing/closureSketch.ts";
import { SHEET } from "../../src/drawing/paper.ts";
import { eccentricCone, rightCone, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";
import { reports } from "../site/askedSums.ts";

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

it("the straight lead stands off the round on one side, and the gap is that of the table over its depth", () => {
  let led = 0;
  for (const [, report] of reports) {
    const drawing = closureSketch(report, { paper: SHEET });
    const rows = report.forming.closure.filter(({ mark }) => / of the window/.test(mark ?? ""));
    if (!drawing || !(rows[0]!.leadMm > 0)) continue;
    led += 1;
    expect(JSON.stringify(drawing)).toContain("One edge with its straight lead");
    const walls = drawing.strokes.flatMap(({ kind, shape }) =>
      kind === "outline" && shape.type === "path" && shape.closed ? [shape.points] : [],
    );
    for (const [i, wall] of walls.entries()) {
      const { large, leadMm } = rows[i]!;
      const [first, last] = [wall.at(-1)!, wall[wall.length / 2]!];
      expect(first[1]).toBeCloseTo(last[1], 6);
      // By how much the lead's end lies deeper, by the sagitta of the blank's own arc, at most as long as its slant.
      const deepMm = leadMm ** 2 / (2 * large!.levelRadiusMm);
      const gap = Math.hypot(first[0] - last[0], first[1] - last[1]);
      expect(gap).toBeLessThan(large!.insideGapMm + 0.1);
      expect(Math.hypot(gap, deepMm)).toBeGreaterThan(large!.insideGapMm - 0.1);
    }
  }
  expect(led).toBeGreaterThan(4);
});

it("there is none for a part without a first pass", () => {
  fc.assert(
    fc.property(eccentricCone, (part) => {
      expect(closureSketch(reportOf(part), { paper: SHEET })).toBeUndefined();
    }),
    runs(10),
  );
});

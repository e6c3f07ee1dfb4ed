import { describe, expect, it } from "vitest";
import { onRolls } from "../../src/drawing/forming/onRolls.ts";
import { NARROW, SHEET } from "../../src/drawing/paper.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { fromAbove } from "../../src/site/forming/fromAbove.ts";

const { parts, shop } = readBinder();
const shown = parts.flatMap(({ report }) =>
  report.forming.plans.flatMap((plan) => {
    const above = shop && fromAbove(report, plan, shop);
    return above ? [{ name: `${report.part.name} on ${plan.machine}`, above }] : [];
  }),
);

describe.each(shown)("$name, seen from above", ({ above }) => {
  const drawing = onRolls(above, { paper: SHEET });
  const label = (text: string) => drawing.labels.filter((one) => one.text === text);

  it("names both ends of the rolls in each pass at their own hand, and leaves nothing out", () => {
    expect(drawing.dropped).toEqual([]);
    expect(onRolls(above, { paper: NARROW }).dropped).toEqual([]);
    const [drop, fixed] = [label("drop end"), label("fixed end")];
    expect([drop.length, fixed.length]).toEqual([2, 2]);
    drop.forEach((one, i) => {
      const left = one.at[0] < fixed[i]!.at[0];
      expect(left).toBe(above.dropEnd === "left");
    });
  });

  it("has the small edge on the stop at the drop end first, then at the fixed end, each seam edge ahead once", () => {
    expect(above.passes.map(({ smallAt }) => smallAt === above.dropEnd)).toEqual([true, false]);
    expect(above.passes.map(({ leads }) => leads).toSorted()).toEqual([1, 2]);
    expect(label("seam 1 ahead")).toHaveLength(1);
    expect(label("seam 2 ahead")).toHaveLength(1);
    // The blank itself: inside up, its outline runs counter-clockwise, as on the pattern.
    const outlines = drawing.strokes.flatMap(({ kind, shape }) =>
      kind === "outline" && shape.type === "path" ? [shape.points] : [],
    );
    expect(outlines).toHaveLength(2);
    for (const points of outlines) {
      const area = points.reduce((sum, [x, y], i) => {
        const [u, v] = points[(i + 1) % points.length]!;
        return sum + (x * v - u * y) / 2;
      }, 0);
      expect(area).toBeGreaterThan(0);
    }
  });

  it("bears on the stop where the pinch is, and has the seam edge over the bending roll", () => {
    const [outlines, stops, rolls] = (["outline", "arrow", "centre"] as const).map((kind) =>
      drawing.strokes.flatMap((one) =>
        one.kind === kind && one.shape.type === "path" ? [one.shape.points] : [],
      ),
    );
    for (const [i, outline] of outlines!.entries()) {
      const hand = above.passes[i]!.smallAt === "left" ? -1 : 1;
      const bending = rolls![i]![0]![1];
      const pinch = bending - above.armMm;
      // What of the blank lies level with the stop is all on one side of it, and touches it.
      const stop = stops!.filter(
        (points) => points.length === 4 && Math.abs((points[0]![1] + points[2]![1]) / 2 - pinch) < 1e-6,
      )[i];
      const face = stop![0]![0];
      const level = outline.flatMap(([x1, y1], k) => {
        const [x2, y2] = outline[(k + 1) % outline.length]!;
        return y1 > pinch === y2 > pinch ? [] : [x1 + ((x2 - x1) * (pinch - y1)) / (y2 - y1)];
      });
      expect(Math.max(...level.map((x) => hand * x))).toBeCloseTo(hand * face, 6);
      expect(Math.max(...outline.map(([, y]) => y))).toBeGreaterThanOrEqual(bending - 1e-6);
    }
  });
});

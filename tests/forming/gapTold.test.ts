import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formingOf } from "../../src/forming/forming.ts";
import { isGapTold } from "../../src/forming/gapTold.ts";
import { even } from "../even.ts";
import { coneCase, roll, shop } from "./cases.ts";

const machine = roll({
  workingWidth: 6000,
  slide: { origin: [230, -200], angle: 60, travel: 900 },
  bearings: [140, 160],
  coneAttachment: { range: [60, 60] },
});

/** Cones of any width, from all but pipes to all but discs, in one piece or in many. */
const anyCone = fc
  .record({
    halfAngleDeg: fc.oneof(even(1, 60), even(60, 89)),
    largeRadiusMm: even(150, 3000),
    share: even(0.1, 0.99),
    thicknessMm: even(2, 20),
    pieces: fc.integer({ min: 1, max: 12 }),
  })
  .map(({ halfAngleDeg, largeRadiusMm, share, thicknessMm, pieces }) => {
    const smallRadiusMm = share * largeRadiusMm;
    const heightMm = (largeRadiusMm - smallRadiusMm) / Math.tan((halfAngleDeg * Math.PI) / 180);
    return coneCase({ largeRadiusMm, smallRadiusMm, heightMm, thicknessMm }, { pieces });
  });

describe("a gap that a tape tells", () => {
  it("is that of a steep cone, and not that of a flat one's piece", () => {
    const cone = (heightMm: number, pieces: number) =>
      coneCase({ largeRadiusMm: 600, smallRadiusMm: 570, heightMm, thicknessMm: 3 }, { pieces });
    expect(isGapTold(cone(400, 1), 0)).toBe(true);
    expect(isGapTold(cone(400, 3), 0)).toBe(true);
    expect(isGapTold(cone(8, 3), 0)).toBe(false);
  });

  it("or none leaves no step with a number that is none, or with two figures of one name", () => {
    let untold = 0;
    fc.assert(
      fc.property(anyCone, (item) => {
        // What this roll does not take is told as such a roll would go about it.
        const plan = [...formingOf(item, shop([machine])).plans, ...formingOf(item).plans][0]!;
        const isTold = isGapTold(item, plan.settings?.flat.acrossMm ?? 0);
        if (!isTold) untold++;
        for (const { id, text, figures, toNote } of plan.steps) {
          expect(text, id).not.toMatch(/NaN|Infinity|undefined/);
          for (const { label, value } of figures) expect(value, `${id}: ${label}`).toSatisfy(Number.isFinite);
          const labels = figures.map(({ label }) => label);
          expect([...new Set(labels)], id).toEqual(labels);
          for (const { planned = 0, label } of toNote)
            expect(planned, `${id}: ${label}`).toSatisfy(Number.isFinite);
        }
        // What no tape tells is asked of none.
        const measure = plan.steps.find(({ id }) => id === "first-measure")!;
        expect(/Measure straight across/.test(measure.text)).toBe(isTold);
      }),
      { seed: 7, numRuns: 400 },
    );
    expect(untold).toBeGreaterThan(10);
  });
});

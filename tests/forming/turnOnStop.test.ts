import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chalkToParallelMm, flatReach, partToParallelMm } from "../../src/forming/turnOnStop.ts";
import { coneCase, reducer, RUNS } from "./cases.ts";

/** Where a large edge about this apex crosses the pinch, which runs along y = 0 with the stop at nought. */
const crossing = (apex: readonly [number, number], reachMm: number): number =>
  apex[0] + Math.sqrt(reachMm ** 2 - apex[1] ** 2);

/**
 * The blank moved on in small steps: the place where the large edge is pinched goes straight on, square to the rolls, and
 * the place on the stop stays where it is. What the large edge has run through, until the apex is level with the pinch.
 */
function movedOn(smallMm: number, largeMm: number, aheadMm: number): number {
  let apex: [number, number] = [-Math.sqrt(smallMm ** 2 - aheadMm ** 2), aheadMm];
  const steps = 20_000;
  const stepRad = Math.asin(aheadMm / smallMm) / steps;
  let chalkMm = 0;
  for (let i = 0; i < steps; i++) {
    // A mark on the plate, now at the pinch, and the apex: both turn about the stop.
    const mark: [number, number] = [crossing(apex, largeMm), 0];
    const turned = ([x, y]: readonly [number, number]): [number, number] => [
      x * Math.cos(stepRad) - y * Math.sin(stepRad),
      x * Math.sin(stepRad) + y * Math.cos(stepRad),
    ];
    apex = turned(apex);
    const gone = turned(mark);
    const pinched = [crossing(apex, largeMm), 0] as const;
    chalkMm += Math.hypot(gone[0] - pinched[0], gone[1] - pinched[1]);
  }
  expect(Math.abs(apex[1])).toBeLessThan(1e-6 * smallMm);
  return chalkMm;
}

describe("the blank of a cone, square in the groove and on the stop", () => {
  it("has turned as far as one that is moved on in small steps", () => {
    const loaded = fc.record({
      smallMm: fc.double({ min: 100, max: 2000, noNaN: true }),
      ratio: fc.double({ min: 1.1, max: 4, noNaN: true }),
      ahead: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
    });
    fc.assert(
      fc.property(loaded, ({ smallMm, ratio, ahead }) => {
        const [largeReachMm, aheadMm] = [smallMm * ratio, smallMm * ahead];
        const told = chalkToParallelMm({ smallReachMm: smallMm, largeReachMm, aheadMm });
        expect(told).toBeCloseTo(movedOn(smallMm, largeReachMm, aheadMm), 0);
      }),
      { ...RUNS, numRuns: 40 },
    );
  });

  it("cannot lie so where its small edge does not reach back to the pinch", () => {
    expect(chalkToParallelMm({ smallReachMm: 300, largeReachMm: 900, aheadMm: 300 })).toBeNull();
    const short = coneCase({ ...reducer, smallRadiusMm: 40 });
    expect(partToParallelMm(short, 330)).toBeNull();
    expect(partToParallelMm(coneCase(reducer), 330)).toBeGreaterThan(0);
  });

  it("has no such way for a pipe", () => {
    expect(partToParallelMm(coneCase({ ...reducer, smallRadiusMm: 450 }), 330)).toBeUndefined();
  });
});

describe("the flat blank beside the stop", () => {
  it.each([1, 2, 3, 6])(
    "comes as far past it as the farthest place of its small edge, in %i pieces",
    (pieces) => {
      const item = coneCase(reducer, { pieces });
      const sine = Math.sin(item.cone?.halfAngleRad ?? 0);
      const reachMm = reducer.smallRadiusMm / sine;
      // The stop at nought; the apex beyond it; the edge from the pinch back to where it ends.
      const places = Array.from({ length: 2001 }, (_, i) => {
        const rad = ((2 * Math.PI * sine) / pieces) * (i / 2000);
        return { past: reachMm - reachMm * Math.cos(rad), before: reachMm * Math.sin(rad) };
      });
      const farthest = places.reduce((one, other) => (other.past > one.past ? other : one));
      expect(flatReach(item)?.pastMm).toBeCloseTo(farthest.past, 9);
      expect(flatReach(item)?.beforeMm).toBeCloseTo(farthest.before, 9);
    },
  );

  it("comes nowhere past it from a pipe or a point", () => {
    expect(flatReach(coneCase({ ...reducer, smallRadiusMm: 450 }))).toBeNull();
    expect(flatReach(coneCase({ ...reducer, smallRadiusMm: 0 }))).toBeNull();
  });
});

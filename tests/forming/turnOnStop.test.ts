import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chalkToParallelMm, flatReach, lyingOf, reachesBendingRoll } from "../../src/forming/turnOnStop.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import { coneCase, reducer, roll as anyPlateRoll, RUNS } from "./cases.ts";

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
  });
});

describe("the flat blank beside the stop", () => {
  it("comes as far past it as any place of its small edge, while it turns about the stop and then about its apex", () => {
    const blank = fc.record({
      reachMm: fc.double({ min: 100, max: 2000, noNaN: true }),
      offRad: fc.double({ min: 0, max: 1.4, noNaN: true }),
      moreRad: fc.double({ min: 0.3, max: 4.5, noNaN: true }),
    });
    let level = 0;
    fc.assert(
      fc.property(blank, ({ reachMm, offRad, moreRad }) => {
        const sweepRad = offRad + moreRad;
        const told = flatReach(reachMm, { offRad, sweepRad });
        let most = { past: -Infinity, before: 0 };
        for (let step = 0; step <= 400; step++) {
          const turned = (step / 200) * offRad;
          const off = Math.max(0, offRad - turned);
          for (let i = 0; i <= 600; i++) {
            const at = (i / 600) * sweepRad - turned;
            const past = reachMm * (Math.cos(off) - Math.cos(at));
            if (at > 0 && past > most.past) most = { past, before: reachMm * (Math.sin(at) - Math.sin(off)) };
          }
        }
        if (Math.abs(told.beforeMm) < 1e-9 * reachMm) level++;
        expect(Math.abs(told.pastMm - most.past)).toBeLessThan(0.001 * reachMm);
        if (most.past > 0.01 * reachMm)
          expect(Math.abs(told.beforeMm - most.before)).toBeLessThan(0.05 * reachMm);
      }),
      { ...RUNS, numRuns: 60 },
    );
    expect(level).toBeGreaterThan(0);
  });
});

describe("how a blank is laid", () => {
  const roll = (more: Partial<PlateRoll> = {}) =>
    anyPlateRoll({ coneAttachment: { clearRoom: 5000 }, ...more });

  it("is square in the groove, with its corner clear of the stop", () => {
    const item = coneCase({ ...reducer, smallRadiusMm: 300 });
    const reachMm = 300 / Math.sin(item.cone?.halfAngleRad ?? 0);
    const lying = lyingOf(item, roll(), 200);
    expect(lying).toMatchObject({ by: "groove", turnedDeg: 0 });
    // The small edge through the stop, about an apex 200 off: its end level with that.
    expect(lying?.cornerInMm).toBeCloseTo(reachMm - Math.sqrt(reachMm ** 2 - 200 ** 2), 9);
  });

  it("is by the element at the pinch where the edge would not bear there, or where the corner stands in the yoke", () => {
    const short = coneCase({ ...reducer, smallRadiusMm: 40 });
    const large = 450 / Math.sin(short.cone?.halfAngleRad ?? 0);
    const lying = lyingOf(short, roll(), 200);
    expect(lying).toMatchObject({ by: "element", parallelAfterMm: 0 });
    expect(large * Math.sin(((lying?.turnedDeg ?? 0) * Math.PI) / 180)).toBeCloseTo(200, 9);
    const wide = coneCase({ ...reducer, smallRadiusMm: 320, heightMm: 130 });
    expect(lyingOf(wide, roll(), 150)?.by).toBe("groove");
    expect(lyingOf(wide, roll({ coneAttachment: { clearRoom: 100 } }), 150)?.by).toBe("element");
  });

  it("is by the element where those would still be askew when the whole raise is on", () => {
    const [small, large] = [reducer.smallRadiusMm, reducer.largeRadiusMm];
    const sine = Math.sin(coneCase(reducer).cone?.halfAngleRad ?? 0);
    const chalkAt = (aheadMm: number) =>
      chalkToParallelMm({ smallReachMm: small / sine, largeReachMm: large / sine, aheadMm }) ?? 0;
    expect(chalkAt(200)).toBeGreaterThan(200);
    expect(lyingOf(coneCase(reducer), roll(), 200)?.by).toBe("element");
  });

  it("is told of no blank that ends before the bending roll, or is all ahead of the pinch", () => {
    // Nearly a flat ring, whose apex lies in its middle.
    const shallow = (heightMm: number) =>
      coneCase({ largeRadiusMm: 500, smallRadiusMm: 200, heightMm, thicknessMm: 2 }, { pieces: 4 });
    const nearly = shallow(1);
    expect(reachesBendingRoll(nearly, 499)).toBe(true);
    expect(reachesBendingRoll(nearly, 501)).toBe(false);
    expect(lyingOf(nearly, roll(), 501)).toBeNull();
    // Each of eight pieces sweeps an eighth of it, 45°, and half of 500 is ahead at 30°.
    const eighth = { ...nearly, pieces: 8 };
    expect(reachesBendingRoll(eighth, 250)).toBe(true);
    expect(reachesBendingRoll(eighth, 360)).toBe(false);
    expect(reachesBendingRoll(coneCase({ ...reducer, smallRadiusMm: 450 }), 1e6)).toBe(true);
  });

  it("is told of no pipe and of no point", () => {
    expect(lyingOf(coneCase({ ...reducer, smallRadiusMm: 450 }), roll(), 330)).toBeNull();
    expect(lyingOf(coneCase({ ...reducer, smallRadiusMm: 0 }), roll(), 330)).toBeNull();
  });
});

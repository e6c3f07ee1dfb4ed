import fc from "fast-check";
import { expect, it } from "vitest";
import { middleOverbend, rollTilt } from "../../src/forming/rollTilt.ts";
import { RUNS } from "./cases.ts";
import { even } from "../even.ts";

const asked = fc
  .record({
    ratio: even(1.01, 6),
    small: even(5, 100),
    slantMm: even(100, 2000),
    stopMm: even(0, 300),
  })
  .map(({ ratio, small, slantMm, stopMm }) => ({
    ratio,
    // The need runs as 1/distance from the apex, so at the large end it is q times less.
    raiseMm: { small, middle: null as number | null, large: small / ratio },
    slantMm,
    stopMm,
    rollFaceMm: 2500,
    bearingsMm: [120, 180] as const,
  }));

it("gives the middle of the slant exactly what it needs there", () => {
  fc.assert(
    fc.property(asked, (one) => {
      const { ratio, slantMm, raiseMm } = one;
      const fromApex = slantMm / (ratio - 1); // of the small end
      const need = (raiseMm.small * fromApex) / (fromApex + slantMm / 2);
      expect(rollTilt(one).middleMm).toBeCloseTo(need, 9);
    }),
    RUNS,
  );
});

it("gives it what it is said to need, wherever that is below the line through both ends", () => {
  fc.assert(
    fc.property(asked, even(0.5, 1.5), (one, share) => {
      const mean = (one.raiseMm.small + one.raiseMm.large) / 2;
      const tilt = rollTilt({ ...one, raiseMm: { ...one.raiseMm, middle: share * mean } });
      expect(tilt.middleMm).toBeCloseTo(Math.min(share, 1) * mean, 9);
      expect(tilt.smallMm / tilt.largeMm).toBeCloseTo(one.ratio, 9);
    }),
    RUNS,
  );
});

it("would otherwise overbend the middle by the eighth at 2 : 1 and the third at 3 : 1", () => {
  fc.assert(
    fc.property(asked, ({ ratio, raiseMm, slantMm }) => {
      const fromApex = slantMm / (ratio - 1);
      const need = (raiseMm.small * fromApex) / (fromApex + slantMm / 2);
      expect(middleOverbend(ratio)).toBeCloseTo((raiseMm.small + raiseMm.large) / 2 / need, 9);
    }),
    RUNS,
  );
  expect(middleOverbend(1)).toBe(1);
  expect(middleOverbend(2)).toBeCloseTo(1.125, 12);
});

it("carries one straight line from bearing to bearing, through both ends", () => {
  fc.assert(
    fc.property(asked, (one) => {
      const { smallMm, largeMm, bearingMm, tiltRad } = rollTilt(one);
      const on = (fromDropEnd: number) => {
        const share = (fromDropEnd + 120) / (120 + 2500 + 180);
        return bearingMm.small + share * (bearingMm.large - bearingMm.small);
      };
      expect(on(one.stopMm)).toBeCloseTo(smallMm, 9);
      expect(on(one.stopMm + one.slantMm)).toBeCloseTo(largeMm, 9);
      expect(Math.tan(tiltRad)).toBeCloseTo((smallMm - largeMm) / one.slantMm, 12);
      expect(tiltRad).toBeGreaterThan(0);
    }),
    RUNS,
  );
});

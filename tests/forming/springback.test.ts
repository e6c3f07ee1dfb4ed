import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { freeRadiusMm, loadedRadiusMm, widePlate, yieldBand } from "../../src/forming/springback.ts";
import { RUNS, s355 } from "./cases.ts";
import { even } from "../even.ts";

const plate = fc.record({
  thicknessMm: even(0.2, 200),
  yieldMPa: even(20, 2000),
  youngsMPa: even(40_000, 250_000),
});
/** x = R·Y/(E·t) of the bend under load. */
const bend = fc
  .record({ plate, x: even(0.0001, 0.4999) })
  .map(({ plate, x }) => ({ plate, loaded: (x * plate.youngsMPa * plate.thicknessMm) / plate.yieldMPa }));

describe("springback", () => {
  it("and its inverse undo each other, and open the bend", () => {
    fc.assert(
      fc.property(bend, ({ plate, loaded }) => {
        const free = freeRadiusMm(loaded, plate);
        expect(free).toBeGreaterThan(loaded);
        expect(Math.abs(loadedRadiusMm(free, plate) / loaded - 1)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  it("is the textbook cubic", () => {
    fc.assert(
      fc.property(bend, ({ plate, loaded }) => {
        const x = (loaded * plate.yieldMPa) / (plate.youngsMPa * plate.thicknessMm);
        expect(Math.abs(loaded / freeRadiusMm(loaded, plate) - (4 * x ** 3 - 3 * x + 1))).toBeLessThan(1e-12);
      }),
      RUNS,
    );
  });

  it("is greater in stronger plate and in thinner plate", () => {
    fc.assert(
      fc.property(bend, even(1.001, 1.4), ({ plate, loaded }, by) => {
        const free = freeRadiusMm(loaded, plate);
        expect(freeRadiusMm(loaded, { ...plate, yieldMPa: by * plate.yieldMPa })).toBeGreaterThan(free);
        expect(freeRadiusMm(loaded, { ...plate, thicknessMm: plate.thicknessMm / by })).toBeGreaterThan(free);
      }),
      RUNS,
    );
  });

  it("is complete from x = ½ on: the plate springs back flat", () => {
    const one = { thicknessMm: 1, yieldMPa: 1, youngsMPa: 1 };
    expect(freeRadiusMm(0.5, one)).toBe(Infinity);
    expect(freeRadiusMm(7, one)).toBe(Infinity);
    expect(freeRadiusMm(0.5 - 1e-6, one)).toBeLessThan(Infinity);
    expect(loadedRadiusMm(Infinity, one)).toBeCloseTo(0.5, 12);
  });

  it("wants a tighter bend the stronger the plate turns out, over the band that is usual", () => {
    const wide = widePlate(6, s355, 235);
    const [nominal, strong] = yieldBand(wide).map((one) => loadedRadiusMm(450, one)) as [number, number];
    expect(nominal).toBe(loadedRadiusMm(450, wide));
    expect(strong).toBe(loadedRadiusMm(450, widePlate(6, s355, 1.4 * 235)));
    expect(strong).toBeLessThan(nominal);
  });

  it("of wide plate is that of a stronger and stiffer strip", () => {
    const wide = widePlate(10, s355, 355);
    expect(wide.yieldMPa).toBeCloseTo(409.9187, 4);
    expect(wide.youngsMPa).toBeCloseTo(210_000 / 0.91, 6);
  });
});

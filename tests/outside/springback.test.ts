import { expect, it } from "vitest";
import { freeRadiusMm, loadedRadiusMm, widePlate } from "../../src/forming/springback.ts";

const KSI = 6.894757293;
const s355 = { thicknessMm: 10, yieldMPa: 355, youngsMPa: 210_000 };

// The data of a published exercise (ME363, homework 6, 2011, after Kalpakjian's book): 20 ga 0.0359 in, R 0.5 in, 40 ksi,
// 29 × 10⁶ psi. The sheet prints no answer; the answer was worked by hand from the textbook cubic.
it("20 gauge over half an inch springs to 0.5306 in, and wants 0.4728 in for half an inch", () => {
  const plate = { thicknessMm: 0.0359, yieldMPa: 40 * KSI, youngsMPa: 29_000 * KSI };
  expect(freeRadiusMm(0.5, plate)).toBeCloseTo(0.530561957, 8);
  expect(loadedRadiusMm(0.5, plate)).toBeCloseTo(0.472765851, 8);
});

/**
 * The physics the cubic stands for, worked without it: bend to the radius, add up the moment of an elastic, perfectly
 * plastic section through its thickness, take that moment off again elastically.
 */
function unloaded(radiusMm: number, plate: typeof s355, slices = 200_000): number {
  const { thicknessMm: t, yieldMPa, youngsMPa } = plate;
  const dz = t / slices;
  let moment = 0;
  for (let i = 0; i < slices; i++) {
    const z = -t / 2 + (i + 0.5) * dz;
    const elastic = (youngsMPa * z) / radiusMm;
    moment += Math.max(-yieldMPa, Math.min(yieldMPa, elastic)) * z * dz;
  }
  return 1 / (1 / radiusMm - (12 * moment) / (youngsMPa * t ** 3));
}

it.each([
  { name: "S355 10 mm at 500", radius: 500, plate: s355, free: 667.695794 },
  { name: "S355 10 mm at 1000", radius: 1000, plate: s355, free: 1952.435912 },
  {
    name: "S235 6 mm at 300",
    radius: 300,
    plate: { thicknessMm: 6, yieldMPa: 235, youngsMPa: 210_000 },
    free: 360.211719,
  },
  {
    name: "S355 10 mm at 500, wide",
    radius: 500,
    plate: widePlate(10, { youngsGPa: 210, poisson: 0.3 }, 355),
    free: 679.0200822,
  },
])("$name springs to $free, by the cubic and by adding up the section", ({ radius, plate, free }) => {
  expect(freeRadiusMm(radius, plate)).toBeCloseTo(free, 5);
  expect(Math.abs(unloaded(radius, plate) / free - 1)).toBeLessThan(1e-7);
});

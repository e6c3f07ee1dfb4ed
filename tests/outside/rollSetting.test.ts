import { expect, it } from "vitest";
import { raiseMm, type RollSection } from "../../src/forming/rollSetting.ts";

/** Bending roll of radius b, across by a, on an upright slide: half of a pyramid roll upside down. */
const pyramid = (bendingRadiusMm: number, a: number, thicknessMm: number): RollSection => ({
  topRadiusMm: 120,
  bendingRadiusMm,
  originMm: [a, -(120 + thicknessMm + bendingRadiusMm)],
  angleRad: Math.PI / 2,
  travelMm: 500,
});

// Pure geometry of pyramid rolls, δ = M − √(M² − a²), M = R + t + b, worked apart from this code; the top roll cancels out.
it.each([
  { insideRadiusMm: 500, thicknessMm: 10, b: 100, a: 200, travel: 33.718819 },
  { insideRadiusMm: 1000, thicknessMm: 10, b: 100, a: 200, travel: 18.166679 },
  { insideRadiusMm: 250, thicknessMm: 10, b: 100, a: 200, travel: 60.667409 },
  { insideRadiusMm: 1500, thicknessMm: 20, b: 150, a: 300, travel: 27.167081 },
  // The ends of a cone, middle radii 300 and 600, height 1000: a tilt of 1.264654° over a slant of 1044.030651.
  { insideRadiusMm: 308.209195, thicknessMm: 10, b: 100, a: 200, travel: 50.923297 },
  { insideRadiusMm: 621.418391, thicknessMm: 10, b: 100, a: 200, travel: 27.875313 },
])("R $insideRadiusMm over rolls $a apart takes $travel", ({ insideRadiusMm, thicknessMm, b, a, travel }) => {
  expect(raiseMm(pyramid(b, a, thicknessMm), { insideRadiusMm, thicknessMm })).toBeCloseTo(travel, 6);
});

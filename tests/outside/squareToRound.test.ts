import { describe, expect, it } from "vitest";
import { degrees } from "../../src/geometry/angle.ts";
import { edgeTurning, skinArea, volume } from "../../src/geometry/measure.ts";
import { circleRim, rectangleRim } from "../../src/geometry/rim.ts";
import type { Skin } from "../../src/geometry/skin.ts";
import { named, reportOf } from "../parts.ts";

const transition = (a: number, b: number, r: number, h: number, c: [number, number] = [0, 0]): Skin => ({
  a: rectangleRim(a, b),
  b: circleRim(c, r),
  baseMm: 0,
  heightMm: h,
});

const QUARTER = { from: 0, to: Math.PI / 2 };

/** Drawn where thickness plays no part: the round end on its middle, the rectangle sharp on its inside. */
const part = (length: number, width: number, diameter: number, height: number, divisions = 12) =>
  reportOf(
    named({
      shape: "square-to-round",
      thickness: 1,
      divisions,
      rectangularEnd: { length, width, measured: "inside" },
      roundEnd: { diameter, measured: "middle" },
      height,
    }),
  );

describe("square-to-round 200, Ø100, 150 (dimensions: Mathematics Stack Exchange 4634599; answers computed, hull-verified)", () => {
  const skin = transition(200, 200, 50, 150);

  it("area, volume and corner sector", () => {
    expect(skinArea(skin)).toBeCloseTo(89811.95349811768, 5);
    expect(volume(skin)).toBeCloseTo(3392699.0816987245, 4);
    const interiorOfEdges = degrees(edgeTurning(skin));
    expect(interiorOfEdges).toBeCloseTo(163.894712424, 6); // Σ exterior angles = turning of the round edge
    expect(degrees(edgeTurning(skin, QUARTER))).toBeCloseTo(40.973678106038, 9);
  });

  it("corner sector 23.649388° between the borders of each corner on the pattern", () => {
    const { blanks } = part(200, 200, 100, 150);
    const corner = blanks[0]!.lines.slice(0, 4); // seam in the middle of a side: the first corner's 0, 30, 60, 90°
    expect(corner.map(({ planDeg }) => planDeg)).toEqual([0, 30, 60, 90]);
    const angles = corner.map(({ from, to }) => Math.atan2(to[1] - from[1], to[0] - from[0]));
    expect(degrees(Math.max(...angles) - Math.min(...angles))).toBeCloseTo(23.64938836881, 3);
  });

  it("true lengths from a corner to the 24 divisions: 187.083, 180.977, 177.030, 175.664 and back", () => {
    const { blanks } = part(200, 200, 100, 150, 24);
    const expected = [
      187.08286934, 180.97665951, 177.0303532, 175.66406683, 177.0303532, 180.97665951, 187.08286934,
    ];
    const own = blanks[0]!.lines.slice(0, expected.length).map(({ lengthMm }) => lengthMm);
    expect(own).toHaveLength(expected.length);
    own.forEach((length, i) => expect(length).toBeCloseTo(expected[i]!, 3));
  });

  it("12 divisions: 187.083, 177.030, 177.030, 187.083", () => {
    const lengths = part(200, 200, 100, 150).hand.rows.map(({ trueMm }) => trueMm);
    for (const expected of [187.08286934, 177.0303532]) {
      const matching = lengths.filter((length) => Math.abs(length - expected) < 1e-6);
      expect(matching).toHaveLength(8);
    }
  });
});

describe("square-to-round, further cases", () => {
  it("600 × 400 to Ø300, 500: area, volume, corner sector (derived, hull-verified)", () => {
    const skin = transition(600, 400, 150, 500);
    expect(skinArea(skin)).toBeCloseTo(759684.978203, 4);
    expect(volume(skin)).toBeCloseTo(76780972.451, 2);
  });

  it("20 in square, Ø12 in, 16 in: 19.2873, 18.1129; seam 16.4924; step 3.1058 (derived)", () => {
    const k = 25.4;
    const { hand } = part(20 * k, 20 * k, 12 * k, 16 * k);
    const [seam, corner, second] = hand.rows;
    expect(seam!.trueMm / k).toBeCloseTo(16.492423, 5);
    expect(corner!.trueMm / k).toBeCloseTo(19.287302, 5);
    expect(second!.trueMm / k).toBeCloseTo(18.112895, 5);
    expect(corner!.next!.bMm / k).toBeCloseTo(3.105829, 5);
  });

  it("volume (h/3)(ab + (a + b) r + π r²), derived by Steiner's formula", () => {
    const [a, b, r, h] = [730, 410, 140, 520];
    expect(
      volume(transition(a, b, r, h, [40, -25])) / ((h / 3) * (a * b + (a + b) * r + Math.PI * r * r)),
    ).toBeCloseTo(1, 11);
  });

  it("300 × 200 to Ø160, offset 30, −10, 180 high: 143380.08, not the 140934.13 of a naive ruled surface", () => {
    expect(skinArea(transition(300, 200, 80, 180, [30, -10]))).toBeCloseTo(143380.082719, 4);
  });
});

import { describe, expect, it } from "vitest";
import { named, reportOf } from "../parts.ts";

/** A cone drawn on its middle surface, so that the plate's thickness plays no part. */
const thin = (sizes: { D: number; d: number; h?: number; slant?: number; halfAngle?: number }) =>
  reportOf(
    named({
      shape: "right-cone",
      thickness: 0.2,
      largeEnd: { diameter: sizes.D, measured: "middle" },
      smallEnd: { diameter: sizes.d, measured: "middle" },
      ...(sizes.h !== undefined && { height: sizes.h }),
      ...(sizes.slant !== undefined && { slant: sizes.slant }),
      ...(sizes.halfAngle !== undefined && { halfAngle: sizes.halfAngle }),
    }),
  );

describe("published right cones", () => {
  it('ducts 5 and 8, 4 apart ("The Net of a Frustum", Geometry 2 – Drawings and Nets 6): 7.12, 11.39, 126.4°', () => {
    const { cone, shape } = thin({ D: 8, d: 5, h: 4 });
    expect(cone?.innerRadiusMm).toBeCloseTo(7.120003121, 5);
    expect(cone?.outerRadiusMm).toBeCloseTo(11.392004994, 5);
    expect(cone?.sectorDeg).toBeCloseTo(126.404438972, 5);
    expect(shape.areaMm2).toBeCloseTo(87.235783, 5);
  });

  it("a sector of 216° with radius 5 (AssignmentExpert Q112089): r 3, h 4, apex 73.74°, area 47.12", () => {
    const { cone, shape } = thin({ D: 6, d: 0, slant: 5 });
    expect(cone?.sectorDeg).toBeCloseTo(216, 5);
    expect(shape.heightMm).toBeCloseTo(4, 6);
    expect(2 * (cone?.halfAngleDeg ?? 0)).toBeCloseTo(73.739795292, 5);
    expect(shape.areaMm2).toBeCloseTo(47.123889804, 5);
  });

  it("apex angle 30° (Math Forum, Dr Math 61472: θ = 360 r/s): 93.17°", () => {
    expect(thin({ D: 100, d: 0, halfAngle: 15 }).cone?.sectorDeg).toBeCloseTo(93.174856, 5);
  });

  it("conical cap, base 3 in, slant 2 in (Atkins, Practical Sheet and Plate Metal Work, ch. XII): sector exactly 270°", () => {
    const { cone } = thin({ D: 3 * 25.4, d: 0, slant: 2 * 25.4 });
    expect(cone?.sectorDeg).toBeCloseTo(270, 5);
    expect(cone?.outerRadiusMm).toBeCloseTo(50.8, 6);
  });

  it("cone, base 5, slant 12 (Longfield, Sheet Metal Drafting, p. 82): circumference 15.7080, area 94.2478", () => {
    const { shape } = thin({ D: 5, d: 0, slant: 12 });
    expect(shape.rims.a).toBeCloseTo(15.707963, 5);
    expect(shape.areaMm2).toBeCloseTo(94.24778, 5);
  });

  it("sector of arc 14 and radius 7 (Longfield, p. 82 §38): 49", () => {
    const { shape } = thin({ D: 14 / Math.PI, d: 0, slant: 7 });
    expect(shape.areaMm2).toBeCloseTo(49, 5);
  });

  it("frustum 6 and 3, altitude 3 (Longfield, p. 128): slant 3.3541, area 47.4175, R 6.7082, 160.997°", () => {
    const { cone, shape } = thin({ D: 6, d: 3, h: 3 });
    expect(cone?.slantMm).toBeCloseTo(3.354101966, 5);
    expect(shape.areaMm2).toBeCloseTo(47.417499435, 5);
    expect(cone?.outerRadiusMm).toBeCloseTo(6.708203932, 5);
    expect(cone?.sectorDeg).toBeCloseTo(160.99689438, 5);
  });

  it.each([
    { D: 7, d: 0, slant: 11.25, area: 123.700211 },
    { D: 96 / Math.PI, d: 0, slant: 102.5, area: 4920 },
    { D: 3.125, d: 2.5, slant: 7.5, area: 66.26797 },
  ])("exercises of Longfield, pp. 82 and 128: $D, $d, slant $slant has area $area", ({ area, ...sizes }) => {
    expect(thin(sizes).shape.areaMm2).toBeCloseTo(area, 4);
  });

  it.each([
    { D: 40 / 3, d: 0, slant: 56 / 3, area: 391 + 1 / 9 },
    { D: 16.5, d: 32 / 3, slant: 21, area: 0 },
  ])(
    "an old mensuration with π = 22/7 (anonymous, art. XXXI): $D ft, slant $slant ft",
    ({ area, ...sizes }) => {
      const measured = (thin(sizes).shape.areaMm2 * 22) / 7 / Math.PI;
      if (area > 0) expect(measured).toBeCloseTo(area, 3);
      else expect(measured / 4).toBeCloseTo(224.125, 3); // 5 ft 4, 8 ft 3, slant 10 ft 6, all doubled
    },
  );

  it("volume of a frustum 32 and 24, height 20 (18th-century mensuration, π/4 = 0.7854): 12398.8480", () => {
    const { shape } = thin({ D: 32, d: 24, h: 20 });
    expect(shape.volumeMm3).toBeCloseTo(12398.819006168, 4);
    expect((shape.volumeMm3 * 0.7854) / (Math.PI / 4)).toBeCloseTo(12398.848, 3);
  });

  it("stepping n chords shortens the girth by 1 − (n/π) sin(π/n) (identity)", () => {
    const rows = [
      [12, 1.138407053],
      [16, 0.641314886],
      [24, 0.285334265],
      [48, 0.071379418],
    ] as const;
    for (const [divisions, percent] of rows) {
      const part = named({
        shape: "right-cone",
        thickness: 4,
        divisions,
        largeEnd: { diameter: 1000, measured: "middle" },
        smallEnd: { diameter: 500, measured: "middle" },
        height: 500,
      });
      const { hand, shape } = reportOf(part);
      expect((100 * hand.shortfallMm.a) / shape.rims.a).toBeCloseTo(percent, 6);
    }
  });
});

import { describe, expect, it } from "vitest";
import { degrees } from "../../src/geometry/angle.ts";
import { edgeTurning, skinArea, volume } from "../../src/geometry/measure.ts";
import { integrate } from "../../src/geometry/quadrature.ts";
import { circleRim, pointRim } from "../../src/geometry/rim.ts";
import type { Skin } from "../../src/geometry/skin.ts";
import { developBetween } from "../../src/geometry/develop.ts";

const oblique = (r: number, offset: number, h: number): Skin => ({
  a: circleRim([0, 0], r),
  b: pointRim([offset, 0]),
  baseMm: 0,
  heightMm: h,
});

/** Sector swept by the pattern of a cone: the angle between its two seam edges, followed round. */
function developedSector(skin: Skin): number {
  const { flat } = developBetween(skin, { from: 0, to: 2 * Math.PI });
  const apex = flat.b[0]!;
  let sum = 0;
  for (let i = 1; i < flat.a.length; i++) {
    const [p, q] = [flat.a[i - 1]!, flat.a[i]!];
    const [u, v] = [
      [p[0] - apex[0], p[1] - apex[1]],
      [q[0] - apex[0], q[1] - apex[1]],
    ] as const;
    sum += Math.atan2(v[0] * u[1] - v[1] * u[0], u[0] * v[0] + u[1] * v[1]);
  }
  return degrees(sum);
}

const CASES = [
  // Area printed as 162.5: "Numerical integration exercise: lateral surface", solve.club.
  { r: 4, offset: 4, h: 12, area: 162.495915734743, sector: 106.678512784745 },
  // Apex over the rim: πhr ₃F₂(−½,¼,¾;½,1;−4r²/h²), R. W. Gosper, math-fun list, April 2010.
  { r: 1, offset: 1, h: 1, area: 4.753793841546192, sector: 206.866711880389 },
  { r: 1, offset: 1, h: 2, area: 7.305067064155756, sector: 143.53998527599 },
  // Quadrature and facets, derived.
  { r: 1, offset: 2, h: 1, area: 5.805397240328361, sector: 124.383360386313 },
  { r: 300, offset: 250, h: 600, area: 649772.142658, sector: 148.49105071 },
  // The right cone as limit.
  { r: 3, offset: 0, h: 4, area: 47.123889804, sector: 216 },
];

describe("oblique cones", () => {
  it.each(CASES)(
    "r $r, offset $offset, h $h: area $area, sector $sector°",
    ({ r, offset, h, area, sector }) => {
      const skin = oblique(r, offset, h);
      expect(skinArea(skin) / area).toBeCloseTo(1, 11);
      expect(degrees(edgeTurning(skin))).toBeCloseTo(sector, 8);
      expect(developedSector({ ...oblique(100 * r, 100 * offset, 100 * h) })).toBeCloseTo(sector, 3);
    },
  );

  it("area by the formula of Math Forum, Dr Math 55017: ½r ∫ √((r − d sin t)² + h²) dt", () => {
    const [r, d, h] = [300, 180, 420];
    const formula = (r / 2) * integrate((t) => Math.hypot(r - d * Math.sin(t), h), 0, 2 * Math.PI);
    expect(skinArea(oblique(r, d, h)) / formula).toBeCloseTo(1, 11);
  });

  it("frustum of 300/250/600 cut at half height: area S(1 − k²) and the hull's volume", () => {
    const skin: Skin = { a: circleRim([0, 0], 300), b: circleRim([125, 0], 150), baseMm: 0, heightMm: 300 };
    expect(skinArea(skin)).toBeCloseTo(487329.106994, 4);
    expect(volume(skin)).toBeCloseTo(49480084.29, 1);
  });
});

/** Complete elliptic integral of the second kind, parameter m, by the arithmetic–geometric mean (Abramowitz & Stegun 17.6). */
function ellipticE(m: number): number {
  let [a, b, c, sum, power] = [1, Math.sqrt(1 - m), Math.sqrt(m), 0, 0.5];
  while (Math.abs(c) > 1e-16) {
    sum += power * c * c;
    [a, b, c] = [(a + b) / 2, Math.sqrt(a * b), (a - b) / 2];
    power *= 2;
  }
  sum += power * c * c;
  return (Math.PI / (2 * a)) * (1 - sum);
}

describe("oblique pipes", () => {
  const pipe = (r: number, h: number, tiltDeg: number): Skin => ({
    a: circleRim([0, 0], r),
    b: circleRim([h * Math.tan((tiltDeg * Math.PI) / 180), 0], r),
    baseMm: 0,
    heightMm: h,
  });

  it("45°: area 7.6404 hr, and not 8.8858 as a circulated card has it (Gosper 2010)", () => {
    expect(skinArea(pipe(1, 1, 45))).toBeCloseTo(7.64039557805542, 11);
  });

  it("30°: 6.77791761 hr (derived)", () => {
    expect(skinArea(pipe(1, 1, 30))).toBeCloseTo(6.77791761270177, 11);
  });

  it.each([10, 30, 45, 60, 75])(
    "%d°: area = length × girth of the right section, an ellipse by elliptic integrals",
    (tilt) => {
      const [r, h] = [250, 800];
      const cos = Math.cos((tilt * Math.PI) / 180);
      const perimeter = 4 * r * ellipticE(1 - cos * cos);
      expect(skinArea(pipe(r, h, tilt)) / ((h / cos) * perimeter)).toBeCloseTo(1, 11);
    },
  );

  it.each([10, 30, 45, 60])(
    "%d°: the developed ends keep step with the right section laid straight",
    (tilt) => {
      const [r, h] = [250, 800];
      const { flat } = developBetween(pipe(r, h, tilt), { from: 0, to: 2 * Math.PI });
      const cos = Math.cos((tilt * Math.PI) / 180);
      const width = Math.abs(flat.a.at(-1)![0] - flat.a[0]![0]);
      expect(width).toBeCloseTo(4 * r * ellipticE(1 - cos * cos), 4);
      expect(Math.abs(flat.a.at(-1)![1] - flat.a[0]![1])).toBeLessThan(1e-3);
    },
  );
});

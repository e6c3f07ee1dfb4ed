import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { TURN } from "../../src/geometry/angle.ts";
import { developBetween } from "../../src/geometry/develop.ts";
import { rimLength, skinArea, turning } from "../../src/geometry/measure.ts";
import { polygonArea, pathLength } from "../../src/geometry/polygon.ts";
import { circleRim, pointRim, rectangleRim } from "../../src/geometry/rim.ts";
import type { Skin } from "../../src/geometry/skin.ts";
import { squareRadii } from "../../src/geometry/squareRadius.ts";
import { halved, placesAfterHalving, stationsBetween } from "../../src/geometry/station.ts";
import { OUTLINE_MM } from "../../src/geometry/tolerance.ts";
import {
  add2,
  distance2,
  distance3,
  dot2,
  dot3,
  length2,
  scale2,
  sub2,
  type Vec2,
} from "../../src/geometry/vector.ts";
import { anySkin, runs, share } from "../arbitraries.ts";
import { exactDevelopment } from "./exact.ts";

const cone = (r: number, s: number, h: number, c: [number, number] = [0, 0]): Skin => ({
  a: circleRim([0, 0], r),
  b: s === 0 ? pointRim(c) : circleRim(c, s),
  baseMm: 0,
  heightMm: h,
});

/** Greatest distance between two developments at the same stations. */
const apart = (p: { a: readonly (readonly [number, number])[]; b: typeof p.a }, q: typeof p): number =>
  Math.max(...(["a", "b"] as const).flatMap((end) => p[end].map((point, i) => distance2(point, q[end][i]!))));

/** Distance from a point to the segment between two others. */
function offLine(p: Vec2, from: Vec2, to: Vec2): number {
  const along = sub2(to, from);
  const length = length2(along);
  if (length === 0) return distance2(p, from);
  const share = Math.min(1, Math.max(0, dot2(sub2(p, from), along) / length ** 2));
  return distance2(p, add2(from, scale2(along, share)));
}

const wholeFrom = (from: number) => ({ from, to: from + TURN });

const hard = [
  { name: "right cone, 10 m across", skin: cone(5000, 2000, 3000) },
  { name: "flat cone, half angle 87°", skin: cone(4000, 500, 180) },
  { name: "slender, 10 m high", skin: cone(60, 20, 10_000) },
  { name: "to a point over the rim", skin: cone(300, 0, 600, [300, 0]) },
  { name: "small end far outside the large one", skin: cone(1000, 500, 600, [3000, 800]) },
  { name: "leaning almost level", skin: cone(1000, 500, 50, [2000, 0]) },
  { name: "oblique pipe, 10 m", skin: cone(1000, 1000, 10_000, [4000, 0]) },
  {
    name: "square-to-round, offset both ways",
    skin: { ...cone(1, 150, 500, [180, 130]), a: rectangleRim(600, 400) },
  },
  {
    name: "square-to-round, 8 m",
    skin: { ...cone(1, 1500, 5000, [900, -400]), a: rectangleRim(8000, 5000) },
  },
];

describe("development of a whole skin", () => {
  it.each(hard)("$name: within what it claims of the exact development", ({ skin }) => {
    const { stations, flat, outlineMm, settled } = developBetween(skin, wholeFrom(0.3));
    expect(settled).toBe(true);
    expect(outlineMm).toBeLessThanOrEqual(OUTLINE_MM);
    expect(apart(flat, exactDevelopment(skin, stations))).toBeLessThanOrEqual(outlineMm);
  });

  it("any two ends: within 0.01 mm of the exact development, chords included, and lengths, area and rims kept", () => {
    fc.assert(
      fc.property(anySkin, share, (skin, turn) => {
        const span = wholeFrom(turn * TURN);
        const { stations, flat, lengthMm, measured, settled } = developBetween(skin, span);
        expect(settled).toBe(true);
        // Between every two stations a new one: it must lie near the chord that is cut in its place.
        const dense = halved(skin, stations);
        const exact = exactDevelopment(skin, dense);
        const places = placesAfterHalving(stations);
        for (const end of ["a", "b"] as const)
          places.forEach((place, i) => {
            expect(distance2(flat[end][i]!, exact[end][place]!)).toBeLessThanOrEqual(OUTLINE_MM);
            const before = places[i - 1];
            if (before === undefined || place - before < 2) return;
            expect(offLine(exact[end][place - 1]!, flat[end][i - 1]!, flat[end][i]!)).toBeLessThanOrEqual(
              OUTLINE_MM,
            );
          });
        expect(lengthMm).toBeLessThan(OUTLINE_MM / 100);
        for (const end of ["a", "b"] as const) {
          const rim = rimLength(skin, end);
          // Extrapolated chords of a 32nd of a turn still lose (π/32)⁴/120 of their length.
          expect(Math.abs(measured[end] - rim)).toBeLessThan(
            OUTLINE_MM / 4 + ((Math.PI / 32) ** 4 / 120) * rim,
          );
          // A chord as high as its tolerance loses a third of that height for each radian it spans.
          expect(rim - pathLength(flat[end])).toBeLessThan((OUTLINE_MM * 2 * Math.PI) / 3 + OUTLINE_MM);
        }
        const rims = rimLength(skin, "a") + rimLength(skin, "b");
        const area = Math.abs(polygonArea([...flat.a].reverse().concat(flat.b)));
        expect(Math.abs(area - skinArea(skin))).toBeLessThan(OUTLINE_MM * rims);
        expect(Math.abs(measured.areaMm2 / skinArea(skin) - 1)).toBeLessThan(1e-5);
      }),
      runs(150),
    );
  });

  it("comes round: the last element is the first, in space and in length", () => {
    fc.assert(
      fc.property(anySkin, share, (skin, turn) => {
        const { stations, flat } = developBetween(skin, wholeFrom(turn * TURN));
        const [first, last] = [stations[0]!, stations.at(-1)!];
        expect(distance3(first.a, last.a)).toBeLessThan(1e-9 * (1 + skin.a.support(0, 1).h));
        expect(distance3(first.b, last.b)).toBeLessThan(1e-9 * (1 + Math.abs(skin.b.support(0, 1).h)));
        const length = (i: number) => distance2(flat.a.at(i)!, flat.b.at(i)!);
        expect(Math.abs(length(0) - length(-1))).toBeLessThan(OUTLINE_MM / 10);
      }),
      runs(150),
    );
  });

  it("scales: a part three times as large has a pattern three times as large", () => {
    fc.assert(
      fc.property(anySkin, (skin) => {
        const k = 3;
        const grown = { ...skin, a: scaled(skin.a, k), b: scaled(skin.b, k), heightMm: k * skin.heightMm };
        const small = developBetween(skin, wholeFrom(0));
        const large = developBetween(grown, wholeFrom(0));
        const corner = small.flat.b.at(-1)!;
        const same = large.flat.b.at(-1)!;
        expect(distance2([k * corner[0], k * corner[1]], same)).toBeLessThan((k + 1) * OUTLINE_MM);
      }),
      runs(60),
    );
  });
});

function scaled(rim: Skin["a"], k: number): Skin["a"] {
  return {
    breaks: rim.breaks,
    support: (theta, side) => {
      const { h, dh, rho } = rim.support(theta, side);
      return { h: k * h, dh: k * dh, rho: k * rho };
    },
    point: (theta, side) => {
      const [x, y] = rim.point(theta, side);
      return [k * x, k * y];
    },
  };
}

describe("stations", () => {
  it("every tangent plane touches both ends: no point of either lies outside it", () => {
    fc.assert(
      fc.property(anySkin, (skin) => {
        const stations = stationsBetween(skin, wholeFrom(0));
        for (const { a, normal } of stations)
          for (const other of stations)
            for (const p of [other.a, other.b]) {
              const outside = dot3(normal, [p[0] - a[0], p[1] - a[1], p[2] - a[2]]);
              expect(outside).toBeLessThan(1e-6);
            }
      }),
      runs(30),
    );
  });

  it("a corner is handed on exactly as it was given", () => {
    const skin: Skin = { a: rectangleRim(600.1, 400.3), b: circleRim([7, 3], 150), baseMm: 0, heightMm: 500 };
    const corners = new Set(stationsBetween(skin, wholeFrom(0.5)).map(({ a }) => `${a[0]},${a[1]}`));
    expect(corners).toContain("300.05,200.15");
    expect(corners.size).toBe(4); // and nothing near them
  });
});

describe("turning", () => {
  it("over width square to the element it is one over the square radius", () => {
    fc.assert(
      fc.property(anySkin, share, (skin, at) => {
        const theta = at * TURN;
        const nearBreak = [...skin.a.breaks, ...skin.b.breaks].some(
          (b) => Math.abs(Math.sin((theta - b) / 2)) < 1e-3,
        );
        if (nearBreak) return;
        const step = 1e-5;
        const [p, q] = [theta - step, theta + step].map(
          (t) => stationsBetween(skin, { from: t, to: t + 1e-4 })[0]!,
        );
        const angle = turning(skin, { from: theta - step, to: theta + step });
        const element = [p!.b[0] - p!.a[0], p!.b[1] - p!.a[1], p!.b[2] - p!.a[2]] as const;
        const length = Math.hypot(...element);
        const move = [q!.a[0] - p!.a[0], q!.a[1] - p!.a[1], q!.a[2] - p!.a[2]] as const;
        const along = (move[0] * element[0] + move[1] * element[1] + move[2] * element[2]) / length;
        const width = Math.sqrt(Math.max(0, Math.hypot(...move) ** 2 - along ** 2));
        const radius = squareRadii(skin, theta, 1).a;
        if (radius < 1) return; // at a corner the width is nought
        expect(width / angle / radius).toBeCloseTo(1, 3);
      }),
      runs(150),
    );
  });

  it("sums to 360° cos α for a right cone", () => {
    expect(turning(cone(200, 100, 100 * Math.sqrt(3)))).toBeCloseTo(TURN * Math.cos(Math.PI / 6), 10);
  });
});

import fc from "fast-check";
import Module from "manifold-3d";
import { describe, expect, it } from "vitest";
import { allRound, leanRange, skinArea, volume } from "../../src/geometry/measure.ts";
import { polygonArea } from "../../src/geometry/polygon.ts";
import type { Skin } from "../../src/geometry/skin.ts";
import { anySkin, runs } from "../arbitraries.ts";

const manifold = await Module();
manifold.setup();

type Point = [number, number, number];

/**
 * Area of the skin and volume, from the convex hull of points on both ends, computed by another library. A developable
 * transition is the side of the convex hull of its ends (Demaine & Price, Discrete Comput. Geom. 43, 2010; Wallner).
 */
function hullOf(skin: Skin, count: number): { area: number; volume: number } {
  // Single precision inside the library: keep numbers near one and the part's middle at the origin.
  const size = Math.max(skin.heightMm, ...allRound(36).map((t) => Math.abs(skin.a.support(t, 1).h)));
  const ring = (end: "a" | "b"): [number, number][] => {
    const points: [number, number][] = [];
    for (const theta of [...allRound(count), ...skin[end].breaks])
      for (const side of [-1, 1] as const) {
        const [x, y] = skin[end].point(theta, side);
        points.push([x, y]);
      }
    return points;
  };
  const [a, b] = [ring("a"), ring("b")];
  const lift = (points: [number, number][], z: number): Point[] =>
    points.map(([x, y]) => [x / size, y / size, (z - skin.heightMm / 2) / size]);
  const solid = manifold.Manifold.hull([...lift(a, 0), ...lift(b, skin.heightMm)]);
  const ends = [a, b].map((points) => {
    const round = [...points].sort((p, q) => angleIn(points, p) - angleIn(points, q));
    return Math.abs(polygonArea(round));
  });
  const result = {
    area: solid.surfaceArea() * size ** 2 - ends[0]! - ends[1]!,
    volume: solid.volume() * size ** 3,
  };
  solid.delete();
  return result;
}

function angleIn(points: [number, number][], p: [number, number]): number {
  const sum = points.reduce<[number, number]>((s, q) => [s[0] + q[0], s[1] + q[1]], [0, 0]);
  return Math.atan2(p[1] - sum[1] / points.length, p[0] - sum[0] / points.length);
}

describe("convex hull by an independent library", () => {
  it("area and volume agree to the chord error of 1440 points, for any two ends", () => {
    fc.assert(
      fc.property(anySkin, (skin) => {
        const hull = hullOf(skin, 1440);
        // The sides of the ends that the hull cannot tell from the skin are as flat as the ends themselves.
        const { least, greatest } = leanRange(skin);
        if (Math.max(-least, greatest) > 1.5) return;
        expect(hull.volume / volume(skin)).toBeCloseTo(1, 3);
        expect(hull.area / skinArea(skin)).toBeCloseTo(1, 3);
      }),
      runs(60),
    );
  });
});

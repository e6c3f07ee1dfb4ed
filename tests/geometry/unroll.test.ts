import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layFlat } from "../../src/geometry/strip.ts";
import { unrolledAt, unrolling } from "../../src/geometry/unroll.ts";
import { distance2, distance3, type Vec2, type Vec3 } from "../../src/geometry/vector.ts";
import { layOut } from "../../src/report/layOut.ts";
import { thinnedStations } from "../../src/report/round.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { catalogue } from "../parts.ts";

/** Stations of the first piece of a part. */
function stationsOf(part: Parameters<typeof layOut>[0]) {
  const made = layOut(part, { catalogue });
  if (made.kind === "refused") throw new Error(JSON.stringify(part));
  return thinnedStations(made.laid[0]!, 48);
}
const SIZE = 1e-9;

describe("every part on its way from round to flat", () => {
  it("keeps every length of its triangles at every step", () => {
    fc.assert(
      fc.property(anyPart, even(0, 1), (part, share) => {
        const stations = stationsOf(part);
        const { a, b } = unrolledAt(unrolling(stations), share);
        const big = Math.max(...stations.map((one) => distance3(one.a, one.b)), 1);
        for (let i = 0; i < stations.length; i++) {
          const [one, next] = [stations[i]!, stations[i + 1]];
          const pairs: [Vec3, Vec3, Vec3, Vec3][] = [[one.a, one.b, a[i]!, b[i]!]];
          if (next)
            pairs.push(
              [one.a, next.a, a[i]!, a[i + 1]!],
              [one.b, next.b, b[i]!, b[i + 1]!],
              [one.b, next.a, b[i]!, a[i + 1]!],
            );
          for (const [p, q, P, Q] of pairs)
            expect(Math.abs(distance3(P, Q) - distance3(p, q)) / big).toBeLessThan(SIZE);
        }
      }),
      runs(60),
    );
  });

  it("is the part itself at the start, and at the end the strip as the layout lays it, not its mirror image", () => {
    fc.assert(
      fc.property(anyPart, (part) => {
        const stations = stationsOf(part);
        const strip = unrolling(stations);
        const start = unrolledAt(strip, 0);
        const big = Math.max(...stations.map((one) => distance3(one.a, one.b)), 1);
        for (const [i, one] of stations.entries()) {
          expect(distance3(start.a[i]!, one.a) / big).toBeLessThan(1e-6);
          expect(distance3(start.b[i]!, one.b) / big).toBeLessThan(1e-6);
        }
        const end = unrolledAt(strip, 1);
        const flat = layFlat(stations);
        const points = [...end.a, ...end.b];
        for (const p of points) expect(Math.abs(p[2] - points[0]![2]) / big).toBeLessThan(1e-6);
        // Two patterns are the same if all distances are, and the way round as well.
        const laid = [...flat.a, ...flat.b];
        const stride = Math.max(1, Math.floor(laid.length / 12));
        for (let i = 0; i < laid.length; i += stride)
          for (let j = 0; j < laid.length; j += stride)
            expect(
              Math.abs(distance3(points[i]!, points[j]!) - distance2(laid[i]!, laid[j]!)) / big,
            ).toBeLessThan(1e-6);
        const area = (ring: readonly (Vec2 | Vec3)[]) =>
          ring.reduce((sum, p, i) => {
            const q = ring[(i + 1) % ring.length]!;
            return sum + p[0] * q[1] - p[1] * q[0];
          }, 0);
        const round = (a: readonly (Vec2 | Vec3)[], b: readonly (Vec2 | Vec3)[]) =>
          area([...a, ...[...b].reverse()]);
        expect(Math.sign(round(end.a, end.b))).toBe(Math.sign(round(flat.a, flat.b)));
      }),
      runs(60),
    );
  });
});

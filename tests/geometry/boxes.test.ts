import fc from "fast-check";
import { expect, it } from "vitest";
import { boxesAtAngles } from "../../src/geometry/polygon.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";

it("puts boxes round points that reach exactly as far as the points do, looked at one by one", () => {
  const point = fc.tuple(even(-500, 500), even(-500, 500)).map(([x, y]): Vec2 => [x, y]);
  fc.assert(
    fc.property(fc.array(point, { maxLength: 120 }), (some) => {
      // Never all on one line: a blank has an area.
      const points: Vec2[] = [...some, [-300, -200], [250, -100], [0, 280]];
      for (const { lengthMm, widthMm, turnRad } of boxesAtAngles(points)) {
        const [x, y] = [Math.cos(turnRad), -Math.sin(turnRad)];
        const extent = (u: number, v: number) => {
          const reach = points.map(([p, q]) => p * u + q * v);
          return Math.max(...reach) - Math.min(...reach);
        };
        const sides = [extent(x, y), extent(-y, x)].toSorted((a, b) => b - a);
        expect(lengthMm).toBeCloseTo(sides[0]!, 6);
        expect(widthMm).toBeCloseTo(sides[1]!, 6);
      }
    }),
    runs(200),
  );
});

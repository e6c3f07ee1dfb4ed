import fc from "fast-check";
import { expect, it } from "vitest";
import { spread } from "../../src/drawing/spread.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";

it("leaves alone what has room", () => {
  expect(spread([0, 10, 20], [4, 4, 4])).toEqual([0, 10, 20]);
});

it("parts two that share a place evenly, and carries the next along", () => {
  expect(spread([0, 0], [4, 4])).toEqual([-2, 2]);
  expect(spread([0, 0, 3], [4, 4, 4])).toEqual([-3, 1, 5]);
});

it("keeps the order and the room, and no small shift of a group comes nearer to the points", () => {
  const labels = fc
    .array(
      fc.record({
        x: even(0, 100),
        w: even(1, 20),
      }),
      {
        minLength: 1,
        maxLength: 12,
      },
    )
    .map((list) => [...list].sort((p, q) => p.x - q.x));
  fc.assert(
    fc.property(labels, (list) => {
      const [points, widths] = [list.map(({ x }) => x), list.map(({ w }) => w)];
      const places = spread(points, widths);
      const off = (some: readonly number[]) => some.reduce((sum, at, i) => sum + (at - points[i]!) ** 2, 0);
      const roomy = (some: readonly number[]) =>
        some.every((at, i) => i === 0 || at - some[i - 1]! >= (widths[i]! + widths[i - 1]!) / 2 - 1e-9);
      expect(roomy(places)).toBe(true);
      for (let i = 0; i < places.length; i++)
        for (let k = i + 1; k <= places.length; k++)
          for (const step of [0.01, -0.01]) {
            const moved = places.map((at, n) => (n >= i && n < k ? at + step : at));
            if (roomy(moved)) expect(off(moved)).toBeGreaterThanOrEqual(off(places) - 1e-9);
          }
    }),
    runs(200),
  );
});

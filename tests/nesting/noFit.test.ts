import fc from "fast-check";
import { expect, it } from "vitest";
import { outlinesOf } from "../../src/nesting/noFit.ts";
import { walksOf, windingOf } from "../../src/nesting/walks.ts";
import { gridRing } from "../../src/nesting/ring.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { distanceApart, placed, sharedArea } from "./judge.ts";
import { outlines } from "./shapes.ts";

const noFit = (a: readonly Vec2[], b: readonly Vec2[], turn: number) =>
  outlinesOf(
    gridRing(a, 0),
    gridRing(b, turn).map(({ x, y }) => ({ x: -x, y: -y })),
  );

it("goes round the places where two shapes overlap and no others, for any two shapes and any place", () => {
  const seen = { over: 0, clear: 0 };
  fc.assert(
    fc.property(outlines, outlines, even(0, 360), even(0, 1), even(0, 1), (a, b, turn, across, up) => {
      const { walks } = noFit(a, b, turn);
      const xs = walks.filter((_, i) => i % 2 === 0);
      const ys = walks.filter((_, i) => i % 2 === 1);
      const at: Vec2 = [
        Math.min(...xs) + across * (Math.max(...xs) - Math.min(...xs)),
        Math.min(...ys) + up * (Math.max(...ys) - Math.min(...ys)),
      ];
      const moved = placed(b, turn, at);
      const isOver = windingOf(walksOf(walks), at[0], at[1]) !== 0;
      seen[isOver ? "over" : "clear"] += 1;
      // Judged by another library; within the grid's hair of touching either answer is right.
      if (isOver) expect(sharedArea(a, moved) > 0 || distanceApart(a, moved, 1) < 0.005).toBe(true);
      else expect(sharedArea(a, moved)).toBeLessThan(5);
    }),
    runs(400),
  );
  expect(Math.min(seen.over, seen.clear)).toBeGreaterThan(50);
});

it("has a border on which the shapes touch and do not overlap", () => {
  fc.assert(
    fc.property(outlines, outlines, even(0, 360), even(0, 0.999), (a, b, turn, which) => {
      const { border } = noFit(a, b, turn);
      expect(border.length).toBeGreaterThan(8);
      const i = 4 * Math.floor((which * border.length) / 4);
      const at: Vec2 = [(border[i]! + border[i + 2]!) / 2, (border[i + 1]! + border[i + 3]!) / 2];
      const moved = placed(b, turn, at);
      expect(distanceApart(a, moved, 1)).toBeLessThan(0.003);
      // A sliver along what touches: as wide as the grid.
      expect(sharedArea(a, moved)).toBeLessThan(0.003 * 2000);
    }),
    runs(300),
  );
});

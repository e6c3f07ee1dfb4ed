import { expect, it } from "vitest";
import { closed, element } from "../../src/drawing/model.ts";
import { snapped, snapPoints } from "../../src/drawing/snap.ts";

const round = Array.from({ length: 90 }, (_, i): [number, number] => [
  100 * Math.cos((i * Math.PI) / 90),
  100 * Math.sin((i * Math.PI) / 90),
]);
const drawing = { strokes: [closed("outline", round), element("thin", [1], [10, 0], [50, 86.6])] };

it("takes corners and ends of element lines first, and any point of an outline where none of them is near", () => {
  const points = snapPoints(drawing);
  // The half round has two corners; the line two ends.
  expect(points.main.length).toBe(4);
  expect(snapped(points, [12, 3], 10)).toEqual([10, 0]);
  const top = snapped(points, [0.5, 101], 10)!;
  expect(Math.hypot(...top)).toBeCloseTo(100, 9);
  expect(snapped(points, [0, 40], 10)).toBeUndefined();
  expect(snapped(points, [97, 4], 10)).toEqual([100, 0]);
});

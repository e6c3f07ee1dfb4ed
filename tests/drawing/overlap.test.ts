import fc from "fast-check";
import { expect, it } from "vitest";
import { type Rectangle, rectanglesOverlap, meeting, segmentsCross } from "../../src/drawing/overlap.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";

const coordinate = fc.integer({ min: -50, max: 50 });
const rectangle = fc
  .record({
    x: coordinate,
    y: coordinate,
    long: fc.integer({ min: 5, max: 60 }),
    high: fc.integer({ min: 2, max: 20 }),
    turn: even(0, Math.PI),
  })
  .map(({ x, y, long, high, turn }): Rectangle => {
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const at = (u: number, v: number): Vec2 => [x + c * u - s * v, y + s * u + c * v];
    return [at(0, 0), at(long, 0), at(long, high), at(0, high)];
  });

/** Is a point within a rectangle by at least `by`? */
function inside([x, y]: Vec2, corners: Rectangle, by: number): boolean {
  return corners.every((p, i) => {
    const q = corners[(i + 1) % 4]!;
    const long = Math.hypot(q[0] - p[0], q[1] - p[1]);
    return ((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / long > by;
  });
}
const steps = Array.from({ length: 41 }, (_, i) => i / 40);
const mix = (p: Vec2, q: Vec2, t: number): Vec2 => [p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])];

it("finds an overlap wherever a grid of points finds one", () => {
  fc.assert(
    fc.property(rectangle, rectangle, (p, q) => {
      const common = steps.some((u) =>
        steps.some((v) => inside(mix(mix(p[0], p[1], u), mix(p[3], p[2], u), v), q, 1e-6)),
      );
      if (common) expect(rectanglesOverlap(p, q)).toBe(true);
      expect(rectanglesOverlap(p, q)).toBe(rectanglesOverlap(q, p));
    }),
    runs(200),
  );
});

it("does not call touching an overlap", () => {
  const at = (x: number): Rectangle => [
    [x, 0],
    [x + 2, 0],
    [x + 2, 1],
    [x, 1],
  ];
  expect(rectanglesOverlap(at(0), at(2))).toBe(false);
  expect(rectanglesOverlap(at(0), at(1.99))).toBe(true);
});

it("finds a line through a rectangle exactly where points of the line lie inside", () => {
  fc.assert(
    fc.property(
      rectangle,
      fc.tuple(coordinate, coordinate),
      fc.tuple(coordinate, coordinate),
      (box, from, to) => {
        const fine = Array.from({ length: 2001 }, (_, i) => mix(from, to, i / 2000));
        if (fine.some((p) => inside(p, box, 1e-6))) expect(meeting(box)(from, to)).toBe(true);
        else if (!fine.some((p) => inside(p, box, -0.1))) expect(meeting(box)(from, to)).toBe(false);
      },
    ),
    runs(200),
  );
});

it("counts crossing, not touching", () => {
  expect(segmentsCross([0, 0], [2, 2], [0, 2], [2, 0])).toBe(true);
  expect(segmentsCross([0, 0], [1, 1], [1, 1], [2, 0])).toBe(false);
  expect(segmentsCross([0, 0], [1, 0], [0, 1], [1, 1])).toBe(false);
});

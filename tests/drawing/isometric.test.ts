import fc from "fast-check";
import { expect, it } from "vitest";
import { isometricDrawing } from "../../src/drawing/isometric.ts";
import { CARD } from "../../src/drawing/paper.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import type { SpacePoint } from "../../src/report/report.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";

/** Isometric axes after ISO 5456-3: x and y run down to either side at 30°, z up, all to one scale √(2/3). */
function seen([x, y, z]: SpacePoint): Vec2 {
  const [c, s, k] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6), Math.sqrt(2 / 3)];
  return [k * (c * x + c * y), k * (z - s * x + s * y)];
}

it("an element is drawn whole exactly where its neighbours show that the skin turns to the eye", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const { solid, ...rest } = reportOf(part);
      const drawing = isometricDrawing({ solid, ...rest }, { paper: CARD });
      const whole = (one: { a: SpacePoint; b: SpacePoint }) =>
        drawing.strokes.some(({ shape }) => {
          if (shape.type !== "path" || shape.points.length !== 2) return false;
          const [p, q] = shape.points as [Vec2, Vec2];
          const [a, b] = [seen(one.a), seen(one.b)];
          return Math.hypot(p[0] - a[0], p[1] - a[1]) < 1e-3 && Math.hypot(q[0] - b[0], q[1] - b[1]) < 1e-3;
        });
      for (const [i, one] of solid.elements.entries()) {
        const next = solid.elements[i + 1];
        if (!next) continue;
        // The strip between two elements, counter-clockwise from outside: its area as seen is positive if it faces the eye.
        const corners = [one.a, next.a, next.b, one.b].map(seen);
        let area = 0;
        for (const [k, [x, y]] of corners.entries()) {
          const [nx, ny] = corners[(k + 1) % 4]!;
          area += (x * ny - nx * y) / 2;
        }
        const long = Math.hypot(corners[3]![0] - corners[0]![0], corners[3]![1] - corners[0]![1]);
        // Well turned to the eye: both its elements are seen. Well turned away: neither is, but through the opening.
        if (area > 0.02 * long ** 2 && long > 1) expect(whole(one) || whole(next)).toBe(true);
      }
    }),
    runs(60),
  );
});

it("nothing sticks out of the outline", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const drawing = isometricDrawing(reportOf(part), { paper: CARD });
      const first = drawing.strokes[0]!.shape;
      const outline = first.type === "path" ? first.points : [];
      // Rims are drawn by chords of 5°, which cut the arc by 0.001 of its radius.
      const size = Math.max(...outline.map(([x]) => x)) - Math.min(...outline.map(([x]) => x));
      for (const { shape } of drawing.strokes)
        for (const [x, y] of shape.type === "path" ? shape.points : [])
          for (const [i, p] of outline.entries()) {
            const q = outline[(i + 1) % outline.length]!;
            const long = Math.hypot(q[0] - p[0], q[1] - p[1]);
            const out = ((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / long;
            expect(out).toBeGreaterThan(-0.001 * size);
          }
    }),
    runs(40),
  );
});

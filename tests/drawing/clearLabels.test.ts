import fc from "fast-check";
import { expect, it } from "vitest";
import { CAP_PER_SIZE, labelCorners, textWidth } from "../../src/drawing/lettering.ts";
import type { Drawing, Label, LabelRole, StrokeKind } from "../../src/drawing/model.ts";
import { NARROW, SHEET } from "../../src/drawing/paper.ts";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import { trace } from "../../src/drawing/pen.ts";
import { viewsDrawing } from "../../src/drawing/views.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { ACROSS, COLUMN } from "../../src/site/parts/papers.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";
import { walkingPen } from "./judge.ts";

/** The ink of a label in its own axes: its middle, its directions, half its length and height; figures have no descenders. */
function inkOf(label: Label): { middle: Vec2; u: Vec2; w: Vec2; half: Vec2 } {
  const [p, q] = labelCorners(label);
  const long = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const u: Vec2 = [(q[0] - p[0]) / long, (q[1] - p[1]) / long];
  const w: Vec2 = [-u[1], u[0]];
  const low = /[gjpqy,()]/.test(label.text) ? 0.2 : 0;
  // From the lower left of its room, which lies 0.8 of the capitals below the middle.
  const up = (0.8 - low / 2) * label.capMm;
  const middle: Vec2 = [p[0] + (u[0] * long) / 2 + w[0] * up, p[1] + (u[1] * long) / 2 + w[1] * up];
  // The room has spare width for another font.
  const ink = textWidth(label.text, label.capMm) / 1.04 - (0.12 * label.capMm) / CAP_PER_SIZE;
  return { middle, u, w, half: [ink / 2, (0.96 * label.capMm * (1 + low)) / 2] };
}

/** Kinds of line that run through a label, by stepping along each: not the way the board does it. */
function across(drawing: Drawing, label: Label): Set<StrokeKind> {
  const { middle, u, w, half } = inkOf(label);
  const inside = ([x, y]: Vec2): boolean => {
    const [dx, dy] = [x - middle[0], y - middle[1]];
    return Math.abs(dx * u[0] + dy * u[1]) < half[0] && Math.abs(dx * w[0] + dy * w[1]) < half[1];
  };
  const step = 0.25 * drawing.unit;
  const reach = Math.hypot(...half);
  const found = new Set<StrokeKind>();
  for (const { kind, shape } of drawing.strokes) {
    const pen = walkingPen();
    trace(shape, pen);
    const points = shape.type === "path" && shape.closed ? [...pen.points, pen.points[0]!] : pen.points;
    for (const [i, p] of points.slice(0, -1).entries()) {
      const q = points[i + 1]!;
      const long = Math.hypot(q[0] - p[0], q[1] - p[1]);
      const near = Math.hypot((p[0] + q[0]) / 2 - middle[0], (p[1] + q[1]) / 2 - middle[1]);
      if (near > long / 2 + reach) continue;
      const count = Math.max(1, Math.ceil(long / step));
      for (let k = 0; k <= count; k++)
        if (inside([p[0] + ((q[0] - p[0]) * k) / count, p[1] + ((q[1] - p[1]) * k) / count])) found.add(kind);
    }
  }
  return found;
}

/** Papers as they are drawn on screen and in print. */
const PAPERS = [SHEET, NARROW, COLUMN, ACROSS] as const;
const part = fc
  .record({ part: anyPart, inches: fc.boolean(), divisions: fc.constantFrom(12, 16, 24) })
  .map(({ part, inches, divisions }) => ({ ...part, divisions, units: inches ? "in" : "mm" }) as const);

/** Of all labels of a kind, so many in a thousand at most stand across an outline, a centre line, a dimension or an arrow. */
const MOST: readonly (readonly ["views" | "pattern", LabelRole, number])[] = [
  // The first and the last number are forced where there is no clear place at all.
  ["views", "number", 5],
  ["pattern", "number", 5],
  ["views", "dimension", 10],
  // Extension lines of the overall sizes pass behind them, and break there: lettering is drawn with paper round it.
  ["pattern", "dimension", 100],
  ["views", "name", 10],
  ["pattern", "name", 25],
];

it("labels keep clear of lines, for any part at the sizes of screen and paper", () => {
  const count = new Map<string, { all: number; struck: string[] }>();
  let kept = 0;
  fc.assert(
    fc.property(part, (part) => {
      const report = reportOf(part);
      for (const paper of PAPERS)
        for (const [what, drawing] of [
          ["views", viewsDrawing(report, { paper })],
          ["pattern", patternDrawing(report, { paper, blank: report.blanks[0]! })],
        ] as const)
          for (const label of drawing.labels) {
            const key = `${what} ${label.role}`;
            const one = count.get(key) ?? { all: 0, struck: [] };
            count.set(key, one);
            one.all += 1;
            const bad = [...across(drawing, label)].filter((kind) => kind !== "thin" && kind !== "hidden");
            if (bad.length > 0)
              one.struck.push(`${part.shape} ${paper.widthMm} ${label.text}: ${bad.join()}`);
            if (label.role === "number") kept += 1;
          }
    }),
    runs(30),
  );
  for (const [what, role, most] of MOST) {
    const { all, struck } = count.get(`${what} ${role}`)!;
    expect(all).toBeGreaterThan(200);
    expect((1000 * struck.length) / all, `${what} ${role}: ${struck.join("; ")}`).toBeLessThanOrEqual(most);
  }
  // Clear because they are placed, not because they are left out.
  expect(kept).toBeGreaterThan(1500);
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Drawing, Label } from "../../src/drawing/model.ts";
import { SHEET } from "../../src/drawing/paper.ts";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import { viewsDrawing } from "../../src/drawing/views.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { runs } from "../arbitraries.ts";
import { named, reportOf } from "../parts.ts";

/** Leaning over to the right and a little towards the reader: nothing about it is symmetrical. */
const [R, r, H, c] = [450, 200, 700, [150, -80]] as const;
const leaning = (extra: { seam?: { at: number }; mirror?: boolean; divisions?: number }) =>
  named({
    shape: "eccentric-cone",
    thickness: 1,
    largeEnd: { diameter: 2 * R, measured: "middle" },
    smallEnd: { diameter: 2 * r, measured: "middle", offset: [c[0], c[1]] },
    height: H,
    ...extra,
  });

const numbers = (drawing: Drawing): Label[] => drawing.labels.filter(({ role }) => role === "number");
const distance = (p: Vec2, q: Vec2) => Math.hypot(p[0] - q[0], p[1] - q[1]);

/** The two ends of the thin line or seam on a pattern whose end lies nearest to a label. */
function lineAt(drawing: Drawing, label: Label): readonly [Vec2, Vec2] {
  const ends = drawing.strokes.flatMap(({ kind, shape }) =>
    kind === "thin" && shape.type === "path" ? [[shape.points[0]!, shape.points[1]!] as const] : [],
  );
  const turned = ends.flatMap(([p, q]) => [[p, q] as const, [q, p] as const]);
  return turned.reduce((best, one) =>
    distance(one[0], label.at) < distance(best[0], label.at) ? one : best,
  );
}

/** True length of the element whose outward normal points to an angle, from the two circles alone. */
function trueLength(deg: number): number {
  const [x, y] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return Math.hypot(R * x - r * x - c[0], R * y - r * y - c[1], H);
}

/** Angle of each number round the large end of the view from above, as drawn. [degrees] */
function planAngles(drawing: Drawing): Map<string, number> {
  const circles = drawing.strokes.flatMap(({ kind, shape }) =>
    kind === "outline" && shape.type === "path" && shape.closed && shape.points.length > 40
      ? [shape.points]
      : [],
  );
  const widest = circles.reduce((best, one) => {
    const span = (points: readonly Vec2[]) =>
      Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x));
    return span(one) > span(best) ? one : best;
  });
  const [xs, ys] = [widest.map(([x]) => x), widest.map(([, y]) => y)];
  const centre: Vec2 = [(Math.max(...xs) + Math.min(...xs)) / 2, (Math.max(...ys) + Math.min(...ys)) / 2];
  const outside = numbers(drawing).filter(({ at }) => distance(at, centre) > R);
  return new Map(
    outside.map(({ text, at }) => [text, (Math.atan2(at[1] - centre[1], at[0] - centre[0]) * 180) / Math.PI]),
  );
}

const apart = (p: number, q: number) => Math.abs(((((p - q) % 360) + 540) % 360) - 180);

describe.each([
  ["inside face up", false],
  ["outside face up", true],
])("%s", (_, mirror) => {
  it("the line with a number on the pattern is the element at that number in the view from above", () => {
    fc.assert(
      fc.property(fc.integer({ min: -180, max: 180 }), (at) => {
        const report = reportOf(leaning({ seam: { at }, mirror }));
        const pattern = patternDrawing(report, { paper: SHEET, blank: report.blanks[0]! });
        const angles = planAngles(viewsDrawing(report, { paper: SHEET }));
        let checked = 0;
        for (const label of numbers(pattern)) {
          const drawn = angles.get(label.text);
          // The seams are edges of the plate: numbers 1 and 13 stand at lines that are outline.
          if (drawn === undefined || label.text === "1" || label.text === "13") continue;
          // Numbers may stand a little aside, but never half way to the next element, 30° on.
          const planDeg = at + (Number(label.text) - 1) * 30;
          expect(apart(drawn, planDeg)).toBeLessThan(14);
          const [from, to] = lineAt(pattern, label);
          expect(distance(from, to)).toBeCloseTo(trueLength(planDeg), 1);
          checked += 1;
        }
        expect(checked).toBeGreaterThan(12);
      }),
      runs(30),
    );
  });

  it("end B is up, and the numbers run from right to left unless it is mirrored", () => {
    const report = reportOf(leaning({ seam: { at: 20 }, mirror }));
    const pattern = patternDrawing(report, { paper: SHEET, blank: report.blanks[0]! });
    const { outline } = report.blanks[0]!;
    const middle = (Math.max(...outline.map(([, y]) => y)) + Math.min(...outline.map(([, y]) => y))) / 2;
    const seven = numbers(pattern)
      .filter(({ text }) => text === "7")
      .map(({ at }) => at[1]);
    expect(Math.min(...seven)).toBeLessThan(middle);
    expect(Math.max(...seven)).toBeGreaterThan(middle);
    const below = numbers(pattern)
      .filter(({ at, text }) => {
        const row = report.hand.rows[Number(text) - 1]!;
        return distance(at, row.a) < distance(at, row.b);
      })
      .sort((p, q) => Number(p.text) - Number(q.text));
    const steps = below.slice(1).map(({ at }, i) => Math.sign(at[0] - below[i]!.at[0]));
    expect(new Set(steps)).toEqual(new Set([mirror ? 1 : -1]));
    expect(below.length).toBeGreaterThan(6);
    expect(
      pattern.labels.some(({ text }) => text.includes(mirror ? "outside face up" : "inside face up")),
    ).toBe(true);
  });

  it("seam 1 stands where number 1 is", () => {
    const report = reportOf(leaning({ seam: { at: 20 }, mirror }));
    const pattern = patternDrawing(report, { paper: SHEET, blank: report.blanks[0]! });
    const [first, last] = [report.hand.rows[0]!, report.hand.rows.at(-1)!];
    const seam = (name: string) => pattern.labels.find(({ text }) => text === name)!.at;
    const middle = (row: typeof first): Vec2 => [(row.a[0] + row.b[0]) / 2, (row.a[1] + row.b[1]) / 2];
    expect(distance(seam("seam 1"), middle(first))).toBeLessThan(distance(seam("seam 1"), middle(last)) / 3);
    expect(distance(seam("seam 2"), middle(last))).toBeLessThan(distance(seam("seam 2"), middle(first)) / 3);
  });
});

it("the views show the small end where it is offset to: right in front and plan, towards the reader below in plan", () => {
  const report = reportOf(leaning({}));
  const drawing = viewsDrawing(report, { paper: SHEET });
  const uprights = drawing.strokes.flatMap(({ kind, shape }) =>
    kind === "centre" && shape.type === "path" && shape.points[0]![0] === shape.points[1]![0]
      ? [shape.points[0]!]
      : [],
  );
  const front = uprights.slice(0, 2).map(([x]) => x);
  expect(front[1]! - front[0]!).toBeCloseTo(c[0], 6);
  // First angle: the view from the left stands on the right, and what lies away from the reader lies on its left.
  // The last upright belongs to the sign of the projection.
  const left = uprights.slice(-3, -1).map(([x]) => x);
  expect(Math.min(...left)).toBeGreaterThan(Math.max(...front));
  expect(left[1]! - left[0]!).toBeCloseTo(-c[1], 6);
  const levels = drawing.strokes.flatMap(({ kind, shape }) =>
    kind === "centre" && shape.type === "path" && shape.points[0]![1] === shape.points[1]![1]
      ? [shape.points[0]![1]]
      : [],
  );
  expect(levels[1]! - levels[0]!).toBeCloseTo(c[1], 6);
  expect(Math.max(...levels.slice(0, 2))).toBeLessThan(-R);
});

import { expect, it } from "vitest";
import type { Drawing, ElementLine } from "../../src/drawing/model.ts";
import { closed } from "../../src/drawing/model.ts";
import { NARROW, SHEET } from "../../src/drawing/paper.ts";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import { picked, stepped } from "../../src/drawing/pick.ts";
import { seenAt } from "../../src/drawing/seenAt.ts";
import { nextPoint, snapPoints } from "../../src/drawing/snap.ts";
import { svgPen } from "../../src/drawing/svgPath.ts";
import { viewsDrawing } from "../../src/drawing/views.ts";
import { distance2, middle2, type Vec2 } from "../../src/geometry/vector.ts";
import { named, reportOf } from "../parts.ts";

const hood = reportOf(
  named({
    shape: "square-to-round",
    thickness: 2,
    rectangularEnd: { length: 400, width: 300, measured: "inside" },
    roundEnd: { diameter: 220, measured: "middle", offset: [30, 0] },
    height: 120,
    pieces: 2,
    seam: { at: 90 },
  }),
);
const sleeve = reportOf(
  named({
    shape: "right-cone",
    thickness: 3,
    largeEnd: { diameter: 600, measured: "middle" },
    smallEnd: { diameter: 300, measured: "middle" },
    height: 400,
    pieces: 2,
    seam: { gap: 2 },
  }),
);

const atEnds = (one: { from: Vec2; to: Vec2 }, p: Vec2, q: Vec2): boolean =>
  distance2(one.from, p) < 1e-9 && distance2(one.to, q) < 1e-9;

it.each([
  ["a hood", hood],
  ["a sleeve", sleeve],
])("gives every line on a pattern of %s the row of the marking table that runs along it", (_, report) => {
  for (const blank of report.blanks) {
    const { lines } = patternDrawing(report, { paper: SHEET, blank });
    // Those of the seam edges too.
    expect(lines.length).toBe(blank.lines.length + 2);
    for (const one of lines) {
      const row = report.hand.rows[one.elements[0]!]!;
      expect(row.piece).toBe(blank.piece);
      expect(atEnds(one, row.a, row.b)).toBe(true);
      // The same number of every piece that is cut from this pattern.
      for (const other of one.elements) {
        const like = report.hand.rows[other]!;
        expect(like.number).toBe(row.number);
        expect(like.trueMm).toBeCloseTo(row.trueMm, 6);
      }
    }
  }
});

it("gives every line of the view from above the element that it shows, by its length in plan", () => {
  const drawing = viewsDrawing(hood, { paper: SHEET });
  const plans = hood.hand.rows.map(({ planMm }) => planMm);
  for (const k of plans.keys()) {
    const seen = drawing.lines.filter(({ elements }) => elements.includes(k));
    expect(seen.some(({ from, to }) => Math.abs(distance2(from, to) - plans[k]!) < 1e-6)).toBe(true);
  }
});

it("has every line in every view: from the front those of the back hidden, and where lines are left out these too", () => {
  const fine = reportOf({ ...sleeve.part, divisions: 96 });
  for (const report of [hood, sleeve, fine]) {
    const { lines } = viewsDrawing(report, { paper: SHEET });
    const count = report.hand.rows.length;
    for (const k of report.hand.rows.keys())
      expect(lines.filter(({ elements }) => elements.includes(k)).length).toBe(lines.length / count);
    const front = lines.slice(0, count);
    for (const [k, { shown }] of front.entries()) {
      // Looking along +y one sees what faces −y.
      const facing = -Math.sin((report.hand.rows[k]!.planDeg * Math.PI) / 180);
      if (Math.abs(facing) > 0.1) expect(shown === "hidden").toBe(facing < 0);
    }
  }
  expect(
    viewsDrawing(fine, { paper: { ...NARROW, widthMm: 40 } }).lines.some(({ shown }) => shown === "left out"),
  ).toBe(true);
});

it("numbers the lines with the numbers of their rows", () => {
  for (const report of [hood, sleeve])
    for (const drawing of [
      viewsDrawing(report, { paper: NARROW }),
      patternDrawing(report, { paper: NARROW, blank: report.blanks[0]! }),
    ]) {
      const numbers = drawing.labels.filter(({ role }) => role === "number");
      expect(numbers.length).toBeGreaterThan(4);
      for (const { text, elements = [] } of numbers) {
        const [first] = text.split(/[–,]/);
        expect(report.hand.rows[elements[0]!]!.number).toBe(Number(first));
      }
    }
});

/** Two lines that meet at the origin, and one beside them. */
const at = (elements: readonly number[], from: Vec2, to: Vec2): ElementLine => ({
  elements,
  from,
  to,
  shown: "line",
});
const fan: Pick<Drawing, "lines" | "labels"> = {
  lines: [
    at([3], [0, 0], [100, 0]),
    at([4, 9], [0, 0], [0, 100]),
    at([7], [200, 0], [200, 100]),
    { ...at([8], [300, 0], [300, 100]), shown: "hidden" },
  ],
  labels: [],
};

it("takes the nearest line within reach, and by touching again the others that meet there, then none", () => {
  const touch = { at: [1, 0] as Vec2, reach: 20, near: 1 };
  expect(picked(fan, { ...touch, at: [60, 8] }, undefined)).toBe(3);
  expect(picked(fan, { ...touch, at: [60, 8] }, 3)).toBeNull();
  expect(picked(fan, { ...touch, at: [60, 30] }, undefined)).toBeUndefined();
  expect(picked(fan, touch, undefined)).toBe(3);
  expect(picked(fan, touch, 3)).toBe(4);
  // The line of a piece that is alike is this line too.
  expect(picked(fan, touch, 9)).toBeNull();
  expect(picked(fan, touch, 7)).toBe(3);
  // What is hidden is not touched.
  expect(picked(fan, { ...touch, at: [300, 50] }, undefined)).toBeUndefined();
});

it("takes a line by its number, where that stands when one looks nearer", () => {
  const drawing = patternDrawing(sleeve, { paper: SHEET, blank: sleeve.blanks[0]! });
  const label = drawing.labels.find(({ text, role }) => role === "number" && text === "5")!;
  for (const near of [1, 4]) {
    const at = seenAt(label, near);
    expect(picked(drawing, { at, reach: 0.5 * drawing.unit, near }, undefined)).toBe(label.elements![0]);
    // As far from the end of its line on the screen as before.
    expect(near * distance2(at, label.of!)).toBeCloseTo(distance2(label.at, label.of!), 9);
  }
});

it("steps from line to line and round", () => {
  expect(stepped(fan, undefined, 1)).toBe(3);
  // By keys one comes to hidden lines too.
  expect(stepped(fan, undefined, -1)).toBe(8);
  expect(stepped(fan, 3, 1)).toBe(4);
  expect(stepped(fan, 9, 1)).toBe(7);
  expect(stepped(fan, 7, 1)).toBe(8);
  expect(stepped(fan, 8, 1)).toBe(3);
  expect(stepped({ lines: [] }, 3, 1)).toBeUndefined();
});

it("goes from point to point by keys, straight on rather than aside, and stays where there is none", () => {
  const plate: Vec2[] = [
    [0, 0],
    [100, 5],
    [100, 80],
    [0, 90],
  ];
  const points = snapPoints({ strokes: [closed("outline", plate)] });
  const first = nextPoint(points, undefined, [1, 0]);
  expect(first).toEqual([0, 0]);
  expect(nextPoint(points, first, [1, 0])).toEqual([100, 5]);
  expect(nextPoint(points, first, [0, 1])).toEqual([0, 90]);
  expect(nextPoint(points, [100, 80], [-1, 0])).toEqual([0, 90]);
  expect(nextPoint(points, first, [-1, 0])).toEqual([0, 0]);
});

it("draws a curve as fine as one looks", () => {
  const round = Array.from({ length: 720 }, (_, i): Vec2 => {
    const at = (i * Math.PI) / 360;
    return [200 * Math.cos(at), 200 * Math.sin(at)];
  });
  const sheet = { extent: { left: -200, right: 200, bottom: -200, top: 200 }, unit: 5 };
  const shape = closed("outline", round).shape;
  /** How far the middles of the drawn pieces lie off the circle. [mm of paper] */
  const off = (near: number): number => {
    const points = svgPen(sheet, near)
      .d(shape)
      .match(/-?[\d.]+,-?[\d.]+/g)!
      .map((one) => one.split(",").map(Number) as [number, number]);
    const middles = points.slice(1).map((p, i) => middle2(p, points[i]!));
    return Math.max(...middles.map(([x, y]) => 40 - Math.hypot(x - 40, y - 40)));
  };
  expect(off(1)).toBeGreaterThan(0.005);
  for (const near of [1, 4, 16]) expect(off(near)).toBeLessThan(0.025 / near + 0.001);
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { lineStride } from "../../src/drawing/dense.ts";
import type { Drawing, StrokeKind } from "../../src/drawing/model.ts";
import { NARROW, SHEET } from "../../src/drawing/paper.ts";
import { viewsDrawing } from "../../src/drawing/views.ts";
import { hull } from "../../src/geometry/polygon.ts";
import { cross2, distance2, sub2, unit2, type Vec2 } from "../../src/geometry/vector.ts";
import type { Report } from "../../src/report/report.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { anyPart, eccentricCone, runs } from "../arbitraries.ts";
import { named, reportOf } from "../parts.ts";
import { areaOf } from "./judge.ts";

const paths = (drawing: Drawing, kind: StrokeKind, isClosed: boolean) =>
  drawing.strokes.flatMap((one) =>
    one.kind === kind && one.shape.type === "path" && one.shape.closed === isClosed ? [one.shape.points] : [],
  );
const middle = (points: readonly Vec2[]): Vec2 => {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [(Math.max(...xs) + Math.min(...xs)) / 2, (Math.max(...ys) + Math.min(...ys)) / 2];
};
/** Rings of the view from above: nothing else that is closed has so many corners. */
const rings = (drawing: Drawing, kind: StrokeKind) =>
  paths(drawing, kind, true).filter((points) => points.length > 40);

it("from above the ring of end B stands off the ring of end A as the part file says, and elements join them", () => {
  fc.assert(
    fc.property(eccentricCone, (part) => {
      const report = reportOf({ ...part, seam: { at: 17 } });
      const drawing = viewsDrawing(report, { paper: SHEET });
      const seen = rings(drawing, "outline");
      // The upper ring is drawn first and whole; the lower in one piece or in runs.
      const upper = middle(seen[0]!);
      // The end as drawn is round about its offset; its outside, at another distance from a leaning wall, not quite.
      const drawn: Vec2 = part.shape === "eccentric-cone" ? part.smallEnd.offset : [0, 0];
      const [dx, dy] = middle(report.solid.b.outside.map(([x, y]): Vec2 => [x, y]));
      expect(Math.hypot(dx - drawn[0], dy - drawn[1])).toBeLessThan(part.thickness);
      const a: Vec2 = [upper[0] - dx, upper[1] - dy];
      const lines = [...paths(drawing, "thin", false), ...paths(drawing, "outline", false)];
      const stride = lineStride(report, drawing.unit);
      for (const { a: p, b: q } of report.solid.elements.filter((_, i) => i % stride === 0)) {
        if (Math.hypot(p[0] - q[0], p[1] - q[1]) < 0.02) continue;
        const found = lines.some(
          ([from, to]) =>
            Math.hypot(from![0] - a[0] - p[0], from![1] - a[1] - p[1]) < 1e-3 &&
            Math.hypot(to![0] - a[0] - q[0], to![1] - a[1] - q[1]) < 1e-3,
        );
        expect(found).toBe(true);
      }
    }),
    runs(40),
  );
});

it("hides the lower end where the upper end overhangs it", () => {
  const spreading = (diameter: number) =>
    named({
      shape: "square-to-round",
      thickness: 1,
      rectangularEnd: { length: 300, width: 300, measured: "inside" },
      roundEnd: { diameter, measured: "inside" },
      height: 300,
    });
  const hidden = (diameter: number) => {
    const drawing = viewsDrawing(reportOf(spreading(diameter)), { paper: SHEET });
    return drawing.strokes.filter(({ kind }) => kind === "hidden").length;
  };
  expect(hidden(200)).toBe(0);
  // As wide as the corners are apart, and more: nothing of the square is seen from above.
  expect(hidden(500)).toBe(1);
  // Between, the corners stick out and the middles of the sides do not.
  expect(hidden(360)).toBe(4);
});

it("the front view's outline is the hull of all that is drawn in it", () => {
  fc.assert(
    fc.property(eccentricCone, (part) => {
      const report = reportOf(part);
      const drawing = viewsDrawing(report, { paper: SHEET });
      const outline = paths(drawing, "outline", true)[0]!;
      const space = [
        ...report.solid.a.outside,
        ...report.solid.b.outside,
        ...report.solid.a.inside,
        ...report.solid.b.inside,
      ];
      const all = hull(space.map(([x, , z]): Vec2 => [x, z]));
      expect(Math.abs(areaOf(outline) - areaOf(all)) / areaOf(all)).toBeLessThan(1e-9);
    }),
    runs(40),
  );
});

it("dimensions what the part file gives, as it gives it", () => {
  const report = reportOf(
    named({
      shape: "square-to-round",
      thickness: 4,
      rectangularEnd: { length: 800, width: 500, measured: "inside" },
      roundEnd: { diameter: 350, measured: "outside", offset: [90, -60] },
      height: 450,
    }),
  );
  const texts = viewsDrawing(report, { paper: SHEET })
    .labels.filter(({ role }) => role === "dimension")
    .map(({ text }) => text);
  expect(texts.sort()).toEqual(["450", "500 inside", "60", "800 inside", "90", "Ø 350 outside"]);
});

it("stands in first angle in millimetres and in third angle in inches", () => {
  const part = named({
    shape: "eccentric-cone",
    thickness: 2,
    largeEnd: { diameter: 400, measured: "inside" },
    smallEnd: { diameter: 200, measured: "inside", offset: [40, -60] },
    height: 240,
  });
  const placesOf = (units: "mm" | "in") => {
    const drawing = viewsDrawing(reportOf({ ...part, units }), { paper: SHEET });
    const at = (text: string) => drawing.labels.find((label) => label.text === text)!.at;
    const note = drawing.labels.map(({ text }) => text).join(" ");
    return { front: at("front"), above: at("from above"), left: at("from the left"), note };
  };
  const [mm, inches] = [placesOf("mm"), placesOf("in")];
  expect(mm.above[1]).toBeLessThan(mm.front[1] - 200);
  expect(mm.left[0]).toBeGreaterThan(mm.front[0] + 200);
  expect(mm.note).toContain("First-angle projection");
  expect(inches.above[1]).toBeGreaterThan(inches.front[1] + 200);
  expect(inches.left[0]).toBeLessThan(inches.front[0] - 200);
  expect(inches.note).toContain("Third-angle projection");
});

it("draws of many lines as many as stay apart, and all of a few", () => {
  const cone = (divisions: number) =>
    reportOf(
      named({
        shape: "right-cone",
        thickness: 2,
        largeEnd: { diameter: 400, measured: "inside" },
        smallEnd: { diameter: 200, measured: "inside" },
        height: 240,
        divisions,
      }),
    );
  expect(lineStride(cone(12), 10)).toBe(1);
  // 400 π / 96 = 13 mm of the part, 0.65 mm of paper at 1:20.
  expect(lineStride(cone(96), 20)).toBe(2);
  expect(lineStride(cone(96), 50)).toBe(8);
});

it("writes the number of a seam's line on the side of its own piece's lines, where another piece's line lies on it", () => {
  let [looked, wrong] = [0, 0];
  const look = (report: Report): void => {
    for (const paper of [SHEET, NARROW]) {
      const { labels, lines } = viewsDrawing(report, { paper });
      for (const label of labels) {
        const [element] = label.role === "number" ? (label.elements ?? []) : [];
        const row = element === undefined ? undefined : report.hand.rows[element];
        if (element === undefined || !row || !label.of) continue;
        const own = report.hand.rows.filter(({ piece }) => piece === row.piece);
        const towards = row.number === 1 ? 1 : row.number === own.length ? -1 : 0;
        if (towards === 0 || own.length === report.hand.rows.length) continue;
        // The one of this view's places of the line, and of its neighbour, where the number stands.
        const [place, next] = [element, element + towards].map(
          (one) =>
            lines
              .filter(({ elements }) => elements.includes(one))
              .flatMap(({ from, to }) => [from, to])
              .toSorted((p, q) => distance2(p, label.of!) - distance2(q, label.of!))[0],
        );
        if (!place || !next || distance2(place, label.of) > 1e-6 || distance2(next, place) < 1e-6) continue;
        looked += 1;
        const out = unit2(sub2(label.at, place));
        const run = sub2(next, place);
        const line = lines.find(
          ({ elements, from, to }) => elements.includes(element) && (from === place || to === place),
        )!;
        const along = unit2(sub2(line.to, line.from));
        // Both lie on the same side of the seam's line, or the number carries it on.
        if (cross2(along, out) * Math.sign(cross2(along, run)) < -1e-6) wrong += 1;
      }
    }
  };
  for (const { report } of readBinder().parts) look(report);
  expect(looked).toBeGreaterThan(50);
  expect(wrong).toBe(0);
  fc.assert(
    fc.property(anyPart, (part) => look(reportOf(part))),
    runs(60),
  );
  expect(looked).toBeGreaterThan(200);
  // Where nothing else would tell which way the numbers run, and its own side has no room.
  expect(wrong / looked).toBeLessThan(0.07);
});

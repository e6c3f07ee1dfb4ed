import fc from "fast-check";
import { expect, it } from "vitest";
import { blankInHand } from "../../src/drawing/blankInHand.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import type { Paper } from "../../src/drawing/paper.ts";
import type { Blank, Report } from "../../src/report/report.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { blankPaper } from "../../src/site/forming/papers.ts";
import { eccentricCone, rightCone, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";
import { coveredLabels, outsideSheet } from "./judge.ts";

/** The names that steps of a work sheet speak of. */
function missing({ labels }: Drawing, blank: Blank): string[] {
  const texts = labels.map(({ text }) => text);
  const names = blank.edges.filter(({ lengthMm }) => lengthMm > 0).map(({ name }) => name);
  return [...names, "through the rolls"].filter((name) => !texts.includes(name));
}

const rolled = readBinder().parts.filter(({ report }) => report.forming.route === "roll");

it.each(rolled)("$report.part.name: the blank on its work sheet tells every edge by name", ({ report }) => {
  const [blank] = report.blanks;
  const drawing = blankInHand(report, { paper: blankPaper(report), blank: blank! });
  expect(blank!.edges.map(({ name }) => name)).toEqual(expect.arrayContaining(["seam 1", "seam 2"]));
  expect(missing(drawing, blank!)).toEqual([]);
});

it("is there for any cone, in a low place too: seams, ends, and the way through the rolls", () => {
  let drawn = 0;
  const draw = (report: Report, paper: Paper) => {
    for (const blank of report.blanks) {
      const drawing = blankInHand(report, { paper, blank });
      expect(missing(drawing, blank)).toEqual([]);
      expect(coveredLabels(drawing)).toEqual([]);
      expect(outsideSheet(drawing)).toEqual([]);
      drawn += 1;
    }
  };
  fc.assert(
    fc.property(fc.oneof(rightCone, eccentricCone), (part) => {
      const report = reportOf(part);
      draw(report, blankPaper(report));
      draw(report, { ...blankPaper(report), heightMm: 38 });
    }),
    runs(100),
  );
  expect(drawn).toBeGreaterThan(200);
});

it("is drawn as large as the sheet of a part of few rows has room for", () => {
  const plain = rolled.find(({ report }) => report.forming.inspection!.rows.length < 15)!;
  expect(blankPaper(plain.report).heightMm).toBeGreaterThanOrEqual(58);
});

it("marks where zones begin, from seam edge 1 along both edges", () => {
  const { report } = rolled.find(({ report: one }) => one.part.name === "overflow-shift")!;
  const zones = report.forming.plans.find(({ route }) => route === "roll")!.settings!.zones;
  const begins = zones.flatMap(({ begins: mark }, i) => (mark ? [{ ...mark, name: `zone ${i + 1}` }] : []));
  const [blank] = report.blanks;
  const drawing = blankInHand(report, { paper: blankPaper(report, zones), blank: blank!, zones: begins });
  const names = drawing.labels.map(({ text }) => text).filter((text) => text.startsWith("zone"));
  expect(names).toEqual(["zone 2", "zone 3"]);
  const lines = drawing.strokes.flatMap(({ kind, shape }) =>
    kind === "centre" && shape.type === "path" ? [shape.points] : [],
  );
  // The zones are borders of element lines: each mark lies where the bend zone has its element.
  const item = report.hand.rows.filter(({ piece }) => piece === 1);
  expect(lines).toHaveLength(2);
  for (const [i, [large, small]] of lines.entries()) {
    const share = begins[i]!.largeMm / blank!.edges.find(({ name }) => name === "large end")!.lengthMm;
    const row = item[Math.round(share * (item.length - 1))]!;
    const next = item[1]!;
    const pitch = Math.hypot(next.a[0] - item[0]!.a[0], next.a[1] - item[0]!.a[1]);
    expect(Math.hypot(large![0] - row.a[0], large![1] - row.a[1])).toBeLessThan(1.5 * pitch);
    expect(Math.hypot(small![0] - row.b[0], small![1] - row.b[1])).toBeLessThan(1.5 * pitch);
  }
});

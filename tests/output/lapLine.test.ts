import fc from "fast-check";
import { expect, it } from "vitest";
import { brakePicture } from "../../src/drawing/forming/brakePicture.ts";
import { SHEET } from "../../src/drawing/paper.ts";
import { edgePaths } from "../../src/drawing/pattern/edges.ts";
import type { Stroke } from "../../src/drawing/model.ts";
import { lineThrough, leftOf } from "../../src/geometry/mirrorLine.ts";
import { distance2, type Vec2 } from "../../src/geometry/vector.ts";
import { templateOf } from "../../src/output/pdf/template.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { named, reportOf } from "../parts.ts";

/** The ends of a straight stroke; none of any other. */
const endsOf = ({ shape }: Stroke): readonly Vec2[] =>
  shape.type === "path" && shape.points.length === 2 ? shape.points : [];

const cone = (lap: number, more: object = {}) =>
  reportOf(
    named({
      shape: "right-cone",
      thickness: 2,
      largeEnd: { diameter: 700, measured: "outside" },
      smallEnd: { diameter: 300, measured: "outside" },
      height: 400,
      seam: { joint: "lap", lap },
      ...more,
    }),
  );
/** How far both ends of a line lie from the cut edge of seam 2. [mm] */
const fromEdge = (report: ReturnType<typeof reportOf>, blank: (typeof report.blanks)[number]) => {
  const { points } = edgePaths(blank).find(({ name }) => name === "seam 2")!;
  const edge = lineThrough(points[0]!, points.at(-1)!);
  return blank.lines.slice(-1).flatMap(({ from, to }) => [from, to].map((p) => Math.abs(leftOf(edge, p))));
};

it("is drawn on every template of a lap, dashed and with its name, as far in as the lap is wide", () => {
  fc.assert(
    fc.property(even(5, 60), fc.constantFrom(1, 2, 3), (lap, pieces) => {
      const report = cone(lap, { pieces });
      for (const blank of report.blanks) {
        for (const far of fromEdge(report, blank)) expect(Math.abs(far - lap)).toBeLessThan(0.02);
        const { strokes, labels } = templateOf(report, blank);
        const { from, to } = blank.lines.at(-1)!;
        const on = strokes.filter((one) => {
          const ends = endsOf(one);
          return ends.length > 0 && ends.every((p) => [from, to].some((end) => distance2(p, end) < 1e-3));
        });
        expect(on.map(({ kind }) => kind)).toEqual(["hidden"]);
        expect(labels.some(({ text }) => text.endsWith("lap to here"))).toBe(true);
      }
    }),
    runs(20),
  );
});

it("is on the template and in the picture of bend lines where the brake’s own lines take the place of the others", () => {
  const { report } = readBinder().parts.find((one) => one.report.part.name === "rain-cap")!;
  const [blank] = report.blanks;
  const plan = chosenPlan(report)?.brake;
  const { from, to } = blank!.lines.at(-1)!;
  // Among a brake's lines those not bent are dashed: the lap's is chain-dotted there.
  const drawings = [
    [templateOf(report, blank!), "hidden", "lap to here"],
    [
      brakePicture(report, { paper: SHEET, blank: blank!, plan: plan! }),
      "centre",
      "lap line: seam edge 1 to here",
    ],
  ] as const;
  for (const [{ strokes, labels }, lapKind, name] of drawings) {
    expect(labels.map(({ text }) => text)).toContain(name);
    const ends = strokes.filter(({ kind }) => kind === lapKind).map(endsOf);
    expect(ends.some(([a, b]) => a && b && distance2(a, from) < 1e-3 && distance2(b, to) < 1e-3)).toBe(true);
  }
});

it("has its name on its own inner side, and that of seam 2 along the edge of the plate, whichever face is up", () => {
  const hood = named({
    shape: "square-to-round",
    thickness: 2,
    rectangularEnd: { length: 610, width: 457, measured: "outside" },
    roundEnd: { diameter: 400, measured: "outside" },
    height: 368,
    pieces: 2,
    seam: { at: 90, joint: "lap", lap: 19 },
  });
  for (const part of [hood, { ...hood, mirror: true }]) {
    const report = reportOf(part);
    const [blank] = report.blanks;
    const { labels } = brakePicture(report, {
      paper: SHEET,
      blank: blank!,
      plan: report.forming.plans[0]!.brake!,
    });
    const placed = (text: RegExp) => labels.find((one) => text.test(one.text))!.at;
    const { points } = edgePaths(blank!).find(({ name }) => name === "seam 2")!;
    const edge = lineThrough(points[0]!, points.at(-1)!);
    const lap = blank!.lines.at(-1)!;
    const inwards = Math.sign(leftOf(edge, lap.from));
    const from = (at: Vec2) => inwards * leftOf(edge, at);
    const wide = from(lap.from);
    expect(from(placed(/^lap (line: seam edge 1 )?to here$/))).toBeGreaterThan(wide);
    expect(from(placed(/^seam 2$/))).toBeLessThan(0);
    // The last number stands at its line, nearer than to the corner of the plate beyond.
    const lines = report.forming.plans[0]!.brake!.lines.filter(({ piece }) => piece === blank!.piece);
    const last = lines.at(-1)!;
    const at = placed(new RegExp(`^${last.number}$`));
    const own = Math.min(distance2(at, last.from), distance2(at, last.to));
    for (const corner of [points[0]!, points.at(-1)!]) expect(distance2(at, corner)).toBeGreaterThan(own);
  }
});

it("is on no template of a butt seam", () => {
  const report = cone(0, { seam: { gap: 2 } });
  const { strokes, labels } = templateOf(report, report.blanks[0]!);
  expect(strokes.some(({ kind }) => kind === "hidden")).toBe(false);
  expect(labels.some(({ text }) => text.includes("lap"))).toBe(false);
});

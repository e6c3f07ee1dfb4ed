import { expect, it } from "vitest";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { develop } from "../../src/report/develop.ts";
import { Part } from "../../src/shapes/part.ts";
import { pagesOf } from "./read.ts";

/** What the page says of its example must be what stands beside it, developed live. */
const { catalogue } = loadCatalogue("content");
function reportOf(name: string) {
  const { front } = pagesOf("content/shapes").find((page) => page.name === name)!;
  const developed = develop({ ...Part.parse((front as { example: unknown }).example), name }, { catalogue });
  if (developed.kind === "refused")
    throw new Error(developed.issues.map(({ problem }) => problem).join("; "));
  return developed.report;
}
const edge = (report: ReturnType<typeof reportOf>, name: string) =>
  report.blanks[0]!.edges.find((one) => one.name === name)!.lengthMm;

it("right cone: whole radii and degrees", () => {
  const report = reportOf("right-cone");
  expect(report.cone!.slantMm).toBeCloseTo(250, 6);
  expect(report.cone!.outerRadiusMm).toBeCloseTo(500, 6);
  expect(report.cone!.innerRadiusMm).toBeCloseTo(250, 6);
  expect(report.cone!.sectorDeg).toBeCloseTo(216, 6);
  expect(edge(report, "large end")).toBeCloseTo(1885.0, 1);
});

it("eccentric cone: the element lines of the table", () => {
  const report = reportOf("eccentric-cone");
  const expected = [250, 253.7, 263.4, 276.1, 288.3, 296.9, 300];
  const found = report.hand.rows.slice(0, 7).map(({ trueMm }) => trueMm);
  for (const [i, mm] of expected.entries()) expect(found[i]).toBeCloseTo(mm, 1);
  expect(edge(report, "seam 1")).toBeCloseTo(250, 6);
});

it("square-to-round: seams of 150, borders of 250 and the bends of seven lines", () => {
  const report = reportOf("square-to-round");
  expect(report.blanks).toHaveLength(2);
  expect(edge(report, "seam 1")).toBeCloseTo(150, 6);
  expect(edge(report, "seam 2")).toBeCloseTo(150, 6);
  const borders = report.blanks[0]!.lines.filter(({ planDeg }) => Math.abs(planDeg % 90) < 1e-6);
  expect(borders.length).toBeGreaterThanOrEqual(4);
  for (const { lengthMm } of borders) expect(lengthMm).toBeCloseTo(250, 6);
  expect(report.shape.turningDeg).toBeCloseTo(4 * 71.068, 2);
});

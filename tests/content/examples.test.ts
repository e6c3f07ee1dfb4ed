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

it("eccentric cone: one setting, zones or the brake by the limits that the page names", () => {
  const { front, body } = pagesOf("content/shapes").find((page) => page.name === "eccentric-cone")!;
  const limit = (pattern: RegExp) => Number(pattern.exec(body)![1]);
  const [within, most] = [limit(/Up to ([\d.]+) times, one setting/), limit(/more than (\d+) zones/)];
  const example = Part.parse((front as { example: unknown }).example);
  if (example.shape !== "eccentric-cone") throw new Error(example.shape);
  const seen = new Set<string>();
  for (let offset = 5; offset <= 360; offset += 5) {
    const part = {
      ...example,
      name: "moved",
      smallEnd: { ...example.smallEnd, offset: [offset, 0] as [number, number] },
    };
    const developed = develop(part, { catalogue });
    if (developed.kind === "refused") continue;
    const { spread, zones, recommendation } = developed.report.forming.evenness!;
    const times = Math.max(spread.large, spread.small ?? 1);
    const said = times <= within ? "roll" : zones <= most ? "roll in zones" : "brake";
    expect(recommendation, `offset ${offset}, ${times} times, ${zones} zones`).toBe(said);
    seen.add(said);
  }
  expect(seen).toEqual(new Set(["roll", "roll in zones", "brake"]));
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

import { expect, it } from "vitest";
import { regionChart } from "../../../src/drawing/forming/regionChart.ts";
import { NARROW, SHEET } from "../../../src/drawing/paper.ts";
import { onMachine } from "../../../src/forming/onMachine.ts";
import { loadCatalogue } from "../../../src/input/loadCatalogue.ts";
import { readFolder } from "../../../src/input/readFolder.ts";
import { develop } from "../../../src/report/develop.ts";
import type { NamedPart } from "../../../src/report/lay.ts";
import type { Report } from "../../../src/report/report.ts";
import { partChart } from "../../../src/site/bench/machines/partChart.ts";
import { coveredLabels, outsideSheet } from "../../drawing/judge.ts";

const tables = loadCatalogue();
const { parts, shop } = readFolder("demo-data", tables);

function made(part: NamedPart): Report {
  const developed = develop(part, { ...tables, shop: shop! });
  if (developed.kind === "refused") throw new Error(part.name);
  return developed.report;
}
const reports = parts.flatMap(({ part }) => {
  const report = made(part);
  return report.forming.plans.map(({ machine }) => ({
    ...report,
    forming: onMachine(report.forming, machine!),
  }));
});

/** Is a place above a curve, by straight lines between its points? */
function above(points: readonly (readonly [number, number])[], x: number, y: number): boolean {
  const i = points.findIndex(([px], k) => k > 0 && px >= x);
  const [[px, py], [qx, qy]] = [points[i - 1]!, points[i]!];
  return y > (qx === px ? Math.min(py, qy) : py + ((x - px) / (qx - px)) * (qy - py));
}

it("puts a part where its own checks of strength, thickness and width put it, on every machine that takes it", () => {
  let charted = 0;
  const cylinders = new Set<string>();
  for (const report of reports) {
    const { name } = report.part;
    const chart = partChart(report, shop!, tables.catalogue);
    if (!chart) {
      cylinders.add(name);
      continue;
    }
    charted++;
    expect(chart.machine.name).toBe(report.forming.machine);
    const [panel, ...more] = chart.chart.panels;
    const [dot, ...dots] = panel!.dots;
    expect([more, dots]).toEqual([[], []]);
    const drawnIn = above(panel!.limit, dot!.x, dot!.y)
      ? "fail"
      : above(panel!.near, dot!.x, dot!.y)
        ? "caution"
        : "pass";
    expect(drawnIn, name).toBe(chart.region);
    // The machine takes the part, so it cannot lie beyond; the number that the check asks about is that of the dot.
    expect(chart.region, name).not.toBe("fail");
    const roll = report.forming.route === "roll";
    const asked = report.forming.checks.find(({ id }) => id === (roll ? "working-width" : "brake-bed"));
    expect(roll ? dot!.x : dot!.y).toBe(asked!.value);
    expect(roll ? dot!.y : dot!.x).toBe(report.part.thickness);
  }
  expect(charted).toBeGreaterThan(25);
  // Both are drawn as large at one end as at the other.
  expect([...cylinders].toSorted()).toEqual(["dust-main-sleeve", "gravel-spout-elbow"]);
});

it("draws it on wide and narrow paper with no label over another, and the same in words", () => {
  for (const report of reports) {
    const chart = partChart(report, shop!, tables.catalogue);
    if (!chart) continue;
    for (const paper of [SHEET, NARROW]) {
      const drawing = regionChart(chart.chart, { paper: { ...paper, heightMm: 100 } });
      const where = `${report.part.name} on ${chart.machine.name}, ${paper.name}`;
      expect(coveredLabels(drawing), where).toEqual([]);
      expect(outsideSheet(drawing), where).toEqual([]);
      expect(drawing.dropped, where).toEqual([]);
    }
    expect(chart.words).toMatch(/: (?:goes|near the limit)\.$/);
  }
});

it("shows a part that no machine takes on the nearest miss, beyond what it takes", () => {
  const report = made(parts.find(({ part }) => part.name === "crusher-throat")!.part);
  const chart = partChart(report, shop!, tables.catalogue)!;
  expect(report.forming.checks).toEqual(
    expect.arrayContaining([
      ...report.forming.machines.find(({ machine }) => machine === chart.machine.name)!.checks,
    ]),
  );
  expect(chart.region).toBe("fail");
  expect(chart.words).toMatch(/: beyond\.$/);
});

it("has no chart of a machine that is none of the shop's", () => {
  const report = reports[0]!;
  expect(partChart(report, { ...shop!, machines: [] }, tables.catalogue)).toBeUndefined();
});

it("names the dot wherever it moves, beyond the plot too", () => {
  const done = new Set<string>();
  for (const report of reports) {
    const made = partChart(report, shop!, tables.catalogue);
    if (!made || done.has(made.machine.name)) continue;
    done.add(made.machine.name);
    const { chart } = made;
    for (const across of [0.02, 0.2, 0.4, 0.51, 0.7, 0.9, 1.2])
      for (const up of [0.02, 0.2, 0.4, 0.6, 0.8, 0.99, 1.5]) {
        const dot = { number: "this part", x: across * chart.x.to, y: up * chart.y.to };
        const panels = chart.panels.map((panel) => ({ ...panel, dots: [dot] }));
        for (const paper of [SHEET, NARROW]) {
          const drawing = regionChart({ ...chart, panels }, { paper: { ...paper, heightMm: 100 } });
          const where = `${made.machine.name} ${across} ${up} ${paper.name}`;
          expect([...coveredLabels(drawing), ...outsideSheet(drawing), ...drawing.dropped], where).toEqual(
            [],
          );
        }
      }
  }
  expect(done.size).toBe(3);
});

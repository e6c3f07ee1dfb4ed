import { globSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { describe, expect, it } from "vitest";
import { brakePicture, hitOf, linesOf } from "../../src/drawing/forming/brakePicture.ts";
import { curvaturePlot } from "../../src/drawing/forming/curvaturePlot.ts";
import { within } from "../../src/drawing/forming/plotCurve.ts";
import { springbackCurve } from "../../src/drawing/forming/springbackCurve.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import { NARROW, type Paper, SHEET } from "../../src/drawing/paper.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readPart } from "../../src/input/readPart.ts";
import { readShop } from "../../src/input/readShop.ts";
import { develop } from "../../src/report/develop.ts";
import type { Report } from "../../src/report/report.ts";
import { coveredLabels, outsideSheet } from "./judge.ts";
import { svgText } from "./svgText.ts";

const tables = loadCatalogue("content");
const read = (path: string) => readFileSync(path, "utf8");
const shop = readShop(read("demo-data/shop.yaml"), { path: "demo-data/shop.yaml", ...tables }).value!;
/** A file with two dots in its name holds trials and no part. */
const parts = globSync("demo-data/parts/*.yaml").filter((path) => !basename(path, ".yaml").includes("."));
const reports = new Map(
  parts.map((path) => {
    const { part } = readPart(read(path), { path, ...tables });
    const developed = develop(part!, { catalogue: tables.catalogue, shop });
    if (developed.kind === "refused") throw new Error(path);
    return [basename(path, ".yaml"), developed.report] as const;
  }),
);

const zonesOf = ({ forming }: Report) => forming.plans.flatMap(({ settings }) => settings?.zones ?? []);
const brakeOf = ({ forming }: Report) => forming.plans.find(({ brake }) => brake)?.brake;

const drawings: readonly [string, (report: Report, paper: Paper) => Drawing | undefined][] = [
  ["springback", (report, paper) => springbackCurve(report, { paper })],
  ["curvature", (report, paper) => curvaturePlot(report, { paper, zones: zonesOf(report) })],
  [
    "bend lines",
    (report, paper) => {
      const plan = brakeOf(report);
      return plan ? brakePicture(report, { paper, blank: report.blanks[0]!, plan }) : undefined;
    },
  ],
];

describe.each(drawings)("%s", (_, draw) => {
  it("no label covers another, nothing leaves the sheet, for any part of the job", () => {
    let drawn = 0;
    for (const [name, report] of reports)
      for (const paper of [SHEET, NARROW]) {
        const drawing = draw(report, paper);
        if (!drawing) continue;
        drawn += 1;
        expect([name, ...coveredLabels(drawing), ...outsideSheet(drawing)]).toEqual([name]);
        expect(drawing.paperWidthMm).toBeCloseTo(paper.widthMm, 6);
      }
    expect(drawn).toBeGreaterThan(4);
  });
});

it("marks every place of the part on its springback curve, and none for a folded skin", () => {
  for (const report of reports.values()) {
    const drawing = springbackCurve(report, { paper: SHEET });
    const { springback } = report.forming;
    expect(drawing === undefined).toBe(springback === null);
    if (!drawing || !springback) continue;
    const dots = drawing.strokes.filter(({ kind, shape }) => kind === "arrow" && shape.type === "arc");
    expect(dots.length).toBe(springback.places.length);
    for (const { place } of springback.places)
      expect(drawing.labels.some(({ text }) => text.startsWith(place))).toBe(true);
  }
});

it("ends every bend line where the plan says it stops short", () => {
  let short = 0;
  for (const report of reports.values()) {
    const plan = brakeOf(report);
    for (const blank of plan ? report.blanks : []) {
      const lines = linesOf(plan!, blank);
      for (const one of lines) {
        const [wide, stop, narrow] = hitOf(one, lines);
        expect(Math.hypot(stop[0] - narrow[0], stop[1] - narrow[1])).toBeCloseTo(one.stopsShortMm, 1);
        expect(Math.hypot(wide[0] - narrow[0], wide[1] - narrow[1])).toBeCloseTo(one.lengthMm, 1);
        if (one.stopsShortMm > 0) short += 1;
      }
    }
  }
  expect(short).toBeGreaterThan(10);
});

it("cuts a curve where it leaves the plot", () => {
  const curve = [
    [0, 0],
    [1, 2],
    [2, 6],
    [3, 6],
    [4, 2],
  ] as const;
  expect(within(curve, [0, 4])).toEqual([
    [
      [0, 0],
      [1, 2],
      [1.5, 4],
    ],
    [
      [3.5, 4],
      [4, 2],
    ],
  ]);
});

it.each([
  ["springback", "gravel-bin-bottom", 0],
  ["springback", "sand-trap-cone", 0],
  ["curvature", "feed-spout-reducer", 1],
  ["curvature", "drip-spike", 1],
  ["curvature", "gravel-spout-elbow", 1],
  ["bend lines", "fan-inlet", 2],
  ["bend lines", "screw-feed-transition", 2],
  ["bend lines", "flue-foot", 2],
] as const)("%s of %s looks as it was looked at", async (kind, name, i) => {
  const drawing = drawings[i]![1](reports.get(name)!, SHEET)!;
  await expect(svgText(drawing)).toMatchFileSnapshot(`golden/${name}-${kind.replace(" ", "-")}.svg`);
});

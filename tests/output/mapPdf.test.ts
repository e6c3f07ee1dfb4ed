import { describe, expect, it } from "vitest";
import { boxOf } from "../../src/drawing/box.ts";
import { flatten } from "../../src/drawing/flatten.ts";
import { middle2, type Vec2 } from "../../src/geometry/vector.ts";
import { fullSizePdf } from "../../src/output/pdf/fullSize.ts";
import { templateOf, turning } from "../../src/output/pdf/template.ts";
import { tilePaper } from "../../src/output/pdf/tilePaper.ts";
import { uprightNumber } from "../../src/output/uprightNumber.ts";
import type { Report } from "../../src/report/report.ts";
import { named, reportOf } from "../parts.ts";
import { fonts } from "./fonts.ts";
import { readPdf } from "./readPdf.ts";

const oblique = (height: number) =>
  reportOf(
    named({
      shape: "eccentric-cone",
      thickness: 3,
      largeEnd: { diameter: 400, measured: "inside" },
      smallEnd: { diameter: 200, measured: "inside", offset: [60, 40] },
      height,
    }),
  );
const hopper = () =>
  reportOf(
    named({
      shape: "square-to-round",
      thickness: 2,
      rectangularEnd: { length: 600, width: 450, measured: "inside" },
      roundEnd: { diameter: 400, measured: "inside" },
      height: 350,
      pieces: 2,
    }),
  );

async function pagesOf(report: Report) {
  const date = "D:20260131120000+00'00'";
  const done = fullSizePdf(report, report.blanks[0]!, { paper: tilePaper("a4"), fonts, date, count: 1 });
  if (done.kind === "refused") throw new RangeError(done.problem);
  return (await readPdf(done.bytes)).pages;
}

describe("the map of the sheets", () => {
  it.each([
    ["element lines", oblique(300)],
    ["bend lines", hopper()],
  ])("has the number of every one of the %s once, in their order from the right", async (name, report) => {
    const template = templateOf(report, report.blanks[0]!);
    expect(template.lineName).toBe(name);
    const [map] = await pagesOf(report);
    const numbers = template.marked.flatMap(({ text }) => text?.replace(/ \(.*/, "") ?? []);
    expect(numbers.length).toBeGreaterThan(8);
    const found = map!.texts.filter(({ text }) => numbers.includes(text) && text !== "");
    const steps = new Set(["1", "2", "3", "4"]);
    // The steps of the work below the map are numbered too, at the left margin.
    const onMap = found.filter(({ text, at }) => !(steps.has(text) && at[0] < 20));
    expect(onMap.map(({ text }) => text).toSorted()).toEqual(numbers.toSorted());
    const across = onMap.toSorted((p, q) => q.at[0] - p.at[0]).map(({ text }) => Number.parseInt(text, 10));
    expect(across.map((one) => uprightNumber(one))).toEqual(
      across.toSorted((p, q) => p - q).map(uprightNumber),
    );
  });

  it("tells where the marking table's nought is: on a sheet, or on the map alone", async () => {
    for (const report of [oblique(300), oblique(900), hopper()]) {
      const [map, ...sheets] = await pagesOf(report);
      const words = map!.texts.map(({ text }) => text).join(" ");
      const isOnSheet = sheets.some(({ texts }) => texts.some(({ text }) => text === "0, 0"));
      expect(map!.texts.some(({ text }) => text === "0, 0")).toBe(true);
      expect(words).toContain("The cross “0, 0” is where the marking table’s x and y begin");
      expect(words.includes("on the map alone")).toBe(!isOnSheet);
    }
  });
});

it.each([0, 25])(
  "a template turned by %i° has a cross at the marking table's nought, its arms along x and y",
  (deg) => {
    const report = oblique(300);
    const blank = report.blanks[0]!;
    const { strokes, origin } = templateOf(report, blank, deg);
    // The arrow of the side that is up is drawn before it.
    // The arrow of the side that is up is drawn before it.
    const dimensions = strokes.filter(({ kind }) => kind === "dimension");
    const arms = dimensions.slice(-2).map(({ shape }) => flatten(shape));
    const { left, bottom } = boxOf(blank.outline);
    const nought = turning(deg)([left, bottom]);
    expect(origin).toEqual(nought);
    for (const [i, [p, q]] of arms.entries()) {
      const [x, y] = middle2(p!, q!);
      expect(x).toBeCloseTo(nought[0], 9);
      expect(y).toBeCloseTo(nought[1], 9);
      const way: Vec2 = [q![0] - p![0], q![1] - p![1]];
      const angle = (Math.atan2(way[1], way[0]) * 180) / Math.PI;
      expect(angle).toBeCloseTo(deg + 90 * i, 9);
    }
  },
);

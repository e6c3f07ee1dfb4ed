import { globSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { boxOf } from "../../src/drawing/box.ts";
import { flatten } from "../../src/drawing/flatten.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import { NARROW, SHEET } from "../../src/drawing/paper.ts";
import { regionChart } from "../../src/drawing/forming/regionChart.ts";
import { between2, type Vec2 } from "../../src/geometry/vector.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readPart } from "../../src/input/readPart.ts";
import { readShop } from "../../src/input/readShop.ts";
import { develop } from "../../src/report/develop.ts";
import type { Binder } from "../../src/site/binder/binder.ts";
import { brakeChart, brakeChartWords, rollChart, rollRegions } from "../../src/site/machines/charts.ts";
import { brakeEntries, rollEntries } from "../../src/site/machines/entries.ts";
import { slugs } from "../../src/site/machines/slugs.ts";
import { coveredLabels, outsideSheet } from "../drawing/judge.ts";
import { svgText } from "../drawing/svgText.ts";

const tables = loadCatalogue("content");
const read = (path: string) => readFileSync(path, "utf8");
const shop = readShop(read("demo-data/shop.yaml"), { path: "demo-data/shop.yaml", ...tables }).value!;
const parts = globSync("demo-data/parts/*.yaml")
  .sort()
  .flatMap((path) => {
    const { part } = readPart(read(path), { path, ...tables });
    const developed = part && develop(part, { catalogue: tables.catalogue, shop });
    if (developed?.kind !== "report") return [];
    const { report } = developed;
    return [
      {
        report,
        material: tables.catalogue.materials[report.part.material]!,
        gauge: null,
        trials: undefined,
        written: {},
      },
    ];
  });
const binder = {
  folder: "demo-data",
  tables,
  shop,
  shopWritten: undefined,
  job: undefined,
  parts,
  problems: [],
  trialNotes: [],
} satisfies Binder;

const charts = shop.machines.map((machine, i) => {
  const roll = machine.kind === "plate roll";
  const entries = roll ? rollEntries(binder, i, machine) : brakeEntries(binder, i, machine);
  return {
    name: slugs(shop.machines)[i]!,
    entries,
    chart: roll ? rollChart(machine, entries, binder) : brakeChart(machine, entries, binder),
  };
});

/** Is a place above a curve, by straight lines between its points? */
function above(points: readonly (readonly [number, number])[], [x, y]: readonly [number, number]): boolean {
  const i = points.findIndex(([px], k) => k > 0 && px >= x);
  const [[px, py], [qx, qy]] = [points[i - 1]!, points[i]!];
  return y > (qx === px ? Math.min(py, qy) : py + ((x - px) / (qx - px)) * (qy - py));
}

describe.each(charts)("$name", ({ name, chart, entries }) => {
  const drawn: [string, Drawing][] = [SHEET, { ...NARROW, heightMm: 78 * chart.panels.length }].map(
    (paper) => [paper.name, regionChart(chart, { paper })],
  );

  it.each(drawn)(
    "on the %s no label covers another, nothing leaves the sheet, and every dot has its number",
    (_, drawing) => {
      expect(coveredLabels(drawing)).toEqual([]);
      expect(outsideSheet(drawing)).toEqual([]);
      expect(drawing.dropped).toEqual([]);
      const numbers = entries.flatMap(({ number }) => number ?? []);
      expect(numbers.length).toBeGreaterThan(5);
      // Parts of one place share their dot and stand beside it together.
      const texts = drawing.labels.flatMap(({ text }) => text.split(", "));
      for (const number of numbers) expect(texts).toContain(number);
    },
  );

  it("draws every dot between the curves of the region that its checks put it in", () => {
    const dots = chart.panels.flatMap((panel) => panel.dots.map((dot) => ({ dot, panel })));
    expect(dots.length).toBe(entries.filter(({ number }) => number !== null).length);
    for (const { dot, panel } of dots) {
      const { region } = entries.find(({ number }) => number === dot.number)!;
      const at = [dot.x, dot.y] as const;
      const drawnIn = above(panel.limit, at) ? "fail" : above(panel.near, at) ? "caution" : "pass";
      expect(`${dot.number}: ${drawnIn}`).toBe(`${dot.number}: ${region}`);
    }
  });

  it.each(drawn)("on the %s no hatching touches a dot or an arrowhead", (_, { strokes }) => {
    const marks = strokes.filter(({ kind }) => kind === "arrow").map(({ shape }) => boxOf(flatten(shape)));
    const lines = strokes.filter(({ kind }) => kind === "thin").map(({ shape }) => flatten(shape));
    expect(lines.length).toBeGreaterThan(50);
    const places = lines.flatMap(([from, to]) =>
      Array.from({ length: 101 }, (_, i) => between2(from!, to!, i / 100)),
    );
    const inside = ([x, y]: Vec2) =>
      marks.some(({ left, right, bottom, top }) => x > left && x < right && y > bottom && y < top);
    expect(places.filter(inside)).toEqual([]);
  });

  it("says from which share of the limit on it is near, as its curves are drawn", () => {
    const [, legend = ""] = chart.lines;
    const said = Number(/near the limit, above (\d+) % of it/.exec(legend)![1]) / 100;
    const least = chart.panels.map(({ near, limit }) =>
      Math.min(...near.flatMap(([, y], i) => (limit[i]![1] > 0 ? [y / limit[i]![1]] : []))),
    );
    for (const share of least) expect(share).toBeCloseTo(said, 9);
    expect(legend).not.toContain("only a certificate");
  });

  it("looks as it was looked at", async () => {
    await expect(svgText(drawn[0]![1])).toMatchFileSnapshot(`../drawing/golden/machine-${name}.svg`);
  });
});

it("says that a plate which goes by its certificate alone is near the limit below that share too", () => {
  const [roll] = shop.machines;
  if (roll?.kind !== "plate roll") throw new Error(`${roll?.kind}`);
  const weak = { ...roll, rating: { ...roll.rating, yieldMPa: 120 } };
  const chartFor = (certificateYieldMPa: number) =>
    rollRegions(weak, {
      plates: [
        {
          name: "softer than its grade",
          strength: { material: tables.catalogue.materials["s355"]!, certificateYieldMPa },
        },
      ],
      dotsOf: () => [],
      units: "mm",
    });
  const soft = chartFor(130);
  const [{ near, limit }] = soft.panels as [(typeof soft.panels)[number]];
  const least = Math.min(...near.flatMap(([, y], i) => (limit[i]![1] > 0 ? [y / limit[i]![1]] : [])));
  // By the grade it would be taken for so much harder that even less than 80 % is more than that lets through.
  expect(least).toBeLessThan(0.79);
  expect(soft.lines[1]).toContain("above 80 % of it or where only a certificate lets it go");
  expect(chartFor(1000).lines[1]).not.toContain("certificate");
});

it("shows every region among the job's parts", () => {
  const regions = charts.flatMap(({ entries }) => entries.map(({ region }) => region));
  expect(new Set(regions)).toEqual(new Set(["pass", "caution", "fail"]));
});

it("gives machines of one name addresses of their own", () => {
  const named = (name: string) => ({ ...shop.machines[0]!, name });
  expect(slugs([named("Roll No. 1"), named("roll no 1"), named("Ж"), named("Å-press ")])).toEqual([
    "roll-no-1",
    "roll-no-1-2",
    "machine-3",
    "a-press",
  ]);
});

it("says what a lone wedge and the broken line of a brake's chart are, die by die", () => {
  const brake = {
    kind: "press brake",
    name: "B",
    bedLength: 3050,
    forceKN: 1000,
    dies: [80, 16, 40],
  } as const;
  const on = (forceKN: number) => {
    const machine = { ...brake, forceKN, dies: [...brake.dies] };
    const chart = brakeChart(machine, [], binder);
    return { chart, said: brakeChartWords(machine, chart) };
  };
  const weak = on(500);
  const [wedge, widest, ...more] = weak.said;
  // Eight times the thickness up to 10 mm (above it ten times, which an 80 mm die does not reach).
  expect(wedge!.replaceAll("\u00a0", " ")).toContain("die 16 up to 2 mm, 40 up to 5 mm, 80 up to 10 mm");
  expect(wedge).toMatch(/hatching may stand alone as a wedge/);
  expect(widest!.replaceAll("\u00a0", " ")).toContain(
    "The broken line, over 80 mm, is how far the force reaches",
  );
  expect(more).toEqual([]);
  expect(weak.chart.lines.join(" ")).toContain("Dashed: the limit over the widest die.");
  expect(weak.chart.panels.some(({ also }) => also)).toBe(true);
  // Where the force is enough for the whole bed over every die, the line would lie on the limit: nothing is said of it.
  const strong = on(50000);
  expect(strong.chart.panels.some(({ also }) => also)).toBe(false);
  expect(strong.said).toHaveLength(1);
  expect(strong.chart.lines.join(" ")).not.toContain("Dashed");
  const { dies, ...unlisted } = brake;
  expect(dies).toHaveLength(3);
  expect(brakeChartWords(unlisted, brakeChart(unlisted, [], binder))).toEqual([]);
});

it("draws a cross for a part that goes by the chart and not on the machine, and says what it is where there is one", () => {
  let some = 0;
  for (const { chart, entries } of charts) {
    const dots = chart.panels.flatMap((panel) => panel.dots);
    const refused = entries
      .filter(({ number, region, verdict }) => number !== null && verdict === "fail" && region !== "fail")
      .map(({ number }) => number);
    expect(
      dots
        .filter((dot) => dot.crossed)
        .map(({ number }) => number)
        .sort(),
    ).toEqual(refused.sort());
    expect(chart.lines.join(" ").includes("Cross: does not go for another reason.")).toBe(refused.length > 0);
    some += refused.length;
  }
  expect(some).toBeGreaterThan(0);
  const panel = {
    title: "p",
    near: [
      [0, 1],
      [10, 1],
    ],
    limit: [
      [0, 2],
      [10, 2],
    ],
  } as const;
  const marks = (crossed: boolean) =>
    regionChart(
      {
        title: "t",
        description: "d",
        lines: [],
        units: "mm",
        x: { name: "x", to: 10 },
        y: { name: "y", to: 3 },
        panels: [{ ...panel, dots: [{ x: 5, y: 0.5, number: "7", crossed }] }],
      },
      { paper: SHEET },
    ).strokes.filter(({ kind, shape }) => kind === "arrow" && flatten(shape).length > 4);
  const [dot, cross] = [marks(false), marks(true)].map((all) => all.map(({ shape }) => shape.type));
  expect(dot).toEqual(["arc"]);
  expect(cross).not.toContain("arc");
  expect(cross).toHaveLength(1);
});

it("names a part's own check beside its dot, as the part's page does", () => {
  const entries = shop.machines.flatMap((machine, i) =>
    machine.kind === "plate roll" ? rollEntries(binder, i, machine) : brakeEntries(binder, i, machine),
  );
  const chosen = entries.filter(({ one }) =>
    shop.machines.some(({ name }, i) => {
      const { forming } = one.report;
      return (
        name === forming.machine &&
        forming.machines[i]!.checks.every((check) => check.verdict === "pass") &&
        forming.verdict !== "pass"
      );
    }),
  );
  expect(chosen.length).toBeGreaterThan(0);
  for (const { one, verdict } of chosen) expect(verdict, one.report.part.name).not.toBe("pass");
  const named = entries.filter(({ because }) => because?.includes("on any machine: Mass of a blank"));
  expect(named.length).toBeGreaterThan(0);
});

it("gives every part of the job one verdict on a machine, with its reason, and leaves none out that a brake takes", () => {
  shop.machines.forEach((machine, i) => {
    const entries =
      machine.kind === "plate roll" ? rollEntries(binder, i, machine) : brakeEntries(binder, i, machine);
    for (const { one, verdict, because } of entries) {
      const { forming, part } = one.report;
      expect(verdict, part.name).toBe(forming.machines[i]!.verdict);
      if (forming.machine === machine.name) expect(verdict, part.name).toBe(forming.verdict);
      if (verdict === "pass") expect(because, part.name).toBeNull();
      else expect(because, part.name).toMatch(/^[A-Za-z]/);
      // Whoever reads that it does not go there reads by how much.
      if (verdict === "fail") expect(because, part.name).toMatch(/\d|bending roll/);
    }
    const listed = new Set(entries.map(({ one }) => one.report.part.name));
    for (const { report } of parts)
      if (report.forming.plans.some((plan) => plan.machine === machine.name))
        expect(listed, machine.name).toContain(report.part.name);
  });
});

it("marks the thickness of a shop in inches by fractions", () => {
  const inches = { ...binder, shop: { ...shop, units: "in" as const } };
  shop.machines.forEach((machine, i) => {
    const roll = machine.kind === "plate roll";
    const entries = roll ? rollEntries(inches, i, machine) : brakeEntries(inches, i, machine);
    const chart = roll ? rollChart(machine, entries, inches) : brakeChart(machine, entries, inches);
    const texts = regionChart(chart, { paper: SHEET }).labels.map(({ text }) => text);
    expect(texts.filter((text) => /^(\d-)?\d+\/(8|16|32)$/.test(text)).length).toBeGreaterThan(1);
  });
});

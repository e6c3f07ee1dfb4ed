import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readPart } from "../../src/input/readPart.ts";
import { readShop } from "../../src/input/readShop.ts";
import { develop } from "../../src/report/develop.ts";
import { zoneFigures } from "../../src/site/forming/zoneFigures.ts";

const tables = loadCatalogue("content");
const read = (path: string) => readFileSync(path, "utf8");
const shop = readShop(read("demo-data/shop.yaml"), { path: "demo-data/shop.yaml", ...tables }).value!;

function stepsOf(name: string) {
  const path = `demo-data/parts/${name}.yaml`;
  const { part } = readPart(read(path), { path, ...tables });
  const made = develop(part!, { catalogue: tables.catalogue, shop });
  if (made.kind !== "report") throw new Error(name);
  const { plans, machine } = made.report.forming;
  return plans.find((plan) => plan.machine === machine)!;
}

it("sets the figures of an uneven part's zones side by side, and loses none", () => {
  const { steps, settings } = stepsOf("overflow-shift");
  const count = settings!.zones.length;
  expect(count).toBeGreaterThan(2);
  const tabled = steps
    .map((step) => ({ step, ...zoneFigures(step.figures) }))
    .filter((one) => one.rows.length);
  expect(tabled.length).toBeGreaterThan(3);
  for (const { step, whole, zones, rows } of tabled) {
    expect(zones).toHaveLength(count);
    const values = [...whole.map(({ value }) => value), ...rows.flatMap((row) => row.values)];
    expect(values.toSorted()).toEqual(step.figures.map(({ value }) => value).toSorted());
    for (const { label } of [...whole, ...rows]) expect(label).not.toMatch(/^plan \d/);
  }
  const raise = tabled.find(({ step }) => step.id === "second-raise" || /second pass/.test(step.title))!;
  const start = raise.rows.find(({ label }) => label === "start at the large edge")!;
  expect(start.values).toEqual(
    settings!.zones.map((zone) => zone.passes.find(({ id }) => id === "finished")!.start!.largeMm),
  );
});

it("needs no table where one setting serves all round", () => {
  for (const { figures } of stepsOf("dryer-stack-cone").steps) {
    expect(zoneFigures(figures)).toEqual({ whole: figures, zones: [], rows: [], bases: [] });
  }
});

import { expect, it } from "vitest";
import { loadCatalogue } from "../../../src/input/loadCatalogue.ts";
import { typedWith, type TypedGroup } from "../../../src/input/typed.ts";
import { typedYaml } from "../../../src/input/typedYaml.ts";
import { inOtherUnits } from "../../../src/site/bench/otherUnits.ts";
import { readTypedShop } from "../../../src/site/bench/readTypedShop.ts";
import { machineLabel } from "../../../src/site/bench/machines/labels.ts";
import { openShop } from "../../../src/site/bench/machines/openShop.ts";
import {
  cuttingItems,
  generalItems,
  machineItems,
  plateItems,
  shopHint,
} from "../../../src/site/bench/machines/shopItems.ts";
import { isShownAt, UNITS_ITEM } from "../../../src/site/bench/form.ts";
import { SHOP_FIELDS } from "../../../src/site/words/shopFields.ts";

const tables = loadCatalogue();
const all = [
  ...generalItems,
  UNITS_ITEM,
  ...cuttingItems,
  ...machineItems("plate roll", 0),
  ...machineItems("press brake", 0),
  ...plateItems(0),
];

it("has a field for every key of a shop file, each with a name and with what it means", () => {
  const shown = new Set(all.map((item) => shopHint(item)));
  // Those that are no field: lists and groups, and the kind, which is chosen when a machine is added.
  const groups = /^(machines|stock|cutting)$|\.(kind|rating|coneRating|rolls|slide|coneAttachment)$/;
  for (const [key, hint] of Object.entries(SHOP_FIELDS))
    if (!groups.test(key)) expect(shown.has(hint), key).toBe(true);
  for (const item of all) {
    const where = item.path.join(".");
    expect(shopHint(item), where).toBeDefined();
    // "units" is labelled by its form.
    if (item !== UNITS_ITEM) expect(machineLabel(item.path), where).toMatch(/^[A-Z]/);
  }
});

it("writes the spacing of blanks into the shop file, in its own units and in others", () => {
  expect(cuttingItems.map(({ path }) => path.join("."))).toEqual(["cutting.spacing", "cutting.edge"]);
  const brake = { kind: "press brake", name: "B", bedLength: "3000 mm", forceKN: "1000" };
  let shop: TypedGroup = { name: "S", units: "mm", machines: [brake] };
  for (const { path } of cuttingItems) shop = typedWith(shop, path, "12.7") as TypedGroup;
  expect(readTypedShop(shop, tables)).toMatchObject({ value: { cutting: { spacing: 12.7, edge: 12.7 } } });
  const inches = inOtherUnits(shop, "in", cuttingItems);
  expect(readTypedShop(inches, tables)).toMatchObject({ value: { cutting: { spacing: 12.7, edge: 12.7 } } });
  const saved = openShop(typedYaml(inches), "shop.yaml", tables);
  expect(saved.kind === "shop" && readTypedShop(saved.shop, tables)).toEqual(readTypedShop(inches, tables));
  expect(readTypedShop(typedWith(shop, ["cutting", "edge"], "-3") as TypedGroup, tables)).toMatchObject({
    kind: "problems",
    problems: [{ path: ["cutting", "edge"] }],
  });
});

it.each([
  ["mm", "in", ["12", "16.5", "1/2 in", "24 mm"], "20 t"],
  ["in", "mm", ["1/2", "3-1/2", "12 mm", "6 in"], "150 tons"],
  ["in", "mm", ["1/2", "3-1/2", "12 mm", "6 in"], "150 ton-force"],
] as const)(
  "keeps the dies and the force of a brake when %s become %s, and back",
  (before, after, dies, force) => {
    const brake = { kind: "press brake", name: "B", bedLength: "98", throat: "4", force, dies };
    const shop: TypedGroup = { name: "S", units: before, machines: [brake] };
    const read = (typed: TypedGroup) => readTypedShop(typed, tables);
    const known = read(shop);
    expect(known.kind).toBe("read");
    const machine = (typed: TypedGroup) => (read(typed) as { value: { machines: unknown } }).value.machines;
    const fields = machineItems("press brake", 0);
    const other = inOtherUnits(shop, after, fields);
    expect(machine(other)).toEqual(machine(shop));
    const back = inOtherUnits(other, before, fields);
    expect(machine(back)).toEqual(machine(shop));
    expect(back["units"]).toBe(before);
  },
);

it("writes dies and tons with the units that they were typed in", () => {
  const brake = { kind: "press brake", dies: ["12", "1/2 in"], force: "100 t" };
  const inches = inOtherUnits({ units: "mm", machines: [brake] }, "in", machineItems("press brake", 0));
  expect(inches["machines"]).toEqual([{ ...brake, dies: ["12 mm", "1/2"], force: "100 tonnes" }]);
  const tons = { ...brake, force: "150 tons" };
  const mm = inOtherUnits({ units: "in", machines: [tons] }, "mm", machineItems("press brake", 0));
  expect(mm["machines"]).toEqual([{ ...brake, dies: ["12 in", "1/2 in"], force: "150 US tons" }]);
});

it("tells what is wrong with one size of a list at the list, and of a pair at its first", () => {
  const dies = { kind: "lengths" as const, path: ["machines", 1, "dies"] };
  expect(isShownAt(["machines", 1, "dies", 2], dies)).toBe(true);
  expect(isShownAt(["machines", 0, "dies", 2], dies)).toBe(false);
  const bearing = (i: number) => ({ kind: "length" as const, path: ["machines", 1, "bearings", i] });
  expect(isShownAt(["machines", 1, "bearings"], bearing(0))).toBe(true);
  expect(isShownAt(["machines", 1, "bearings"], bearing(1))).toBe(false);
  expect(isShownAt(["machines", 0, "bearings"], bearing(0))).toBe(false);
  expect(isShownAt(["machines", 1, "bearings", 1], bearing(1))).toBe(true);
  expect(isShownAt(["machines", 1], { kind: "length", path: ["machines"] })).toBe(false);
});

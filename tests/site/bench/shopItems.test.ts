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
import { UNITS_ITEM } from "../../../src/site/bench/form.ts";
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

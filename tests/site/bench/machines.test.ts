import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { loadCatalogue } from "../../../src/input/loadCatalogue.ts";
import { typedYaml } from "../../../src/input/typedYaml.ts";
import { openShop } from "../../../src/site/bench/machines/openShop.ts";
import { plainShop } from "../../../src/site/bench/machines/plainShop.ts";
import { readTypedShop } from "../../../src/site/bench/readTypedShop.ts";

const tables = loadCatalogue();
const text = readFileSync("demo-data/shop.yaml", "utf8");

it("says the same shop with its units written out, and saves a file that is read back to it", () => {
  const opened = openShop(text, "shop.yaml", tables);
  if (opened.kind === "problems") throw new Error(opened.lines.join("\n"));
  const before = readTypedShop(opened.shop, tables);
  const plain = plainShop(opened.shop);
  expect(readTypedShop(plain, tables)).toEqual(before);
  expect(JSON.stringify(plain)).not.toMatch(/forceKN|yieldMPa|handLiftKg/);
  const again = openShop(typedYaml(plain), "shop.yaml", tables);
  expect(again.kind === "shop" && readTypedShop(again.shop, tables)).toEqual(before);
});

it("tells a stop that is only said to be there, or not, as a group", () => {
  const roll = (coneAttachment: boolean) => ({
    machines: [
      {
        kind: "plate roll",
        name: "R",
        workingWidth: "1000",
        rating: { thickness: "4" },
        rolls: { topDiameter: "100" },
        coneAttachment,
      },
    ],
  });
  for (const fitted of [true, false]) {
    const shop = { name: "S", units: "mm", ...roll(fitted) };
    expect(readTypedShop(plainShop(shop), tables)).toEqual(readTypedShop(shop, tables));
  }
});

it("tells what is wrong with a file of a shop by its place", () => {
  expect(openShop("name: A\nunits: mm\nmachines: 3\n", "my.yaml", tables)).toMatchObject({
    kind: "problems",
    lines: [expect.stringMatching(/^my\.yaml:3:11: machines/)],
  });
});

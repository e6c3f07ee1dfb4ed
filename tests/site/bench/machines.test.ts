import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { loadCatalogue } from "../../../src/input/loadCatalogue.ts";
import { typedYaml } from "../../../src/input/typedYaml.ts";
import { openShop } from "../../../src/site/bench/machines/openShop.ts";
import { plainShop } from "../../../src/site/bench/machines/plainShop.ts";
import { whatItDid } from "../../../src/site/bench/machines/whatItDid.ts";
import { readTypedShop } from "../../../src/site/bench/readTypedShop.ts";
import { noMachine, routeSentence } from "../../../src/site/words/forming.ts";
import { readBinder } from "../../../src/site/binder/binder.ts";
import { develop } from "../../../src/report/develop.ts";
import type { Shop } from "../../../src/forming/machine.ts";

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

const { parts, shop } = readBinder();
/** A part of the example by a shop. */
function formed(name: string, own: Shop) {
  const { part } = parts.find(({ report }) => report.part.name === name)!.report;
  const made = develop(part, { ...tables, shop: own });
  if (made.kind === "refused") throw new Error(name);
  return made.report.forming;
}

it("reads a list that every machine was taken from as a shop without one, and speaks of no file", () => {
  const typed = { name: "S", units: "mm", machines: [] };
  const reading = readTypedShop(typed, tables);
  expect(reading).toMatchObject({ kind: "read", value: { machines: [] } });
  // The file that is saved of it is read back to the same.
  const again = openShop(typedYaml(typed), "shop.yaml", tables);
  expect(again.kind === "shop" && readTypedShop(again.shop, tables)).toEqual(reading);
  const forming = formed("dust-cyclone-cone", { ...shop!, machines: [] });
  expect(forming.plans.map(({ noSettings }) => noSettings)).toEqual(["no settings: the shop has no machine"]);
  const said = routeSentence(forming, noMachine({ ...shop!, machines: [] }));
  expect(said).toMatch(/The shop has no machine, so only the part itself was checked/);
  expect(`${said}${JSON.stringify(forming.plans)}`).not.toMatch(/file was given/);
  expect(noMachine(undefined)).toBe("No shop file was given");
});

it("says at a rating that was changed which checks it made worse, those that refuse first, and nothing of the others", () => {
  const name = "dust-cyclone-cone";
  const rolls = shop!.machines.filter((one) => one.kind === "plate roll");
  const before = formed(name, shop!).machines.find(({ verdict }) => verdict !== "fail")!;
  const roll = rolls.find((one) => one.name === before.machine)!;
  const weaker = {
    ...roll,
    rating: { ...roll.rating, thickness: 1 },
    ...(roll.coneRating && { coneRating: { ...roll.coneRating, thickness: 1 } }),
  };
  const machines = shop!.machines.map((one) => (one === roll ? weaker : one));
  const now = formed(name, { ...shop!, machines }).machines.find(({ machine }) => machine === roll.name)!;
  const said = whatItDid(before, now);
  expect(said[0]?.fails).toBe(true);
  expect(said[0]?.text).toMatch(/does not take the part\. /);
  const worse = now.checks.filter(({ id, verdict }) => {
    const was = before.checks.find((one) => one.id === id)!.verdict;
    return verdict !== was && (verdict === "fail" || was === "pass");
  });
  expect(said).toHaveLength(worse.length);
  for (const { advice } of worse) expect(said.some(({ text }) => text.endsWith(advice))).toBe(true);
  // Back again, nothing is worse; and what was bad before is no deed of the field.
  expect(whatItDid(now, before)).toEqual([]);
  expect(whatItDid(now, now)).toEqual([]);
});

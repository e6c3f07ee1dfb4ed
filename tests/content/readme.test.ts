import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { printProblems } from "../../src/input/problem.ts";
import { readPart } from "../../src/input/readPart.ts";
import { readTrials } from "../../src/input/readTrials.ts";
import { readShop } from "../../src/input/readShop.ts";
import { develop } from "../../src/report/develop.ts";
import { tables } from "../input/files.ts";

const blocks = [...readFileSync("README.md", "utf8").matchAll(/```yaml\n([^]*?)```/g)].map(
  ([, text = ""]) => text,
);
const parts = blocks.filter((text) => text.includes("shape:"));
const trials = blocks.filter((text) => text.includes("trials:"));
const shops = blocks.filter((text) => text.includes("machines:"));

it("shows a part file, two shop files and a file of trials, and no other", () => {
  expect([blocks.length, parts.length, shops.length, trials.length]).toEqual([4, 1, 2, 1]);
});

it.each(trials)("the file of trials %# is one", (text) => {
  const { value, problems } = readTrials(text, { path: "a.trials.yaml", ...tables });
  expect(printProblems(problems)).toEqual([]);
  expect(value!.trials).toHaveLength(2);
});

it.each(parts)("the part file %# is one", (text) => {
  const { part, problems } = readPart(text, { path: "a.yaml", ...tables });
  expect(printProblems(problems)).toEqual([]);
  for (const shopText of shops) {
    const shop = readShop(shopText, { path: "shop.yaml", ...tables });
    expect(printProblems(shop.problems)).toEqual([]);
    const developed = develop(part!, { catalogue: tables.catalogue, shop: shop.value! });
    expect(developed.kind).toBe("report");
  }
});

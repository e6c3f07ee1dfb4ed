import { readFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { onePage, page, site } from "./onePage.ts";

const PAGE = "parts/dust-cyclone-cone/forming/index.html";
const NAME = "dust-cyclone-cone.trials.yaml";

const folder = mkdtempSync(join(tmpdir(), "bearings-"));

onePage(PAGE);
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const form = () => page.locator("[data-trial-form]");
const answer = () => form().getByRole("status").textContent();
const sum = () => form().locator('[data-trial="sum"]').textContent();
const cells = async (row: number) => {
  const line = page.locator('[data-trial="places"] tr').nth(row);
  return (await line.locator("th, td").allInnerTexts()).map((text) => text.trim());
};

it("takes both bearings in the place of the raise, shows the sum, and says that the tilt is not the plan's", async () => {
  await page.getByLabel("The setting is written as").selectOption("bearings");
  expect(await page.getByLabel(/Raise at the large edge/).isVisible()).toBe(false);
  await page.getByLabel("Raise at the drop end").fill("38");
  expect(await sum()).toBe("");
  await page.getByLabel("Raise at the fixed end").fill("12");
  const { drop, fixed, edge } = /(?<drop>[\d.]+) × 38 \+ (?<fixed>[\d.]+) × 12 = (?<edge>[\d.]+) mm/.exec(
    (await sum())!,
  )!.groups as Record<"drop" | "fixed" | "edge", string>;
  expect(Number(drop) * 38 + Number(fixed) * 12).toBeCloseTo(Number(edge), 1);
  expect(await sum()).toMatch(/The drop end stands [\d.]+ mm lower above the fixed end than in the plan/);
  await page.getByLabel("Measured").fill("1350");
  await page.getByRole("button", { name: "Add trial" }).click();
  expect(await answer()).toContain("less tilt than the plan's");
  expect(await answer()).toMatch(/At the bearings, from 0: drop end [\d.]+ mm, fixed end [\d.]+ mm\./);
  expect(await form().getByRole("listitem").first().textContent()).toContain(
    "set 38 mm at the drop end and 12 mm at the fixed end (",
  );
  expect(await cells(0)).not.toContain("scale, drop end");
});

it("tells what both scales show next, once it knows what they show at 0, and keeps that", async () => {
  await page.getByRole("button", { name: "remove trial 1" }).click();
  await page.getByLabel("Scale at 0 (flat plate), drop end").fill("150");
  await page.getByLabel("Scale’s reading at the drop end").fill("188");
  await page.getByLabel("Scale’s reading at the fixed end").fill("162.5");
  await page.getByLabel("Measured").fill("1350");
  await page.getByRole("button", { name: "Add trial" }).click();
  expect(await page.getByRole("alert").textContent()).toContain("at both ends, or at neither");
  await page.getByLabel("Scale at 0 (flat plate), fixed end").fill("150.5");
  await page.getByRole("button", { name: "Add trial" }).click();
  const [head, row] = [await cells(0), await cells(1)];
  const of = (name: string) => Number(row[head.indexOf(name)]);
  expect(of("scale, drop end")).toBeCloseTo(150 + of("bearing, small edge"), 1);
  expect(of("scale, fixed end")).toBeCloseTo(150.5 + of("bearing, large edge"), 1);
  expect(await answer()).toContain("the scales then show");
  await page.reload();
  expect(await page.getByLabel("The setting is written as").inputValue()).toBe("bearings");
  expect(await page.getByLabel("Scale at 0 (flat plate), fixed end").inputValue()).toBe("150.5");
  expect(await answer()).toContain("the scales then show");
});

it("saves them as a file that it reads again, beside trials told at the large edge", async () => {
  await page.getByLabel("The setting is written as").selectOption("edge");
  await page.getByLabel(/Raise at the large edge/).fill("30");
  await page.getByLabel("Measured").fill("1000");
  await page.getByRole("button", { name: "Add trial" }).click();
  const before = await answer();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: `Save ${NAME}` }).click(),
  ]);
  const path = join(folder, NAME);
  await download.saveAs(path);
  const text = readFileSync(path, "utf8");
  expect(text).toContain("{ drop: 188, fixed: 162.5, dropAt0: 150, fixedAt0: 150.5, gap: 1350 }");
  expect(text).toContain("{ setting: 30, gap: 1000 }");
  await page.getByRole("button", { name: "remove trial 1" }).click();
  await page.getByRole("button", { name: "remove trial 1" }).click();
  expect(await answer()).toContain("No trial yet");
  await page.getByLabel("Open a file of trials").setInputFiles(path);
  await page.getByText("2 trials read").waitFor();
  expect(await answer()).toBe(before);
});

it("is not asked of a pipe, whose roll stands square", async () => {
  await page.goto(`${site.url}parts/dust-main-sleeve/forming/index.html`);
  expect(await page.getByLabel("The setting is written as").isVisible()).toBe(false);
  expect(await page.locator("[data-set-by=bearings]").count()).toBe(0);
});

import { expect, it } from "vitest";
import { browser, onePage, page, site } from "./onePage.ts";

const PAGE = "parts/screw-feed-transition/forming/index.html";

onePage(PAGE);

const form = () => page.locator("[data-brake-form]");
const message = () => form().getByRole("alert").textContent();
const depths = async () =>
  (await form().locator('[data-trial="places"] tr td:last-child').allInnerTexts()).map(Number);
async function hit(depth: string, turned: string): Promise<void> {
  await form().getByLabel("Ram depth below touching").fill(depth);
  await form()
    .getByLabel(/^Turned by/)
    .fill(turned);
  await form().getByRole("button", { name: "Add hit" }).click();
}

it("names deeper hits for sharper lines after one hit, and keeps it through a reload", async () => {
  await hit("2.2", "8");
  const rows = await depths();
  expect(rows.length).toBeGreaterThan(3);
  expect(rows).toEqual(rows.toSorted((p, q) => p - q));
  await page.reload();
  expect(await depths()).toEqual(rows);
});

it("takes no hit that cannot have been, and says why", async () => {
  for (const [depth, turned, why] of [
    ["deep", "8", /Write the ram depth/],
    ["2.2", "<b>8</b>", /Write what the plate turned by/],
    ["2", "999", /cannot have been.*sharper than the die bends/],
  ] as const) {
    await hit(depth, turned);
    expect(await message()).toMatch(why);
    expect(await form().getByRole("listitem").count()).toBe(1);
  }
});

it("changes no depth for half a number of the shoulders, and says what is wrong", async () => {
  const shoulder = () => form().getByLabel(/^Radius of the die’s shoulders/);
  await shoulder().fill("3");
  const rows = await depths();
  await shoulder().fill("3x");
  expect(await message()).toMatch(/Write the radius of the shoulders/);
  expect(await depths()).toEqual(rows);
  await page.reload();
  expect(await shoulder().inputValue()).toBe("3");
});

it("keeps the hits of two windows together", async () => {
  const context = await browser.newContext();
  const [one, other] = [await context.newPage(), await context.newPage()];
  // The word of the change does not come there.
  await other.addInitScript(() => addEventListener("storage", (event) => event.stopImmediatePropagation()));
  const hits = (on: typeof page) => on.locator("[data-brake-form]").getByRole("listitem");
  const put = async (on: typeof page, depth: string, turned: string) => {
    await on.getByLabel("Ram depth below touching").fill(depth);
    await on.getByLabel(/^Turned by/).fill(turned);
    await on.getByRole("button", { name: "Add hit" }).click();
  };
  for (const each of [one, other]) await each.goto(site.url + PAGE);
  await put(one, "2.2", "8");
  expect(await hits(other).count()).toBe(0);
  await put(other, "2.4", "10");
  const all = [/^2.2 mm deep/, /^2.4 mm deep/].map((text): unknown => expect.stringMatching(text));
  for (const each of [one, other]) await expect.poll(() => hits(each).allTextContents()).toEqual(all);
  await context.close();
});

it("takes no comma and no depth that is none", async () => {
  for (const [depth, turned, why] of [
    ["2,2", "8", /Write the ram depth .*; use a point for decimals, and nothing between thousands\.$/],
    ["0.0000001", "8", /Write the ram depth .*above 0\.$/],
    ["2.2", "8,5", /Write what the plate turned by .*; use a point for decimals/],
  ] as const) {
    await hit(depth, turned);
    expect(await message()).toMatch(why);
  }
});

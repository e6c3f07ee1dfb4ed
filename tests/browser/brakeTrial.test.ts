import { expect, it } from "vitest";
import { onePage, page } from "./onePage.ts";

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

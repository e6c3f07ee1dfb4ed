import { readFileSync } from "node:fs";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { launch } from "./chromium.ts";
import { DIST, serve } from "./site.ts";

let browser: Browser;
let context: BrowserContext;
let page: Page;
let site: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  site = await serve(DIST);
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  site.close();
});
beforeEach(async () => {
  context = await browser.newContext();
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
});
afterEach(() => context.close());

const openShop = async () => {
  await page.goto(`${site.url}parts/dust-cyclone-cone/`);
  await page.getByRole("button", { name: /Change this part|Go on with/ }).click();
  await page.getByRole("button", { name: /shop’s machines/ }).click();
  await page.locator(".bench-shop details").first().waitFor();
};
const machine = () => page.locator(".bench-shop details").filter({ hasText: "Small roll" });
const verdict = () => machine().locator("summary .verdict").textContent();
const chosen = () => page.locator(".bench .verdict-large + span").first().textContent();

it("lets checks, machine and plan follow a change of the shop, keeps it, and brings the binder's own back", async () => {
  await openShop();
  expect(await chosen()).toMatch(/Small roll/);
  await machine().locator("summary").click();
  await machine()
    .getByRole("textbox", { name: /^Working width/ })
    .fill("500");
  await expect.poll(verdict).toMatch(/does not go/);
  await expect.poll(chosen).not.toMatch(/Small roll/);
  await page.reload();
  await openShop();
  await expect.poll(verdict).toMatch(/does not go/);
  await page.getByRole("button", { name: "The binder’s own shop", exact: true }).click();
  await expect.poll(chosen).toMatch(/Small roll/);
});

it("keeps the checks of the last shop that was right while a field is wrong, and says so beside it", async () => {
  await openShop();
  await machine().locator("summary").click();
  await machine()
    .getByRole("textbox", { name: /^Working width/ })
    .fill("wide");
  await machine().locator(".problem").waitFor();
  expect(await page.locator(".bench-shop > .problem").textContent()).toMatch(/stay those of the last shop/);
  expect(await chosen()).toMatch(/Small roll/);
  await page.getByRole("button", { name: "Undo in the shop" }).click();
  await expect.poll(() => machine().locator(".problem").count()).toBe(0);
});

it("asks the binder's own shop where the kept one cannot be read, and keeps that for a file", async () => {
  await openShop();
  const key = await page.evaluate(() => {
    const name = `slantwork ${new URL("../..", location.href).pathname} shop`;
    localStorage.setItem(name, '{"machines":[{"name":"half a ro');
    return name;
  });
  await page.reload();
  const notice = page.locator("[data-set-aside]");
  await openShop();
  await expect.poll(() => notice.textContent()).toMatch(/could not be read.*binder’s own shop is asked/);
  expect(await chosen()).toMatch(/Small roll/);
  // Another shop is kept from now on; the old text is offered until it is thrown away.
  await machine().locator("summary").click();
  await machine()
    .getByRole("textbox", { name: /^Working width/ })
    .fill("500");
  await expect.poll(() => page.evaluate((at) => localStorage.getItem(at), key)).toContain("500");
  await page.reload();
  await openShop();
  await expect.poll(verdict).toMatch(/does not go/);
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    notice.getByRole("button", { name: "Save it as a file" }).click(),
  ]);
  expect(saved.suggestedFilename()).toBe("shop-set-aside.txt");
  expect(readFileSync(await saved.path(), "utf8")).toContain("half a ro");
  await notice.getByRole("button", { name: "Throw it away" }).click();
  expect(await notice.count()).toBe(0);
});

it("takes a new machine, and takes one away", async () => {
  await openShop();
  const all = page.locator(".bench-shop > details");
  const before = await all.count();
  await page.getByRole("button", { name: "Add a press brake" }).click();
  const added = all.filter({ hasText: "New brake" });
  // It stands open, and the hand is at its first field.
  expect(
    await added
      .locator("input")
      .first()
      .evaluate((one) => one === document.activeElement),
  ).toBe(true);
  await added.getByRole("textbox", { name: /^Length of the bed/ }).fill("4100");
  await added.getByRole("textbox", { name: /^Greatest force/ }).fill("150 US tons");
  await expect.poll(() => page.locator(".bench .machine-choice").first().textContent()).toMatch(/New brake/);
  await added.getByRole("button", { name: "Remove New brake" }).click();
  expect(await all.count()).toBe(before);
});

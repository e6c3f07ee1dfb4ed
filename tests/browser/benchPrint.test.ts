import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { launch } from "./chromium.ts";
import { DIST, serve } from "./site.ts";

let browser: Browser;
let context: BrowserContext;
let page: Page;
let site: Awaited<ReturnType<typeof serve>>;
let noise: string[] = [];

beforeAll(async () => {
  site = await serve(DIST);
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  site.close();
});
beforeEach(async () => {
  noise = [];
  context = await browser.newContext();
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  page.on("pageerror", (error) => noise.push(error.message));
});
afterEach(async () => {
  await context.close();
  expect(noise).toEqual([]);
});

const height = () => page.locator(".bench-form").getByLabel(/^Height between/);
const pagesOnPaper = async (format: "A4" | "Letter"): Promise<number> =>
  (await page.pdf({ format })).toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
/** What would be printed, as long as the window prints. */
async function printed(): Promise<string> {
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  expect(await page.locator(".bench-print .sheet").count()).toBe(2);
  const text = await page.locator(".bench-print").innerText();
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await page.emulateMedia({ media: "screen" });
  return text;
}
/** The sheets are loaded once somebody is at work, and follow what is typed. */
const sheetsReady = async (): Promise<void> => {
  await page.locator(".bench .checks").waitFor();
  await page.waitForLoadState("networkidle");
};

it.each(["right-cone", "eccentric-cone", "square-to-round"])(
  "prints the last good sheets of a %s with a remark while a size is wrong, on two pages",
  async (shape) => {
    await page.goto(`${site.url}shapes/${shape}/`);
    await height().fill("345");
    for (const wrong of ["abc", "-5", ""]) {
      await height().fill(wrong);
      await page.locator(".bench-field.wrong").first().waitFor();
      await sheetsReady();
      const text = await printed();
      expect(text, wrong).toMatch(/NOT what is typed/);
      expect(text, wrong).toContain("345");
    }
    for (const format of ["A4", "Letter"] as const) expect(await pagesOnPaper(format), format).toBe(2);
  },
);

it("prints the last good sheets of a part's own page as well, and after the page is loaded anew", async () => {
  await page.goto(`${site.url}parts/feed-spout-reducer/`);
  await page.getByRole("button", { name: "Change this part here" }).click();
  await height().fill("abc");
  await page.locator(".bench-field.wrong").first().waitFor();
  await sheetsReady();
  expect(await printed()).toMatch(/NOT what is typed/);
  expect(await pagesOnPaper("A4")).toBe(2);
  await page.reload();
  await page.getByRole("button", { name: "Go on with your changes" }).click();
  await page.locator(".bench-field.wrong").first().waitFor();
  await sheetsReady();
  expect(await printed()).toMatch(/NOT what is typed/);
});

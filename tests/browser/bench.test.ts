import { globSync, readFileSync } from "node:fs";
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
  page.setDefaultTimeout(10_000);
  page.on("pageerror", (error) => noise.push(error.message));
});
afterEach(async () => {
  await context.close();
  expect(noise).toEqual([]);
});

const field = (name: string | RegExp) =>
  page.locator(".bench-form").getByLabel(name, { exact: typeof name === "string" });
const open = async (path: string) => {
  await page.goto(site.url + path);
  await page.locator(".bench-form").waitFor();
  await page.locator(".bench .key-figures").waitFor();
};
/** Figures by name, as the page shows them. */
const figures = (root: string) =>
  page
    .locator(`${root} .key-figures > div`)
    .evaluateAll((all) =>
      all.map((one) =>
        [...one.querySelectorAll("dt, dd")].map((cell) => cell.firstChild?.textContent?.trim()),
      ),
    );
const figure = async (name: string) => (await figures(".bench")).find(([first]) => first === name)?.[1];

it("redraws with every key, keeps the last good drawing while a field is half typed, and says what is wrong beside it", async () => {
  await open("shapes/right-cone/");
  expect(await figure("Outer radius")).toBe("500\u00a0mm");
  await field(/^Height between/).fill("400");
  await expect.poll(() => figure("Outer radius")).not.toBe("500\u00a0mm");
  const good = await figure("Outer radius");
  await field(/^Height between/).fill("4oo");
  await page.locator(".bench-field.wrong .problem").waitFor();
  expect(await page.locator(".bench-field.wrong").textContent()).toContain("4oo");
  expect(await figure("Outer radius")).toBe(good);
  expect(await field(/^Height between/).getAttribute("aria-invalid")).toBe("true");
});

it("takes sizes as the drawing gives them: inches, fractions, feet and inches, gauge", async () => {
  await open("shapes/right-cone/");
  await field(/^Height between/).fill(`0' 7-7/8"`);
  await field("Plate thickness, mm").fill("10 ga");
  await expect.poll(() => page.locator(".bench-field.wrong").count()).toBe(0);
  expect(await page.locator(".bench .drawing").first().textContent()).toContain("200");
  await page.getByLabel("Units of the drawing").selectOption("in");
  await expect.poll(() => figure("Outer radius")).toMatch(/ in/);
  expect(await page.locator(".bench-field.wrong").count()).toBe(0);
});

it("undoes and redoes by key and by button, the typing in one field at once", async () => {
  await open("shapes/eccentric-cone/");
  const before = await field(/^Height between/).inputValue();
  await field(/^Height between/).pressSequentially("5");
  await field(/^Height between/).blur();
  const typed = await field(/^Height between/).inputValue();
  await page.keyboard.press("Control+z");
  expect(await field(/^Height between/).inputValue()).toBe(before);
  await page.getByRole("button", { name: "Redo" }).click();
  expect(await field(/^Height between/).inputValue()).toBe(typed);
});

it("keeps what is typed when the page is left or reloaded, half typed too", async () => {
  await open("shapes/square-to-round/");
  await field(/^Height between/).fill("3oo");
  await page.reload();
  await page.locator(".bench-form").waitFor();
  expect(await field(/^Height between/).inputValue()).toBe("3oo");
  await page.goto(`${site.url}glossary/`);
  await page.goBack();
  await page.locator(".bench-form").waitFor();
  expect(await field(/^Height between/).inputValue()).toBe("3oo");
});

it("takes the part of a link, on the page of its shape, and changes nothing for a broken one", async () => {
  const part = {
    shape: "right-cone",
    title: "Sent",
    units: "mm",
    material: "s235",
    thickness: "4",
    largeEnd: { diameter: "605", measured: "outside" },
    smallEnd: { diameter: "305", measured: "outside" },
    height: "333",
  };
  const link = `#part=${encodeURIComponent(JSON.stringify({ name: "sent", part }))}`;
  await page.goto(`${site.url}shapes/eccentric-cone/${link}`);
  await page.waitForURL(/shapes\/right-cone/);
  await page.locator(".bench-form").waitFor();
  expect(await field(/^Height between/).inputValue()).toBe("333");
  await page.evaluate(() => (location.hash = "#part=%7B%22na"));
  await expect
    .poll(() => page.locator(".bench-bar [role=status]").textContent())
    .toMatch(/cut off or changed/);
  expect(await field(/^Height between/).inputValue()).toBe("333");
});

it("works on with storage forbidden, and says that nothing is kept", async () => {
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, "localStorage", {
      get: () => {
        throw new DOMException("forbidden", "SecurityError");
      },
    });
  });
  await open("shapes/right-cone/");
  await field(/^Height between/).fill("400");
  await expect.poll(() => page.locator(".bench-bar [role=status]").textContent()).toMatch(/keeps nothing/);
  await expect.poll(() => figure("Outer radius")).not.toBe("500\u00a0mm");
});

it("works on with storage full", async () => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await open("shapes/right-cone/");
  await field(/^Height between/).fill("400");
  await expect.poll(() => page.locator(".bench-bar [role=status]").textContent()).toMatch(/keeps nothing/);
});

const names = globSync("demo-data/parts/*.yaml")
  .map((path) => path.replace(/^.*\/|\.yaml$/g, ""))
  .filter((name) => !name.includes("."));

it.each(names)("%s has the same figures at the bench as on its page and in its report", async (name) => {
  await page.goto(`${site.url}parts/${name}/`);
  const published = await figures("main");
  await page.getByRole("button", { name: "Change this part here" }).click();
  await page.locator(".bench .key-figures").waitFor();
  expect(await figures(".bench")).toEqual(published);
  const report = JSON.parse(readFileSync(`${DIST}/parts/${name}.json`, "utf8")) as {
    massKg: number;
    forming: { checks: { title: string }[] };
  };
  await expect
    .poll(() => page.locator(".bench .checks > li strong").allTextContents(), { timeout: 10_000 })
    .toEqual(report.forming.checks.map(({ title }) => title));
});

it("says how each figure was worked out, with this part's numbers", async () => {
  await open("shapes/right-cone/");
  await page.getByRole("button", { name: "How was it worked out: Outer radius?" }).click();
  expect(await page.locator(".bench-answer").textContent()).toMatch(/600 \/ \(2 × sin 36.87°\)/);
  await page.getByRole("button", { name: "What is this: Plate thickness?" }).click();
  expect(await page.locator(".bench-form").textContent()).toContain("which depends on the metal");
});

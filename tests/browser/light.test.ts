import { globSync } from "node:fs";
import { basename } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { launch } from "./chromium.ts";
import { layHand } from "./hand.ts";
import { readScript, weight, withLoaded } from "./scripts.ts";
import { DIST, serve } from "./site.ts";

/** What a bench loads before it lives: form, plain reader, geometry, figures, and the one shape of its page. [bytes, gzip] */
const START_BYTES = 60_000;
/** All that a shape's page loads before anybody lays a hand on it. [bytes, gzip] */
const UNASKED_BYTES = 60_000;
/** What it has loaded after the first hand, unless somebody asks for more: views, verdict and pattern too. [bytes, gzip] */
const FIRST_HAND_BYTES = 150_000;

const SHAPES = {
  "right-cone": "rightCone",
  "eccentric-cone": "eccentricCone",
  "square-to-round": "squareToRound",
};

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  site = await serve(DIST);
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  site.close();
});

/** The module that a script is named after. */
const named = (script: string): string => basename(script).split(".")[0] ?? "";

/** A script, by the module that it is named after, with all that it loads at once. */
function loaded(name: string): ReadonlySet<string> {
  const [script, second] = globSync(`_astro/${name}.*.js`, { cwd: DIST });
  if (script === undefined || second !== undefined) throw new Error(`${name}: not one script`);
  return withLoaded(script);
}

it.each(Object.values(SHAPES))("has a light bench for a %s", (shape) => {
  const start = [...loaded("start"), ...loaded(shape)];
  expect(weight(start)).toBeLessThan(START_BYTES);
  // What reads files, names remedies and prints is no part of it.
  expect(start.filter((script) => /ZodType|safeParse/.test(readScript(script)))).toEqual([]);
});

/** Scripts that a page has loaded, the service worker's store apart. */
async function follow(path: string, size: { width: number; height: number }) {
  const context = await browser.newContext({ serviceWorkers: "block", viewport: size });
  const page: Page = await context.newPage();
  const scripts = new Set<string>();
  page.on("request", (request) => {
    const { pathname } = new URL(request.url());
    if (pathname.endsWith(".js")) scripts.add(pathname.replace(/^\/binder\//, ""));
  });
  await page.goto(site.url + path);
  await page.waitForLoadState("networkidle");
  return { page, scripts, close: () => context.close() };
}

/** The first hand on a page, and what comes of it by itself. */
async function handOn(page: Page): Promise<void> {
  await layHand(page);
  await page.getByRole("group", { name: /^Pattern/ }).waitFor();
  await page.getByRole("group", { name: /^Views/ }).waitFor();
  await page.locator(".bench #take-away").waitFor();
  await page.waitForLoadState("networkidle");
}

it.each([
  ["right-cone", { width: 1280, height: 800 }],
  ["eccentric-cone", { width: 390, height: 844 }],
  ["square-to-round", { width: 1280, height: 800 }],
] as const)("loads no more for a %s than somebody asks for", async (shape, size) => {
  const { page, scripts, close } = await follow(`shapes/${shape}/`, size);
  const unasked = [...scripts];
  expect(unasked.map(named)).toContain(SHAPES[shape]);
  // What is drawn and judged was published.
  await page.locator(".bench .views svg:visible").first().waitFor();
  await page.locator(".bench .checks").waitFor();
  await page.locator(".bench .patterns svg:visible").first().waitFor();
  expect(weight(unasked)).toBeLessThan(UNASKED_BYTES);
  await handOn(page);
  const atHand = [...scripts];
  expect(atHand.map(named)).toContain("judged");
  const later = [
    "rules",
    "formed",
    "Judged",
    "CutFiles",
    "PrintSheets",
    "readTypedShop",
    "d3Zoom",
    "hands",
    "RoundView",
  ];
  expect(atHand.map(named).filter((name) => later.includes(name))).toEqual([]);
  expect(weight(atHand)).toBeLessThan(FIRST_HAND_BYTES);
  // A hand at the form: the rules of files, and what stands far down.
  await page
    .locator(".bench-form")
    .getByLabel(/^Height between/)
    .focus();
  await page.locator(".bench-judged").nth(1).waitFor();
  await expect.poll(() => [...scripts].map(named)).toContain("rules");
  expect([...scripts].map(named)).toContain("Judged");
  // What is not laid out before somebody sees it takes no room sideways.
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(size.width);
  await close();
});

it("shows what stands far down to whoever only scrolls there", async () => {
  const { page, scripts, close } = await follow("shapes/right-cone/", { width: 1280, height: 800 });
  await handOn(page);
  expect([...scripts].map(named)).not.toContain("Judged");
  await page.locator(".bench #blank").scrollIntoViewIfNeeded();
  await page.mouse.wheel(0, 1500);
  await page.locator(".bench-judged").nth(1).waitFor();
  expect([...scripts].map(named)).not.toContain("rules");
  await close();
});

it("moves nothing as what was not drawn comes into sight", async () => {
  const { page, close } = await follow("shapes/right-cone/", { width: 1280, height: 800 });
  await handOn(page);
  await page.getByLabel(/^Height between/).focus();
  await page.locator(".bench-judged").nth(1).waitFor();
  const unmarked = page.locator(".bench-judged > :not([data-laid-out])");
  await expect.poll(() => unmarked.count()).toBe(0);
  const heights = () =>
    page
      .locator(".bench-judged > *")
      .evaluateAll((all) => all.map((one) => Math.round(one.getBoundingClientRect().height)));
  const before = await heights();
  expect(before.length).toBeGreaterThan(8);
  const [first, last] = [page.locator(".bench-judged h2").first(), page.locator(".bench-judged h2").last()];
  for (const one of [first, last]) {
    await one.scrollIntoViewIfNeeded();
    await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 200)));
    expect(await heights()).toEqual(before);
  }
  await close();
});

it("moves nothing while checks are behind what is typed", async () => {
  const { page, close } = await follow("shapes/right-cone/", { width: 1280, height: 800 });
  await handOn(page);
  const widths = await page.locator(".bench .capacity-chart").evaluate((chart) => {
    const waiting = chart.closest(".bench-judged");
    return [false, true].map((stale) => {
      waiting?.classList.toggle("stale", stale);
      const mark = getComputedStyle(waiting ?? chart, "::before");
      return [chart.getBoundingClientRect().x, chart.clientWidth, mark.visibility];
    });
  });
  const [now, behind] = widths;
  expect(now?.[2]).toBe("hidden");
  expect(behind).toEqual([now?.[0], now?.[1], "visible"]);
  await close();
});

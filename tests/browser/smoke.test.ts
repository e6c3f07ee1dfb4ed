import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launch } from "./chromium.ts";
import { openWithHand } from "./hand.ts";
import { DIST, pagesOf, serve } from "./site.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const WIDE = { width: 1280, height: 900 };
const PHONE = { width: 390, height: 844 };

let browser: Browser;
let page: Page;
let site: Awaited<ReturnType<typeof serve>>;
let noise: string[] = [];

beforeAll(async () => {
  site = await serve(DIST);
  browser = await launch();
  page = await browser.newPage({ viewport: WIDE, bypassCSP: true });
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) noise.push(message.text());
  });
  page.on("pageerror", (error) => noise.push(error.message));
  page.on("request", (request) => {
    if (!request.url().startsWith(site.url)) noise.push(`asked for ${request.url()}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) noise.push(`${response.status()} ${response.url()}`);
  });
});
afterAll(async () => {
  await browser.close();
  site.close();
});

/** What hangs out of the page at its right edge; nothing where the page does not scroll sideways. */
const overflow = () =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= width) return [];
    return [...document.querySelectorAll("body *")]
      .filter((one) => one.getBoundingClientRect().right > width + 1 && !one.closest(".table-box, pre"))
      .map((one) => `${one.tagName}.${one.getAttribute("class") ?? ""}`);
  });

/** Words in the headings of tables' rows and columns that stand on more than one line: a column that has no room for them. */
const broken = () =>
  page.evaluate(() =>
    [...document.querySelectorAll("th")].flatMap((heading) => {
      const text = document.createTreeWalker(heading, NodeFilter.SHOW_TEXT);
      const found: string[] = [];
      for (let node = text.nextNode(); node; node = text.nextNode())
        for (const { 0: word, index } of (node.textContent ?? "").matchAll(/\p{L}{3,}/gu)) {
          const range = document.createRange();
          range.setStart(node, index);
          range.setEnd(node, index + word.length);
          const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
          if (lines.size > 1) found.push(`${word}: ${heading.textContent.trim().slice(0, 40)}`);
        }
      return found;
    }),
  );

/** Serious and critical findings, each with its place. */
async function accessibility(rules?: readonly string[]): Promise<string[]> {
  const { violations } = await page.evaluate((only) => {
    const { axe } = globalThis as unknown as { axe: { run: (options: object) => Promise<AxeResults> } };
    return axe.run(only ? { runOnly: { type: "rule", values: only } } : {});
  }, rules);
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .flatMap(({ id, nodes }) => nodes.slice(0, 3).map(({ target }) => `${id}: ${target.join(" ")}`));
}

describe.each(pagesOf(DIST))("%s", (path) => {
  it("shows without noise, fits wide and narrow screens, and is accessible by day and night", async () => {
    noise = [];
    await page.emulateMedia({ colorScheme: "light" });
    await page.setViewportSize(WIDE);
    await openWithHand(page, site.url + path);
    if (path.startsWith("shapes/") && path !== "shapes/index.html")
      await page.locator(".bench .machine-choice").waitFor();
    await page.evaluate(AXE);
    expect(await overflow()).toEqual([]);
    expect(await accessibility()).toEqual([]);
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await accessibility(["color-contrast"])).toEqual([]);
    await page.setViewportSize(PHONE);
    expect(await overflow()).toEqual([]);
    expect(await broken()).toEqual([]);
    expect(await accessibility(["target-size", "scrollable-region-focusable"])).toEqual([]);
    expect(noise).toEqual([]);
  });
});

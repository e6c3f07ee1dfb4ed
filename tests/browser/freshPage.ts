import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect } from "vitest";
import { launch } from "./chromium.ts";
import { DIST, serve } from "./site.ts";

// Bound anew before every test; each file of tests has a worker, and so these, to itself.
export let browser: Browser;
export let context: BrowserContext;
export let page: Page;
export let site: Awaited<ReturnType<typeof serve>>;
/** What the pages of this test have thrown. */
let noise: string[] = [];

/** Gives every test of a file a page of its own on the built site, with nothing kept; whatever the page throws fails the test. */
export function freshPages({ consoleToo = false } = {}): void {
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
    context = await browser.newContext({ acceptDownloads: true });
    context.setDefaultTimeout(20_000);
    context.on("weberror", (thrown) => noise.push(thrown.error().message));
    if (consoleToo)
      context.on("console", (message) => message.type() === "error" && noise.push(message.text()));
    page = await context.newPage();
  });
  afterEach(async () => {
    await context.close();
    expect(noise).toEqual([]);
  });
}

import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { launch } from "./chromium.ts";
import { DIST, serve } from "./site.ts";

// Each file of tests has a worker, and so these, to itself.
export let browser: Browser;
export let page: Page;
export let site: Awaited<ReturnType<typeof serve>>;

/** Opens one page of the built site for all tests of a file: each goes on from where the one before it stopped. */
export function onePage(path: string): void {
  beforeAll(async () => {
    site = await serve(DIST);
    browser = await launch();
    page = await browser.newPage();
    await page.goto(site.url + path);
  });
  afterAll(async () => {
    await browser.close();
    site.close();
  });
}

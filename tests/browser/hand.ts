import type { Page } from "playwright-core";

/** Lays a hand on a page: the first sign of one has a shape's bench load its live parts. */
export async function layHand(page: Page): Promise<void> {
  await page.mouse.move(5, 5);
  await page.mouse.move(6, 6);
}

/** Opens a page, and lays a hand on it. */
export async function openWithHand(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await layHand(page);
}

import type { Page } from "playwright-core";
import { expect } from "vitest";

/** All of a bench is that of what is typed: pattern, then views and figures once that has been drawn, then whether it goes. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
  await expect.poll(() => page.locator(".bench .stale").count()).toBe(0);
}

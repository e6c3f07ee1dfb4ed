import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { browser, freshPages, page, site } from "./freshPage.ts";
import { openWithHand } from "./hand.ts";

freshPages();

/** A target is at least as wide and as high as this (WCAG 2.2, 2.5.8). [px] */
const LEAST = 24;
const TARGETS = "a[href], button, input, select, textarea, summary, [tabindex='0']";

/** A bench of a shape on a narrow screen, with all that somebody at work gets. */
async function atWork(on: Page, shape: string): Promise<void> {
  await openWithHand(on, `${site.url}shapes/${shape}/`);
  await on.locator(".bench .machine-choice").waitFor();
  await on.locator(".bench-form input").first().focus();
  await on.locator(".bench .steps").first().waitFor();
  await on.waitForLoadState("networkidle");
}
const narrow = async (width: number, run: (on: Page) => Promise<void>): Promise<void> => {
  const context = await browser.newContext({ viewport: { width, height: 844 } });
  await run(await context.newPage());
  await context.close();
};

it.each(["right-cone", "eccentric-cone", "square-to-round"])(
  "has no target on a %s's page that is too small for a finger",
  async (shape) => {
    await narrow(390, async (on) => {
      await atWork(on, shape);
      for (const name of [/^Look at the shop/, /^How was it worked out: Cold-forming/, "Sections"])
        await on.getByRole("button", { name }).first().click();
      await on.locator(".bench-shop").first().waitFor();
      await on.locator("details").evaluateAll((all) => all.forEach((one) => one.setAttribute("open", "")));
      const small = await on.evaluate(
        ([targets, least]) =>
          [...document.querySelectorAll(targets)].flatMap((one) => {
            const { width, height } = one.getBoundingClientRect();
            const isSeen = one.checkVisibility({ visibilityProperty: true }) && width > 0;
            if (!isSeen || (width >= least && height >= least)) return [];
            return [`${one.tagName} ${width} × ${height}: ${one.textContent.trim()}`];
          }),
        [TARGETS, LEAST] as const,
      );
      expect(small).toEqual([]);
    });
  },
);

const way = (on: Page, name: string) =>
  on.getByRole("navigation", { name: "Sections of the bench" }).getByRole("link", { name, exact: true });
/** Where the keyboard is, and how far that stands from the top of the screen. */
const arrived = (on: Page) =>
  on.evaluate(() => {
    const { id } = document.activeElement ?? { id: "" };
    return [id, Math.abs(document.activeElement?.getBoundingClientRect().top ?? Infinity) < 200];
  });

it.each([390, 320])(
  "leads to every section of the bench at %i px, before what stands there is made",
  async (width) => {
    await narrow(width, async (on) => {
      await openWithHand(on, `${site.url}shapes/right-cone/`);
      await on.locator(".bench .machine-choice").waitFor();
      const fold = on.getByRole("button", { name: "Sections" });
      expect(await way(on, "First pass").isVisible()).toBe(false);
      for (const [name, id] of [
        ["First pass", "first-pass"],
        ["Take away", "take-away"],
        ["Blank", "blank"],
        ["Size", "bench-size"],
      ] as const) {
        await fold.click();
        expect(await fold.getAttribute("aria-expanded")).toBe("true");
        await way(on, name).click();
        expect(await way(on, name).isVisible()).toBe(false);
        await expect.poll(() => arrived(on)).toEqual([id, true]);
        expect(await on.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      }
      // By the keyboard alone, and away again.
      await fold.focus();
      await on.keyboard.press("Enter");
      await on.keyboard.press("Tab");
      expect(await way(on, "Size").evaluate((one) => one === document.activeElement)).toBe(true);
      await on.keyboard.press("Escape");
      expect(await fold.evaluate((one) => one === document.activeElement)).toBe(true);
      expect(await fold.getAttribute("aria-expanded")).toBe("false");
    });
  },
);

it.each(["will-it-go", "blank", "second-pass"])(
  "leads whoever comes by the address of #%s to where it stands at last",
  async (id) => {
    await page.goto(`${site.url}shapes/right-cone/#${id}`);
    await expect.poll(() => arrived(page)).toEqual([id, true]);
    // All that comes later is there, and has not moved it.
    await page.locator(".bench #cut-files").waitFor({ state: "attached", timeout: 15_000 });
    await page.locator(".bench .steps").first().waitFor({ state: "attached" });
    await expect.poll(() => arrived(page)).toEqual([id, true]);
    // Whoever reads on and reloads is not led back.
    await page.mouse.wheel(0, -900);
    await expect.poll(() => arrived(page)).toEqual([id, false]);
    await page.reload();
    await page.locator(".bench .capacity-chart").waitFor({ state: "attached", timeout: 15_000 });
    await page.waitForLoadState("networkidle");
    expect(await page.evaluate(() => document.activeElement?.id)).not.toBe(id);
  },
);

it("has the sections of a part for the brake in a row on a wide screen, without passes", async () => {
  await openWithHand(page, `${site.url}shapes/square-to-round/`);
  await page.locator(".bench .machine-choice").waitFor();
  const names = await page
    .getByRole("navigation", { name: "Sections of the bench" })
    .getByRole("link")
    .allTextContents();
  expect(names.map((name) => name.trim())).toEqual([
    "Size",
    "Will it go?",
    "Blank",
    "Set-up",
    "Check and correct",
    "Take away",
  ]);
  await way(page, "Check and correct").click();
  await expect.poll(() => arrived(page)).toEqual(["check-and-correct", true]);
});

it("has a button from the beginning for what stands far down, and leads to it without moving what stands above", async () => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openWithHand(page, `${site.url}shapes/right-cone/`);
  const sheets = page.getByRole("button", { name: /^Go to marking table, set-up/ });
  const files = page.getByRole("button", { name: "Go to the DXF, SVG, CSV and PDF files" });
  await files.waitFor();
  // Nobody has come near either; a search in the page finds both.
  expect(await page.locator(".bench #set-up, .bench #cut-files").count()).toBe(0);
  expect(await page.locator(".bench").innerText()).toMatch(/For the cutting table\s+Go to the DXF/);
  const top = await sheets.evaluate((one) => one.getBoundingClientRect().top + scrollY);
  await sheets.evaluate((one: HTMLElement) => one.click());
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("set-up");
  expect(
    Math.abs((await sheets.evaluate((one) => one.getBoundingClientRect().top + scrollY)) - top),
  ).toBeLessThan(2);
  await files.evaluate((one: HTMLElement) => one.click());
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("cut-files");
  expect(await page.locator(".bench #cut-files button", { hasText: ".dxf" }).count()).toBeGreaterThan(0);
});

it("asks for nothing to be mended while files are only on their way, and holds them back for half a number", async () => {
  await openWithHand(page, `${site.url}shapes/right-cone/`);
  const height = page.locator(".bench-form").getByLabel(/^Height between/);
  await height.focus();
  const file = page.locator("#cut-files button", { hasText: ".dxf" }).first();
  await file.waitFor({ timeout: 15_000 });
  const told = page.locator("#cut-files + p");
  await told.evaluate((one) => {
    new MutationObserver(() => {
      one.setAttribute("data-told", `${one.getAttribute("data-told") ?? ""}${one.textContent}`);
    }).observe(one, { childList: true, characterData: true, subtree: true });
  });
  const views = page.locator(".bench [aria-label^=Views] svg");
  for (const size of ["61", "62", "63"]) {
    await height.fill(size);
    await expect.poll(() => views.textContent()).toContain(size);
    await expect.poll(() => file.isDisabled()).toBe(false);
  }
  expect((await told.getAttribute("data-told")) ?? "").not.toContain("First mend");
  await height.fill("6..");
  await expect.poll(() => told.textContent()).toContain("First mend what is typed");
  expect(await file.isDisabled()).toBe(true);
});

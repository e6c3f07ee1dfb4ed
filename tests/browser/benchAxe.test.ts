import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launch } from "./chromium.ts";
import { settled } from "./settled.ts";
import { DIST, serve } from "./site.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const WIDTHS = [1280, 390, 320];

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

/** Everything that axe finds at a bench, each with its place; by all rules, or by some. The rest of the page has its own test. */
async function found(page: Page, rules?: readonly string[]): Promise<string[]> {
  const { violations } = await page.evaluate((only) => {
    const { axe } = globalThis as unknown as {
      axe: { run: (where: string, options: object) => Promise<AxeResults> };
    };
    return axe.run("[data-bench]", only ? { runOnly: { type: "rule", values: only } } : {});
  }, rules);
  return violations.flatMap(({ id, nodes }) =>
    nodes.slice(0, 3).map(({ target, html }) => `${id}: ${target.join(" ")} ${html.slice(0, 80)}`),
  );
}

/** What hangs out of the page at its right edge; nothing where the page does not scroll sideways. */
const overflow = (page: Page) =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= width) return [];
    return [...document.querySelectorAll("body *")]
      .filter((one) => one.getBoundingClientRect().right > width + 1 && !one.closest(".table-box, pre"))
      .map((one) => `${one.tagName}.${one.getAttribute("class") ?? ""} ${one.textContent.slice(0, 40)}`);
  });

const height = (page: Page) => page.locator(".bench-form").getByLabel(/^Height between/);
const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name });

/** What somebody has done at the bench of a shape, one state on top of the other where they do not exclude each other. */
const STATES: readonly [string, string, (page: Page) => Promise<void>][] = [
  ["as it opens", "square-to-round", () => Promise.resolve()],
  [
    "half typed, with a typing error and a care beside a field",
    "right-cone",
    async (page) => {
      await page
        .locator(".bench-form")
        .getByLabel(/^Plate thickness/)
        .fill("40");
      await page.locator(".bench-field .care").first().waitFor();
      await height(page).fill("4oo");
      await page.locator(".bench-field.wrong").first().waitFor();
    },
  ],
  [
    "in the round, unrolled half way, a line chosen and a distance read off",
    "eccentric-cone",
    async (page) => {
      await button(page, "See it in the round").click();
      await page.locator(".round svg").waitFor();
      await page.getByLabel("Unroll", { exact: true }).fill("50");
      const pattern = page.locator(".live-drawing").nth(1);
      await pattern.locator(".look").focus();
      for (let i = 0; i < 3; i++) await page.keyboard.press("ArrowRight");
      await page.locator(".chosen-line strong").first().waitFor();
      await pattern.getByRole("button", { name: "Read off a distance" }).click();
      await pattern.locator(".look").focus();
      for (const key of ["ArrowRight", "Enter", "ArrowRight", "Enter"]) await page.keyboard.press(key);
      await page.locator("line.tape").waitFor();
    },
  ],
  [
    "with the shop open, every machine unfolded, and a mistake in it",
    "right-cone",
    async (page) => {
      await button(page, "Look at the shop’s machines and change them").click();
      await page.locator(".bench-shop details").first().waitFor();
      await page
        .locator(".bench-shop details, .bench-form details")
        .evaluateAll((all) => all.forEach((one) => ((one as HTMLDetailsElement).open = true)));
      await page
        .locator(".bench-shop")
        .first()
        .getByLabel(/^Working width/)
        .first()
        .fill("1o");
      await page.locator(".bench-shop .bench-field.wrong").first().waitFor();
      await button(page, "What is this: Units of its sizes?").click();
    },
  ],
  [
    "with parts in the tray and figures asked",
    "eccentric-cone",
    async (page) => {
      await button(page, /tray/i).first().click();
      await page.locator(".bench-tray > li").first().waitFor();
      await button(page, /^How was it worked out: Shortest line/).click();
      await button(page, "How was it worked out: line length, true?").click();
      await button(page, /^How was it worked out: height at four places/).click();
      await expect.poll(() => page.locator(".bench-answer p").count()).toBeGreaterThan(7);
    },
  ],
  [
    "with another machine chosen, its bend lines asked",
    "right-cone",
    async (page) => {
      await page.locator(".machine-choice input").last().check();
      await button(page, "How was it worked out: Force?").click();
      await page.locator(".bench-answer select").waitFor();
    },
  ],
];

/** A page as it stands: accessible by day and by night, and no wider than a telephone. */
async function holds(page: Page): Promise<void> {
  await page.evaluate(AXE);
  expect(await found(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: "dark" });
  expect(await found(page, ["color-contrast"])).toEqual([]);
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 844 });
    expect(await overflow(page), `${width} px`).toEqual([]);
  }
  expect(await found(page, ["target-size", "scrollable-region-focusable"])).toEqual([]);
}

describe.each(STATES)("a bench %s", (_, shape, act) => {
  it("is accessible by day and by night, and fits a telephone", async () => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, bypassCSP: true });
    page.setDefaultTimeout(20_000);
    await page.goto(`${site.url}shapes/${shape}/`);
    // What stands far down is loaded for whoever is at work.
    await page.locator(".bench-form input").first().focus();
    await page.locator(".bench .machine-choice").waitFor();
    await page.locator(".bench .inspection").waitFor();
    await act(page);
    await holds(page);
    await page.close();
  });
});

it.each(["right-cone", "eccentric-cone", "square-to-round"])(
  "is accessible by day and by night, and fits a telephone, before a hand is laid on a %s",
  async (shape) => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, bypassCSP: true });
    await page.goto(`${site.url}shapes/${shape}/`);
    await page.locator(".bench .checks").waitFor();
    await holds(page);
    expect(await page.locator(".bench .example, .bench .machine-choice").count()).toBe(0);
    await page.close();
  },
);

it("prints a changed part as accessibly, with one heading of the first level and no id twice", async () => {
  const page = await browser.newPage({ bypassCSP: true });
  await page.goto(`${site.url}shapes/right-cone/`);
  await page.locator(".bench-form input").first().focus();
  await page.locator(".bench .inspection").waitFor();
  await height(page).fill("345");
  await settled(page);
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await page.locator(".bench-print .sheet").first().waitFor();
  await page.evaluate(AXE);
  expect(await found(page)).toEqual([]);
  const ids = await page
    .locator("[id]")
    .evaluateAll((all) => all.filter((one) => one.checkVisibility()).map((one) => one.id));
  expect(ids.filter((id, i) => ids.indexOf(id) < i)).toEqual([]);
  await page.close();
});

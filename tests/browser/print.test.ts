import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { yamlOf } from "../content/read.ts";
import { launch } from "./chromium.ts";
import { DIST, pagesOf, serve } from "./site.ts";

/** Paper less the margins of the stylesheet, in CSS pixels: 18 mm for the file on the left, 10 mm on the right. */
const PAPERS = [
  { format: "A4", contentPx: ((210 - 28) / 25.4) * 96, proportion: 210 / 297 },
  { format: "Letter", contentPx: ((215.9 - 28) / 25.4) * 96, proportion: 215.9 / 279.4 },
] as const;

let browser: Browser;
let page: Page;
let site: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  site = await serve(DIST);
  browser = await launch();
  page = await browser.newPage();
});
afterAll(async () => {
  await browser.close();
  site.close();
});

const pagesIn = (pdf: Buffer): number => pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;

/** Whatever stands outside the frame of its sheet, once the page is laid out for paper of this width. */
async function cutOff(widthPx: number): Promise<string[]> {
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width: Math.floor(widthPx), height: 1000 });
  const out = await page.evaluate(() =>
    [...document.querySelectorAll(".sheet")].flatMap((sheet) => {
      const frame = sheet.getBoundingClientRect();
      return [...sheet.querySelectorAll("table, svg, pre, p, dd, li, h1, h2")]
        .filter((one) => {
          const { left, right, width } = one.getBoundingClientRect();
          return width > 0 && (right > frame.right + 1 || left < frame.left - 1);
        })
        .map((one) => `${one.tagName} ${one.textContent.slice(0, 40)}`);
    }),
  );
  await page.emulateMedia({ media: null });
  return out;
}

const WORK = pagesOf(DIST).filter((path) => /^parts\/.*\/forming\//.test(path));
const PARTS = pagesOf(DIST).filter((path) => path.startsWith("parts/") && !WORK.includes(path));
/** Pages of tables that are not ready reckoners. */
const OTHER_TABLES = ["index", "gauges/index", "materials/index"].map((page) => `tables/${page}.html`);
const RECKONERS = pagesOf(DIST).filter((path) => path.startsWith("tables/") && !OTHER_TABLES.includes(path));
const CARDS = pagesOf(DIST).filter((path) => /^machines\/./.test(path) && path !== "machines/index.html");

describe.each(PAPERS)("on $format", ({ format, contentPx, proportion }) => {
  it.each(PARTS)(
    "%s takes two sheets at most, each with its title block, and nothing is cut off",
    async (path) => {
      await page.goto(site.url + path);
      const pages = pagesIn(await page.pdf({ format }));
      expect(pages).toBeGreaterThan(0);
      expect(pages).toBeLessThanOrEqual(2);
      expect(await page.locator(".title-block").count()).toBe(2);
      expect(await cutOff(contentPx)).toEqual([]);
    },
  );

  it.each(WORK)("%s prints each of its sheets on one page", async (path) => {
    await page.goto(site.url + path);
    const sheets = await page.locator(".title-block").count();
    expect(sheets).toBeGreaterThan(1);
    expect(pagesIn(await page.pdf({ format }))).toBe(sheets);
    expect(await page.locator("h1").count()).toBe(1);
  });

  it("has all steps of a part on both sides of one sheet, in type that is read at arm's length", async () => {
    await page.emulateMedia({ media: "print" });
    // Styles know the paper by its proportions.
    await page.setViewportSize({ width: Math.floor(contentPx), height: Math.floor(contentPx / proportion) });
    for (const path of WORK) {
      await page.goto(site.url + path);
      const sides = page.locator(".sheet:nth-of-type(-n + 2)");
      const steps = sides.locator(".step-card > li");
      const all = await page.locator(".steps > li").count();
      expect(await steps.count(), path).toBe(all);
      if (all === 0) continue;
      const sizes = await steps.evaluateAll((all) =>
        all.map((one) => Number.parseFloat(getComputedStyle(one).fontSize)),
      );
      // In points, CSS pixels being 1/96 in; the settings of several zones ask for more words.
      const least = (await sides.locator(".zone-sums").count()) > 0 ? 10 : 10.5;
      expect(Math.min(...sizes), path).toBeGreaterThanOrEqual((least / 72) * 96 - 0.01);
      const lines = await steps
        .locator("ul > li")
        .evaluateAll((all) =>
          all.map((one) => ({ text: one.textContent, over: one.scrollWidth - one.clientWidth })),
        );
      expect(lines.length, path).toBeGreaterThan(0);
      expect(
        lines.filter(({ over }) => over > 0),
        `${path}: a name leaves no room to write`,
      ).toEqual([]);
    }
    await page.emulateMedia({ media: null });
  });

  it.each(CARDS)(
    "%s is a card of one sheet, what the machine takes and cautions on its front",
    async (path) => {
      await page.goto(site.url + path);
      const sides = await page.locator(".title-block").count();
      expect(sides).toBeLessThanOrEqual(2);
      expect(pagesIn(await page.pdf({ format }))).toBe(sides);
      const front = await page.locator(".sheet").first().innerText();
      expect(front).toMatch(/Ratings[^]*Caution/);
      if (sides === 2) expect(await page.locator(".sheet").last().innerText()).toMatch(/The job’s parts/);
    },
  );

  it.each(RECKONERS)("%s takes two sheets at most, with its headings on each", async (path) => {
    await page.goto(site.url + path);
    const pages = pagesIn(await page.pdf({ format }));
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThanOrEqual(2);
    await page.emulateMedia({ media: "print" });
    const heading = await page.locator("thead").evaluate((one) => getComputedStyle(one).display);
    expect(heading).toBe("table-header-group");
    await page.emulateMedia({ media: null });
  });

  it("has all gauges on one page, none of them left over alone on another", async () => {
    await page.goto(`${site.url}tables/gauges/`);
    expect(pagesIn(await page.pdf({ format }))).toBe(1);
  });

  it("has no check on a part's card in letters smaller than 7.5 points, the reasons behind it no less", async () => {
    await page.emulateMedia({ media: "print" });
    for (const path of PARTS) {
      await page.goto(site.url + path);
      const sizes = await page
        .locator(":is(.checks, .machines) :is(li, small)")
        .evaluateAll((all) => all.map((one) => Number.parseFloat(getComputedStyle(one).fontSize)));
      expect(Math.min(...sizes), path).toBeGreaterThanOrEqual((7.5 / 72) * 96 - 0.01);
    }
    await page.emulateMedia({ media: null });
  });

  it.each(pagesOf(DIST).filter((path) => !PARTS.includes(path)))("%s has nothing cut off", async (path) => {
    await page.goto(site.url + path);
    expect(await cutOff(contentPx)).toEqual([]);
  });
});

it("prints what is drawn by hand on the last work sheet where there is room, and takes no room where there is not", async () => {
  await page.emulateMedia({ media: "print" });
  // US Letter within its margins, the shorter paper.
  await page.setViewportSize({
    width: Math.floor(PAPERS[1].contentPx),
    height: Math.floor(((279.4 - 12) / 25.4) * 96),
  });
  let [shown, without] = [0, 0];
  for (const path of WORK) {
    await page.goto(site.url + path);
    const drawing = page.locator(".spare svg").first();
    if ((await drawing.count()) === 0) continue;
    if (await drawing.isVisible()) {
      shown += 1;
      const [box, block] = [
        await drawing.boundingBox(),
        await page.locator(".title-block").last().boundingBox(),
      ];
      expect(box!.y + box!.height, path).toBeLessThanOrEqual(block!.y);
      expect(box!.width, path).toBeGreaterThan(250);
    } else without += 1;
  }
  expect(shown).toBeGreaterThan(5);
  expect(without).toBeGreaterThan(0);
  await page.emulateMedia({ media: null });
});

it("prints views larger on the taller paper, and no lettering of a drawing below 7 points on either", async () => {
  await page.emulateMedia({ media: "print" });
  for (const path of PARTS) {
    const heights: number[] = [];
    for (const [paper, heightMm] of [
      [PAPERS[0], 297],
      [PAPERS[1], 279.4],
    ] as const) {
      const size = { width: Math.floor(paper.contentPx), height: Math.floor(((heightMm - 12) / 25.4) * 96) };
      await page.setViewportSize(size);
      await page.goto(site.url + path);
      const seen = page.locator(".sheet svg.sheet-drawing:visible");
      heights.push((await seen.first().boundingBox())!.height);
      const points = await seen.evaluateAll((all) =>
        all.flatMap((svg) => {
          const { a } = (svg as SVGSVGElement).getScreenCTM()!;
          return [...svg.querySelectorAll("text")].map(
            (text) => (Number(text.getAttribute("font-size")) * a * 72) / 96,
          );
        }),
      );
      expect(points.length).toBeGreaterThan(10);
      expect(Math.min(...points), path).toBeGreaterThanOrEqual(7);
    }
    expect(heights[0], path).toBeGreaterThanOrEqual(heights[1]! - 1);
  }
  await page.emulateMedia({ media: null });
});

it("counts its pages in the margin as the browser breaks them, and says no other number", async () => {
  await page.emulateMedia({ media: "print" });
  await page.goto(`${site.url}${PARTS[0] ?? ""}`);
  expect(await page.locator(".title-block").first().innerText()).not.toMatch(/\bof \d/);
  const margin = await page.evaluate(() =>
    [...document.styleSheets]
      .flatMap((sheet) => [...sheet.cssRules])
      .filter((rule) => rule instanceof CSSPageRule)
      .map(({ cssText }) => cssText)
      .join(" "),
  );
  expect(margin).toMatch(/@bottom-right[^}]*counter\(page\)[^}]*counter\(pages\)/);
  await page.emulateMedia({ media: null });
});

it("prints no heading with nothing to do under it", async () => {
  await page.emulateMedia({ media: "print" });
  for (const path of PARTS) {
    await page.goto(site.url + path);
    const text = await page.locator("main").innerText();
    expect(text, path).not.toMatch(/Take away|None: on the brake/);
  }
  await page.emulateMedia({ media: null });
});

it("prints no id of a source beside a figure, but its name", async () => {
  const ids = Object.keys(yamlOf("content/sources.yaml") as Record<string, unknown>);
  await page.emulateMedia({ media: "print" });
  for (const path of [...PARTS, ...WORK, ...CARDS]) {
    await page.goto(site.url + path);
    const text = await page.locator("main").innerText();
    expect(
      ids.filter((id) => text.includes(id)),
      path,
    ).toEqual([]);
  }
  await page.emulateMedia({ media: null });
});

it("says what can spoil a brake's work above its first step, on paper too", async () => {
  await page.emulateMedia({ media: "print" });
  const seen: string[] = [];
  for (const path of WORK) {
    await page.goto(site.url + path);
    const first = page.locator(".look-first");
    if ((await first.count()) === 0) continue;
    seen.push(path);
    const top = async (one: string) => (await page.locator(one).first().boundingBox())?.y ?? NaN;
    expect(await top(".look-first"), path).toBeLessThan(await top(".step-card"));
  }
  expect(seen.join(" ")).toMatch(/flue-foot.*screw-feed-transition/);
  await page.emulateMedia({ media: null });
});

it("shows which corner is which on the sheet on which they are measured, by the names of the bend lines", async () => {
  await page.emulateMedia({ media: "print" });
  for (const name of ["flue-foot", "screw-feed-transition", "fan-inlet"]) {
    await page.goto(`${site.url}parts/${name}/forming/`);
    const sheet = page.locator(".sheet", { has: page.locator(".inspection") });
    const sketch = sheet.locator(".print-only > svg", { hasText: "corner 1 of piece 1" }).first();
    expect(await sketch.isVisible(), name).toBe(true);
    const words = await sketch.textContent();
    for (const piece of [1, 2])
      for (const corner of [1, 2]) expect(words, name).toContain(`corner ${corner} of piece ${piece}, `);
    expect(words).toMatch(/seam 1.*seam 2/s);
  }
  await page.emulateMedia({ media: null });
});

it("has what is taped along an edge in fractions of an inch too, beside every bend line", async () => {
  await page.goto(`${site.url}parts/flue-foot/forming/`);
  const rows = await page
    .locator(".lines tbody tr")
    .evaluateAll((all) =>
      all.map((row) => [5, 6, 8].map((i) => row.querySelector(`:nth-child(${i})`)?.textContent.trim() ?? "")),
    );
  // Both halves are alike and have one table.
  expect(rows).toHaveLength(18);
  // Nought is where the edge begins; a whole number of inches needs no fraction.
  for (const cell of rows.flat())
    expect(cell).toMatch(/^(?:0\.000|\d+\.000|\d+\.\d{3}\s\(\d+(?:-\d+\/\d+)?\))$/);
  expect(rows[1]).toEqual(
    ["11.922 (11-15/16)", "1.538 (1-17/32)", "14.222 (14-7/32)"].map((text) => text.replace(" ", "\u00a0")),
  );
});

it("says of a size without a limit that none is given, and who says what passes", async () => {
  await page.goto(`${site.url}parts/gravel-bin-bottom/forming/`);
  const text = await page.locator(".sheet", { has: page.locator(".inspection") }).innerText();
  expect(text).toMatch(/tape round the outside\s+5340\.7\s+none given:\s+the\s+foreman\s+decides/);
  expect(text).not.toContain("—");
  expect(text).toContain("Where none is given, the foreman says what passes.");
  expect(text).toMatch(/standing with its small end up, 0° is/);
});

it("prints black on white and without controls, whatever the screen shows", async () => {
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  await page.goto(`${site.url}${PARTS[0] ?? ""}`);
  const look = await page.evaluate(() => ({
    paper: getComputedStyle(document.documentElement).backgroundColor,
    ink: getComputedStyle(document.documentElement).color,
    menu: getComputedStyle(document.querySelector(".menu") ?? document.body).display,
  }));
  expect(look).toEqual({ paper: "rgb(255, 255, 255)", ink: "rgb(0, 0, 0)", menu: "none" });
});

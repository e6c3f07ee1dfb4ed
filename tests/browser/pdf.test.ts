import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { readPdf } from "../output/readPdf.ts";
import { context, freshPages, page, site } from "./freshPage.ts";

freshPages({ consoleToo: true });

const button = (name: string | RegExp) => page.getByRole("button", { name }).first();
async function saved(name: string | RegExp): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([page.waitForEvent("download"), button(name).click()]);
  return { name: download.suggestedFilename(), bytes: new Uint8Array(readFileSync(await download.path())) };
}

it("makes the full-size pattern on a part's page, with the network off", async () => {
  await page.goto(`${site.url}parts/fan-inlet/`);
  const foot = page.locator("[data-version] [role=status]");
  await expect.poll(() => foot.textContent(), { timeout: 20_000 }).toBe("Works with the network off.");
  await page.reload();
  await context.setOffline(true);
  await button(/^PDF: full-size/).click();
  const a4 = await saved("fan-inlet-full-size-a4.pdf");
  const { pages } = await readPdf(a4.bytes);
  expect(pages.length).toBeGreaterThan(5);
  expect(Math.round(pages[0]!.widthMm)).toBe(210);
  await expect
    .poll(() => page.locator("[role=status]").allTextContents())
    .toContainEqual(expect.stringContaining(`${pages.length - 1} sheets and a map`));
  for (const [file, words] of [
    ["fan-inlet-card.pdf", "Marking table"],
    ["fan-inlet-work-sheet.pdf", "Bend lines"],
  ] as const) {
    const { bytes } = await saved(file);
    expect((await readPdf(bytes)).bookmarks).toContain(words);
  }
  await page.getByLabel("Paper").selectOption("A3");
  const a3 = await saved("fan-inlet-full-size-a3.pdf");
  const larger = (await readPdf(a3.bytes)).pages;
  expect(larger.length).toBeLessThan(pages.length);
  expect(Math.round(Math.min(larger[1]!.widthMm, larger[1]!.heightMm))).toBe(297);
});

it("says what helps where a pattern takes too many sheets, and does what it says", async () => {
  await page.goto(`${site.url}parts/overflow-shift/`);
  await button(/^PDF: full-size/).click();
  await button("overflow-shift-full-size-a4.pdf").click();
  const told = page.locator("[data-pdf] [role=status]");
  await expect.poll(() => told.textContent()).toContain("only the sheets that an edge crosses");
  await page.getByLabel("only sheets that an edge crosses").check();
  const { bytes } = await saved("overflow-shift-full-size-a4.pdf");
  expect((await readPdf(bytes)).pages[0]!.texts.map(({ text }) => text).join(" ")).toContain(
    "would hold no edge",
  );
});

it("makes a half and a quarter of a pattern that has them, with a map of how they are turned over", async () => {
  await page.goto(`${site.url}parts/silo-outlet-ring/`);
  await button(/^PDF: full-size/).click();
  const whole = (await readPdf((await saved("silo-outlet-ring-full-size-a4.pdf")).bytes)).pages.length;
  const half = (await readPdf((await saved("silo-outlet-ring-half-a4.pdf")).bytes)).pages;
  const quarter = (await readPdf((await saved("silo-outlet-ring-quarter-a4.pdf")).bytes)).pages;
  expect(half.length).toBeLessThan(whole);
  expect(quarter.length).toBeLessThan(half.length);
  expect(quarter[0]!.texts.map(({ text }) => text).join(" ")).toContain("turn both over about the middle");
  const points = (await readPdf((await saved("silo-outlet-ring-points-a4.pdf")).bytes)).pages;
  expect(points[0]!.texts.map(({ text }) => text).join(" ")).toContain("would hold no marking point");
  await page.goto(`${site.url}parts/screw-feed-transition/`);
  await button(/^PDF: full-size/).click();
  await button("screw-feed-transition-piece-1-full-size-a4.pdf").waitFor();
  await page.waitForTimeout(600);
  expect(await button(/-(half|quarter)-a4\.pdf$/).count()).toBe(0);
});

it("makes it at the bench of the part as it stands there, on Letter for a part in inches", async () => {
  await page.goto(`${site.url}shapes/right-cone/`);
  await page.locator(".bench-form").waitFor();
  await page.getByLabel(/^Height between/).fill("123");
  const card = await saved("right-cone-card.pdf");
  expect(JSON.stringify((await readPdf(card.bytes)).pages.map(({ texts }) => texts))).toContain("123 mm");
  const { bytes, name } = await saved(/right-cone-full-size-a4\.pdf/);
  expect(name).toBe("right-cone-full-size-a4.pdf");
  expect((await readPdf(bytes)).bookmarks[0]).toBe("Map of the sheets");
  await page.goto(`${site.url}parts/seed-funnel/`);
  await button(/^PDF: full-size/).click();
  await button("seed-funnel-full-size-letter.pdf").waitFor();
});

it("starts the work sheet from the trials kept in the browser, on the part's page and on the sheet's own", async () => {
  const key = `slantwork trials ${JSON.stringify(["seed-funnel", "Small roll"])}`;
  await page.addInitScript(
    ([name, value]) => localStorage.setItem(name!, value!),
    [key, JSON.stringify([{ settingMm: 23, flat: true }])],
  );
  for (const path of ["parts/seed-funnel/", "parts/seed-funnel/forming/"]) {
    await page.goto(`${site.url}${path}`);
    await button(/^PDF: full-size/).click();
    const { bytes } = await saved("seed-funnel-work-sheet.pdf");
    const [first] = (await readPdf(bytes)).pages;
    expect(first!.texts.map(({ text }) => text).join("")).toContain("own trials");
  }
});

it("has fields and buttons large enough for gloves, and nothing beside the screen, at any width", async () => {
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    await page.goto(`${site.url}parts/screw-feed-transition-left/`);
    await button(/^PDF: full-size/).click();
    await page.getByLabel("Paper").waitFor();
    const small = await page
      .locator("[data-pdf] button, [data-pdf] select, [data-pdf] .pdf-tick")
      .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 44).length);
    expect(small).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
});

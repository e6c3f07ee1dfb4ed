import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPlaces } from "../output/pdfPlaces.ts";
import { launch } from "./chromium.ts";
import { DIST, pagesOf, serve } from "./site.ts";

const PATH = "binder/index.html";
let browser: Browser;
let page: Page;
let site: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  site = await serve(DIST);
  browser = await launch();
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await page.goto(site.url + PATH);
});
afterAll(async () => {
  await browser.close();
  site.close();
});

/** What a page of twenty parts may weigh on its way. [bytes, gzip] */
const MOST_BYTES = 700_000;

it("has every part, machine, shape and table of the site once, and weighs no more than a few photographs", async () => {
  const stands = await page
    .locator("[data-page]")
    .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset["page"]));
  const pages = pagesOf(DIST)
    .filter((path) => /^(parts|machines|shapes|tables)\/.+\/index\.html$/.test(path))
    // Of the machines that take a part the binder has the first choice.
    .filter((path) => !/\/forming\/.+\//.test(path))
    .map((path) => `/${path.replace("index.html", "")}`);
  expect(stands.toSorted()).toEqual(
    [...pages, "/binder/", "/safety/", "/job/", "/glossary/", "/sources/"].toSorted(),
  );
  expect(gzipSync(readFileSync(join(DIST, PATH))).length).toBeLessThan(MOST_BYTES);
});

it("leads from its contents, and from sheet to sheet, to places of its own", async () => {
  const links = await page
    .locator(".binder-contents a")
    .evaluateAll((all) =>
      all.map((one) => document.getElementById((one as HTMLAnchorElement).hash.slice(1))?.dataset["page"]),
    );
  expect(links.length).toBeGreaterThan(50);
  expect(links.filter((target) => target === undefined)).toEqual([]);
  const away = await page
    .locator("[data-page] a[href*='/parts/']:not([download])")
    .evaluateAll((all) => all.map((one) => one.getAttribute("href")));
  // The sheet of another machine than the first choice stands on a page of its own alone.
  expect(
    away.filter((href) => !/\/forming\/[^/]+\//.test(href ?? "") || /forming\/index/.test(href ?? "")),
  ).toEqual([]);
});

describe.each(["A4", "Letter"] as const)("printed on %s", (format) => {
  it("begins every sheet on a page of its own, counted in the margin", async () => {
    const pdf = await readPlaces(new Uint8Array(await page.pdf({ format })));
    const tops = pdf.pages.map(({ texts }) => texts.toSorted((a, b) => b.y - a.y)[0]?.text ?? "");
    const headings = await page
      .locator("[data-page]")
      .evaluateAll((all) => all.map((one) => one.querySelector("h1")?.textContent.trim() ?? ""));
    let from = 0;
    for (const heading of headings) {
      const at = tops.findIndex((top, i) => i >= from && heading.startsWith(top.trim()));
      expect(at, heading).toBeGreaterThanOrEqual(from);
      from = at + 1;
    }
    pdf.pages.forEach(({ words }, i) => expect(words).toContain(`page ${i + 1} of ${pdf.pages.length}`));
  });
});

it("has the PDF files that its first sheet names", async () => {
  const files = await page
    .locator(".binder-files a")
    .evaluateAll((all) => all.map((one) => one.getAttribute("download") ?? ""));
  expect(files).toEqual(["binder-a4.pdf", "binder-letter.pdf"]);
  for (const file of files) {
    const path = join(DIST, "binder", file);
    expect(statSync(path).size).toBeLessThan(3_000_000);
    const { bookmarks, info } = await readPlaces(new Uint8Array(readFileSync(path)));
    expect(bookmarks.map(({ title }) => title)).toContain("Parts");
    expect(info["Title"]).toBe(await page.locator("h1").first().textContent());
  }
});

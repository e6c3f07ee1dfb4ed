import { cpSync, globSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { launch } from "./chromium.ts";
import { openWithHand } from "./hand.ts";
import { DIST, pagesOf, serve } from "./site.ts";

let browser: Browser;
let context: BrowserContext;
let page: Page;
let folder = "";
let site: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "offline-"));
  cpSync(DIST, folder, { recursive: true });
  site = await serve(folder);
  context = await browser.newContext();
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
});
afterEach(async () => {
  await context.close();
  site.close();
  rmSync(folder, { recursive: true });
});

const foot = () => page.locator("[data-version] [role=status]").textContent();
const visit = async (path: string) => {
  await page.goto(site.url + path);
  await expect.poll(foot, { timeout: 20_000 }).toBe("Works with the network off.");
};
const away = async () => {
  site.close();
  await context.setOffline(true);
};

it("opens every page after one visit, with the server gone and the network off", async () => {
  await visit("");
  await away();
  for (const path of pagesOf(DIST).filter((one) => one !== "404.html")) {
    await page.goto(site.url + path);
    // The whole binder on one page has the headings of all its sheets.
    const most = path === "binder/index.html" ? Infinity : 1;
    const headings = await page.locator("h1").count();
    expect(headings, path).toBeGreaterThan(0);
    expect(headings, path).toBeLessThanOrEqual(most);
    const styled = await page.evaluate(() => getComputedStyle(document.body).fontFamily);
    expect(styled, path).toMatch(/Binder Sans/);
  }
});

it("works at the bench with the network off, pieces that are loaded later included", async () => {
  await visit("shapes/");
  await away();
  await openWithHand(page, `${site.url}shapes/right-cone/`);
  await page.locator(".bench .machine-choice").waitFor();
  await page.getByRole("group", { name: /^Views/ }).waitFor();
  const radius = page.locator(".bench .key-figures dd").first();
  const before = await radius.textContent();
  await page.getByLabel(/^Height between/).fill("321");
  await expect.poll(() => radius.textContent()).not.toBe(before);
});

/** The same binder with another word on its first page, as a new build would leave it. */
function renew(): void {
  const file = join(folder, "glossary/index.html");
  writeFileSync(file, readFileSync(file, "utf8").replace("<h1>", "<h1>Newer "));
  const worker = join(folder, "sw.js");
  writeFileSync(worker, readFileSync(worker, "utf8").replace(/VERSION = "\w+"/, 'VERSION = "newer"'));
}

it("says when a new version is ready, takes it when told to, and loses nothing that was typed", async () => {
  await visit("glossary/");
  renew();
  await page.goto(`${site.url}shapes/right-cone/`);
  await page.locator(".bench-form").waitFor();
  await page.getByLabel(/^Height between/).fill("4o");
  await expect.poll(foot, { timeout: 20_000 }).toBe("A new version of this binder is ready.");
  await page.getByRole("button", { name: "Take the new version" }).click();
  await expect.poll(foot, { timeout: 20_000 }).toBe("Works with the network off.");
  await page.locator(".bench-form").waitFor();
  expect(await page.getByLabel(/^Height between/).inputValue()).toBe("4o");
  await page.goto(`${site.url}glossary/`);
  expect(await page.locator("h1").textContent()).toMatch(/^Newer/);
});

it("keeps nothing of a binder of which a file is missing: half of one must not pass for one", async () => {
  rmSync(join(folder, "mark.svg"));
  await page.goto(site.url);
  await page.waitForTimeout(3000);
  expect(await foot()).toBe("");
  expect(await page.evaluate(() => caches.keys())).toEqual([]);
});

it("works where there are no service workers, and says nothing of them", async () => {
  await page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, "serviceWorker"));
  await page.goto(`${site.url}shapes/right-cone/`);
  await page.locator(".bench-form").waitFor();
  expect(await foot()).toBe("");
});

it("is read from a disk without any server, styles included", async () => {
  await page.goto(pathToFileURL(resolve(DIST, "index.html")).href);
  expect(await page.evaluate(() => getComputedStyle(document.body).fontFamily)).toMatch(/Binder Sans/);
});

describe("the policy that a page takes from its own site only", () => {
  it.each(["", "shapes/right-cone/", "parts/dust-cyclone-cone/forming/", "machines/big-roll/"])(
    "is heeded by /%s without a complaint, and stops a script that somebody put in",
    async (path) => {
      const complaints: string[] = [];
      page.on(
        "console",
        (message) => message.text().includes("Content Security Policy") && complaints.push(message.text()),
      );
      await openWithHand(page, site.url + path);
      if (path.startsWith("shapes")) await page.locator(".bench .machine-choice").waitFor();
      expect(complaints).toEqual([]);
      const ran = await page.evaluate(() => {
        const script = document.createElement("script");
        script.textContent = "globalThis.broken = true";
        document.head.append(script);
        return "broken" in globalThis;
      });
      expect(ran).toBe(false);
    },
  );

  it("stands on every page, and no page has styles or handlers of its own", () => {
    for (const path of globSync("**/*.html", { cwd: DIST })) {
      const html = readFileSync(join(DIST, path), "utf8");
      expect(html, path).toContain('http-equiv="Content-Security-Policy"');
      if (path !== "404.html") expect(html.match(/<[^>]+\s(?:style|on[a-z]+)="/), path).toBeNull();
    }
  });
});

import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { launch } from "./chromium.ts";
import { build, DIST, serve } from "./site.ts";

const root = mkdtempSync(join(tmpdir(), "binder-"));
let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  rmSync(root, { recursive: true, force: true });
});

const TITLE = `"><img src=x onerror=alert(1)> </title><script>alert(2)</script> & 'x' url(/a/b) href="/abc"`;
const NOTES = `</p></article><style>*{display:none}</style> <b>bold</b> {1 + 1}`;

function folder(name: string, parts: Readonly<Record<string, object>>): string {
  const path = join(root, name);
  mkdirSync(join(path, "parts"), { recursive: true });
  for (const [file, part] of Object.entries(parts))
    // JSON is YAML too, and quotes what is hostile.
    writeFileSync(join(path, "parts", `${file}.yaml`), JSON.stringify(part));
  return path;
}

const CONE = {
  shape: "right-cone",
  title: TITLE,
  units: "mm",
  material: "s235",
  thickness: 4,
  largeEnd: { diameter: 900, measured: "outside" },
  smallEnd: { diameter: 400, measured: "outside" },
  height: 700,
  notes: NOTES,
};

it("builds another folder without shop or job, and shows hostile text as text", async () => {
  const out = join(root, "dist");
  const { code, stderr } = await build(folder("hostile", { "a.b~c": CONE }), out);
  expect(stderr).toBe("");
  expect(code).toBe(0);
  const site = await serve(out);
  const page = await browser.newPage();
  const dialogs: string[] = [];
  page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  for (const path of [
    "index.html",
    "job/index.html",
    "parts/a.b~c/forming/index.html",
    "parts/a.b~c/index.html",
  ]) {
    await page.goto(site.url + path);
    expect(await page.getByText(TITLE, { exact: true }).count(), path).toBeGreaterThan(0);
    expect(await page.locator("script:not([src]), img, b, article style").count(), path).toBe(0);
  }
  expect(await page.title()).toContain(TITLE);
  expect(await page.locator("h1").textContent()).toBe(TITLE);
  expect(await page.locator(".notes").textContent()).toContain(NOTES);
  expect(await page.getByText("No shop file was given, so only the part itself was checked").count()).toBe(1);
  expect(dialogs).toEqual([]);
  await page.close();
  site.close();
});

it("stops on bad files with every line of every file, and builds nothing", async () => {
  const out = join(root, "never");
  const swapped = { ...CONE, smallEnd: { diameter: 1400, measured: "outside" } };
  const { height: hieght, ...headless } = CONE;
  const data = folder("bad", { good: CONE, swapped, typo: { ...headless, hieght } });
  const { code, stderr } = await build(data, out);
  expect(code).toBe(1);
  expect(stderr).toContain(`${data}/parts/swapped.yaml:1:`);
  expect(stderr).toContain("largeEnd.diameter: the large end is smaller than the small end; swap them");
  expect(stderr).toContain("hieght: is not a key here; did you mean height?");
  expect(stderr).toContain("2 problems");
  expect(stderr).toContain("nothing was built");
  expect(existsSync(out)).toBe(false);
});

it("keeps the binder of before when a build fails, and says so", async () => {
  const out = join(root, "kept");
  cpSync(DIST, out, { recursive: true });
  const { code, stderr } = await build(folder("worse", { bad: { ...CONE, height: -1 } }), out);
  expect(code).toBe(1);
  expect(stderr).toMatch(/nothing was replaced: the binder in \S+ is still the one of \d{4}-/);
  expect(readFileSync(join(out, "index.html"), "utf8")).toBe(readFileSync(join(DIST, "index.html"), "utf8"));
});

it("does not replace a folder that holds other things", async () => {
  const out = folder("other", {});
  const { code, stderr } = await build(folder("fine", { good: CONE }), out);
  expect(code).toBe(1);
  expect(stderr).toContain("holds other things than a binder");
  expect(existsSync(join(out, "parts"))).toBe(true);
});

it("publishes the very report that the command prints", () => {
  const part = "demo-data/parts/scalper-cone.yaml";
  const args = [
    "--experimental-strip-types",
    "--no-warnings",
    "src/cli/develop.ts",
    part,
    "--shop",
    "demo-data/shop.yaml",
  ];
  const printed: unknown = JSON.parse(execFileSync(process.execPath, args, { encoding: "utf8" }));
  const published: unknown = JSON.parse(readFileSync(join(DIST, "parts/scalper-cone.json"), "utf8"));
  expect(published).toEqual(printed);
});

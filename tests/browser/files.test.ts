import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { zipSync, unzipSync } from "fflate";
import { afterAll, expect, it } from "vitest";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { printProblems } from "../../src/input/problem.ts";
import { readPart } from "../../src/input/readPart.ts";
import { browser, context, freshPages, page, site } from "./freshPage.ts";
import { openWithHand } from "./hand.ts";

freshPages();
const folder = mkdtempSync(join(tmpdir(), "files-"));
const tables = loadCatalogue();
afterAll(() => rmSync(folder, { recursive: true }));

const height = (on = page) => on.locator(".bench-form").getByLabel(/^Height between/);
const go = async (path: string, on = page) => {
  await openWithHand(on, site.url + path);
  await on.locator(".bench-tray, #bench-tray").first().waitFor();
};
const cone = (more = "height: 333\n") => `# a remark
shape: right-cone
title: "Cone: for #1"
units: mm
material: s235
thickness: 4
largeEnd: { diameter: 605.50, measured: outside }
smallEnd: { diameter: 305, measured: outside }
${more}`;
const file = (name: string, text: string | Uint8Array) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const choose = (path: string, accept = ".yaml,.yml", on = page) =>
  on.locator(`input[data-open="${accept}"]`).first().setInputFiles(path);
const button = (name: string | RegExp, on = page) =>
  on.getByRole("button", { name, exact: typeof name === "string" });
const told = (on = page) => on.locator(".bench-told p").first();
const onTray = (on = page) => on.locator(".bench-tray > li strong").allTextContents();
/** What a button hands over. */
async function saved(name: string | RegExp): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent("download"), button(name).first().click()]);
  const path = join(folder, `download-${download.suggestedFilename()}`);
  await download.saveAs(path);
  return { name: download.suggestedFilename(), bytes: readFileSync(path) };
}
/** The part of the bench onto the tray under a name. */
async function putAs(name: string, on = page): Promise<void> {
  await on.getByLabel(/^Name of the part/).fill(name);
  await button("Put this part on the tray", on).click();
}

it("opens a part file, gives the part its name, saves it as the same part, and undo brings back what was there", async () => {
  await go("shapes/right-cone/");
  const before = await height().inputValue();
  const path = file("hopper.yaml", cone());
  await choose(path);
  await expect.poll(() => height().inputValue()).toBe("333");
  expect(await page.getByLabel(/^Name of the part/).inputValue()).toBe("hopper");
  const { name, bytes } = await saved("Save the part");
  expect(name).toBe("hopper.yaml");
  const text = bytes.toString("utf8");
  expect(text).toContain("diameter: 605.50");
  const read = (one: string) => readPart(one, { path: "hopper.yaml", ...tables }).part;
  expect(read(text)).toEqual(read(cone()));
  expect(read(text)).toBeDefined();
  await page.locator(".bench-bar").getByRole("button", { name: "Undo" }).click();
  expect(await height().inputValue()).toBe(before);
  expect(await page.getByLabel(/^Name of the part/).inputValue()).toBe("right-cone");
});

it("tells what is wrong with a file as the build does, and changes nothing unless it is asked to", async () => {
  await go("shapes/right-cone/");
  const before = await height().inputValue();
  const text = cone("heigt: 3OO\nseam: { gap: two }\n");
  await choose(file("bad.yaml", text));
  await page.locator(".bench-lines li").first().waitFor();
  expect(await page.locator(".bench-lines li").allTextContents()).toEqual(
    printProblems(readPart(text, { path: "bad.yaml", ...tables }).problems),
  );
  expect(await height().inputValue()).toBe(before);
  await button("Put it on the bench all the same").click();
  expect(await page.getByLabel(/^Name of the part/).inputValue()).toBe("bad");
  const back = await saved("Save the part");
  expect(back.bytes.toString("utf8")).toContain("heigt: 3OO");
  expect(await told().textContent()).toContain("something wrong in it");
  await choose(file("data.yaml", new Uint8Array([0xff, 0xfe, 65, 0])));
  await expect.poll(() => page.locator(".bench-lines").textContent()).toContain("UTF-16");
});

it("takes a file that is dropped, and one of another shape to that shape's page", async () => {
  await go("shapes/right-cone/");
  const drop = async (name: string, text: string) => {
    const data = await page.evaluateHandle(
      ([named, words]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([words], named));
        return transfer;
      },
      [name, text] as const,
    );
    await page.locator("h2").last().dispatchEvent("drop", { dataTransfer: data });
  };
  await drop("dropped.yaml", cone());
  await expect.poll(() => height().inputValue()).toBe("333");
  await drop("spout.yaml", readFileSync("demo-data/parts/feed-spout-reducer.yaml", "utf8"));
  await page.waitForURL(/shapes\/eccentric-cone/);
  await expect.poll(() => page.getByLabel(/^Name of the part/).inputValue()).toBe("spout");
});

it("calls somebody's own part after the title that it is given, until it is called otherwise", async () => {
  await go("shapes/right-cone/");
  const title = page.locator(".bench-form").getByLabel("Title", { exact: true });
  const name = page.getByLabel(/^Name of the part/);
  await title.fill("Hopper bottom, 2nd line");
  await expect.poll(() => name.inputValue()).toBe("hopper-bottom-2nd-line");
  expect((await saved("hopper-bottom-2nd-line.dxf")).name).toBe("hopper-bottom-2nd-line.dxf");
  await page.reload();
  await name.waitFor();
  await title.fill("Hopper bottom, 3rd line");
  await expect.poll(() => name.inputValue()).toBe("hopper-bottom-3rd-line");
  await title.fill("");
  await expect.poll(() => name.inputValue()).toBe("right-cone");
  await name.fill("mine");
  await title.fill("Another");
  expect(await name.inputValue()).toBe("mine");
  // A file keeps its name, though its title comes to the very same.
  await choose(file("cone-for-1.yaml", cone()));
  await expect.poll(() => name.inputValue()).toBe("cone-for-1");
  await title.fill("Cone for number 2");
  expect(await name.inputValue()).toBe("cone-for-1");
});

it("says what is wrong with a name, and saves nothing under it", async () => {
  await go("shapes/right-cone/");
  for (const name of ["a/b", "con", "a b", ""]) {
    await page.getByLabel(/^Name of the part/).fill(name);
    await button("Save the part").click();
    await expect.poll(() => told().textContent(), { message: name }).toContain("The file was not saved");
  }
});

it("makes no file under a name that is none, and offers one as near as may be", async () => {
  await go("shapes/right-cone/");
  await height().fill("333");
  await page.getByLabel(/^Name of the part/).fill("cone tall");
  await button("Put this part on the tray").click();
  await expect.poll(() => told().textContent()).toMatch(/not put on the tray: .*a space.*cone-tall\.yaml/);
  await button(/^Go to the DXF/)
    .click()
    .catch(() => undefined);
  const dxf = page.locator("#cut-files button").first();
  await expect.poll(() => dxf.textContent()).toContain("cone tall.dxf");
  const told1 = page.locator(".bench-told").getByRole("button", { name: "Call it cone-tall" });
  expect(await page.locator("#cut-files button:enabled").count()).toBe(0);
  expect(await page.getByText(/^No file is made under the name of this part/).textContent()).toContain(
    "a space",
  );
  await told1.click();
  expect(await page.getByLabel(/^Name of the part/).inputValue()).toBe("cone-tall");
  await expect.poll(() => dxf.isEnabled()).toBe(true);
  expect((await saved("cone-tall.dxf")).name).toBe("cone-tall.dxf");
  await button("Put this part on the tray").click();
  await expect.poll(() => onTray()).toEqual(["cone-tall"]);
});

it("takes no file's name from a link as it comes", async () => {
  await go("shapes/right-cone/");
  const part = (
    JSON.parse((await page.locator("[data-part]").getAttribute("data-part"))!) as { part: object }
  ).part;
  const sent = encodeURIComponent(JSON.stringify({ name: "a\r\n0\r\nLINE\r\n../../x", part }));
  await page.goto("about:blank");
  await page.goto(`${site.url}shapes/right-cone/#part=${sent}`);
  await button("Save the part").click();
  await expect.poll(() => told().textContent()).toContain("The file was not saved");
  await page.locator("#cut-files button").first().waitFor({ state: "attached" });
  expect(await page.locator("#cut-files button:enabled").count()).toBe(0);
});

it("keeps the sound parts on the tray where one is not, and the whole text for a file", async () => {
  await go("shapes/right-cone/");
  await putAs("first");
  await expect.poll(() => onTray()).toEqual(["first"]);
  await page.evaluate(() => {
    const [key, text] = Object.entries(localStorage as unknown as Record<string, string>).find(([name]) =>
      name.endsWith(" tray"),
    )!;
    localStorage.setItem(key, text.replace('"parts":[', '"parts":[{"name":"lost","part":"what I typed"},'));
  });
  await page.reload();
  await expect.poll(() => told().textContent()).toContain("Something on the tray could not be read");
  expect(await onTray()).toEqual(["first"]);
  await putAs("second");
  await expect.poll(() => onTray()).toEqual(["first", "second"]);
  const { bytes } = await saved("Save it as a file");
  expect(bytes.toString("utf8")).toContain("what I typed");
  await button("Throw it away").click();
  await page.reload();
  await expect.poll(() => onTray()).toEqual(["first", "second"]);
  expect(await page.getByText("could not be read").count()).toBe(0);
});

it("shares a link that puts the part on another bench, copied or to be copied by hand", async () => {
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await go("parts/scalper-cone/").catch(() => undefined);
  await go("shapes/right-cone/");
  await height().fill("444");
  await button("Copy a link").click();
  await expect.poll(() => told().textContent()).toContain("nothing is sent to a server");
  const link = await page.evaluate(() => navigator.clipboard.readText());
  const other = await (await browser.newContext()).newPage();
  await other.addInitScript(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
  await other.goto(link);
  await expect.poll(() => height(other).inputValue()).toBe("444");
  await button("Copy a link", other).click();
  const field = other.locator(".bench-told input");
  expect(await field.inputValue()).toBe(link);
  expect(await field.evaluate((one: HTMLInputElement) => one.selectionEnd)).toBe(link.length);
  await other.context().close();
});

it("keeps a tray for all benches: puts, asks where a name is taken, takes, removes, puts back", async () => {
  await go("shapes/right-cone/");
  await putAs("one");
  await height().fill("444");
  await button("Put this part on the tray").click();
  await expect.poll(() => told().textContent()).toContain("Another part called one");
  expect(await onTray()).toEqual(["one"]);
  await button("Keep both").click();
  expect(await onTray()).toEqual(["one", "one-2"]);
  await height().fill("555");
  await button("Put this part on the tray").click();
  await button("Replace it").click();
  expect(await page.locator(".bench-tray").textContent()).toContain("height 555");
  await go("shapes/square-to-round/");
  expect(await onTray()).toEqual(["one", "one-2"]);
  await button("Take off: one").click();
  expect(await onTray()).toEqual(["one-2"]);
  await button("Put back one").click();
  expect(await onTray()).toEqual(["one-2", "one"]);
  await button("Onto the bench: one-2").click();
  await page.waitForURL(/shapes\/right-cone/);
  await expect.poll(() => height().inputValue()).toBe("444");
});

it("loses no part where two windows are open at once", async () => {
  const other = await context.newPage();
  await go("shapes/right-cone/");
  await go("shapes/eccentric-cone/", other);
  await putAs("here");
  await expect.poll(() => onTray(other)).toEqual(["here"]);
  await putAs("there", other);
  await expect.poll(() => onTray()).toEqual(["here", "there"]);
  await putAs("here-too");
  await expect.poll(() => onTray(other)).toEqual(["here", "there", "here-too"]);
});

it("saves the tray as a job, and opens it and one packed by hand", async () => {
  await go("shapes/right-cone/");
  await putAs("one");
  await putAs("two");
  await page.getByLabel("Title of the job").fill("Batch 7: bins");
  await page.getByLabel("Title of the job").blur();
  const job = await saved("Save the tray as a job (.zip)");
  expect(job.name).toBe("batch-7-bins.zip");
  expect(Object.keys(unzipSync(job.bytes))).toEqual([
    "batch-7-bins/job.yaml",
    "batch-7-bins/shop.yaml",
    "batch-7-bins/parts/one.yaml",
    "batch-7-bins/parts/two.yaml",
  ]);
  expect((await saved("Save the tray as a job (.zip)")).bytes.equals(job.bytes)).toBe(true);
  await button("Empty the tray").click();
  expect(await onTray()).toEqual([]);
  await choose(file("job.zip", job.bytes), ".zip");
  await expect.poll(() => onTray()).toEqual(["one", "two"]);
  expect(await page.getByLabel("Title of the job").inputValue()).toBe("Batch 7: bins");
  await choose(file("broken.zip", job.bytes.subarray(0, 300)), ".zip");
  await expect.poll(() => told().textContent()).toContain("not a whole zip file");
  const words = (text: string) => new TextEncoder().encode(text);
  const byHand = zipSync({
    "my job/parts/good.yaml": words(cone()),
    "my job/parts/bad.yaml": words(cone("heigt: 5\n")),
  });
  await choose(file("by-hand.zip", byHand), ".zip");
  await expect
    .poll(() => page.locator(".bench-lines").textContent())
    .toMatch(/parts\/bad\.yaml:9:1: heigt: /);
  expect(await onTray()).toEqual(["one", "two"]);
  await button("Take the 1 part without problems").click();
  await expect.poll(() => onTray()).toEqual(["one", "two", "good"]);
});

it.each([
  [
    "full",
    () =>
      (Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      }),
  ],
  [
    "forbidden",
    () =>
      Object.defineProperty(globalThis, "localStorage", {
        get: () => {
          throw new DOMException("forbidden", "SecurityError");
        },
      }),
  ],
] as const)(
  "says that nothing is kept with storage %s, and the tray and the part in work stay",
  async (_, spoil) => {
    await page.addInitScript(spoil);
    await go("shapes/right-cone/");
    await height().fill("444");
    await putAs("one");
    await expect.poll(() => told().textContent()).toContain("cannot keep the tray");
    await putAs("two");
    expect(await onTray()).toEqual(["one", "two"]);
    expect(await height().inputValue()).toBe("444");
  },
);

it("meets no objection of the accessibility checker, at any width, with something told and parts on the tray", async () => {
  const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    await go("shapes/right-cone/");
    await putAs(`a-very-long-name-for-a-part-that-somebody-gave-it-${width}`);
    await choose(file("bad.yaml", cone("heigt: 3OO\n")));
    await page.locator(".bench-lines li").first().waitFor();
    await page.evaluate(axe);
    const found = await page.evaluate(() =>
      (
        globalThis as unknown as {
          axe: {
            run: (what: string[]) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
          };
        }
      ).axe.run([".bench-files", ".bench-take"]),
    );
    expect(
      found.violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html.slice(0, 200))]),
    ).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    const small = await page
      .locator(".bench-files button, .bench-take button, .bench-take input[type=text]")
      .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 44).length);
    expect(small).toBe(0);
  }
});

it("packs the cutting files of the tray, and none of them while a part on it cannot be laid out", async () => {
  await go("shapes/right-cone/");
  await choose(file("cone-a.yaml", cone()));
  await expect.poll(() => height().inputValue()).toBe("333");
  await putAs("cone-a");
  await page.getByLabel("Title of the job").fill("Two cones");
  await page.getByLabel("Title of the job").blur();
  const { name, bytes } = await saved("Save the cutting files of the tray (.zip)");
  expect(name).toBe("two-cones-cutting-files.zip");
  const names = Object.keys(unzipSync(bytes));
  for (const ending of ["csv", "dxf", "json", "svg"]) expect(names).toContain(`parts/cone-a.${ending}`);
  expect(names).toContain("list.csv");
  expect(names).toContain("read-me.txt");
  expect(names).toContain("plates/plates.csv");
  await height().fill("-1");
  await putAs("cone-b");
  await button("Save the cutting files of the tray (.zip)").click();
  await expect.poll(() => told().textContent()).toContain("No cutting files were made");
  expect(await page.locator(".bench-lines li").first().textContent()).toMatch(/^cone-b: height: /);
});

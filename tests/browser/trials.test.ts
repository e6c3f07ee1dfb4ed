import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { browser, onePage, page, site } from "./onePage.ts";

const PAGE = "parts/dust-cyclone-cone/forming/index.html";
const NAME = "dust-cyclone-cone.trials.yaml";

const folder = mkdtempSync(join(tmpdir(), "trials-"));

onePage(PAGE);
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const answer = () => page.locator("[data-trial-form]").getByRole("status").textContent();
const add = async (setting: string, gap: string) => {
  await page.getByLabel(/Raise at the large edge/).fill(setting);
  await page.getByLabel("Measured").fill(gap);
  await page.getByRole("button", { name: "Add trial" }).click();
};

/** The same question asked of the command. */
function told(...trials: readonly string[]): string {
  const words = trials.flatMap((trial) => ["--trial", trial]);
  const part = "demo-data/parts/dust-cyclone-cone.yaml";
  const out = execFileSync(
    "npm",
    [
      "run",
      "--silent",
      "develop",
      "--",
      part,
      "--shop",
      "demo-data/shop.yaml",
      "--machine",
      "Small roll",
      ...words,
    ],
    { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] },
  );
  return (JSON.parse(out) as { advice: string }).advice;
}

it("says the next setting that the command says, after one trial and after two", async () => {
  await add("19", "980");
  expect(await answer()).toBe(told("setting=19,gap=980"));
  await add("22.5", "860");
  expect(await answer()).toBe(told("setting=19,gap=980", "setting=22.5,gap=860"));
});

it("has the steps on the screen follow the trials as the printed card does, and says what stays the plan's", async () => {
  const step = page.locator('[data-step="first-raise"]');
  const plain = (text: string | null) => text?.replaceAll("\u00a0", " ").replaceAll(/\s+/g, " ").trim();
  const printed = await page.locator('[data-words="first-raise"]').evaluate((words) => {
    const copy = words.cloneNode(true) as Element;
    for (const mark of copy.querySelectorAll("sup")) mark.remove();
    return copy.textContent;
  });
  expect(plain(await step.locator("[data-step-words]").textContent())).toBe(plain(printed));
  expect(await step.getByText("Trials overrule the plan here").isVisible()).toBe(true);
  // No blank lies in the window yet: the second pass still goes by what the first will have taught.
  expect(await page.getByText("Trials overrule the plan here").count()).toBe(1);
  expect(await page.locator('[data-step="second-raise"] table').isVisible()).toBe(true);
});

it("keeps the trials when the page is left, and saves them as a file that it reads again", async () => {
  await page.reload();
  expect(await page.getByRole("listitem").filter({ hasText: "set 22.5 mm: gap 860 mm" }).count()).toBe(1);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: `Save ${NAME}` }).click(),
  ]);
  expect(download.suggestedFilename()).toBe(NAME);
  const path = join(folder, NAME);
  await download.saveAs(path);
  const text = readFileSync(path, "utf8");
  expect(text).toContain("{ setting: 22.5, gap: 860 }");

  await page.getByRole("button", { name: "remove trial 1" }).click();
  await page.getByRole("button", { name: "remove trial 1" }).click();
  expect(await answer()).toContain("No trial yet");
  await page.getByLabel("Open a file of trials").setInputFiles(path);
  await page.getByText("2 trials read").waitFor();
  expect(await answer()).toBe(told("setting=19,gap=980", "setting=22.5,gap=860"));
});

it("says what is wrong with what is typed or opened, and loses nothing", async () => {
  const before = await answer();
  await add("soon", "860");
  expect(await page.getByRole("alert").textContent()).toContain("as millimetres, as in 12.5");
  await page.getByLabel("What came out").selectOption("closed");
  await add("20", "160");
  expect(await page.getByRole("alert").textContent()).toContain("above 100 where the edges overlap");
  await page.getByLabel("What came out").selectOption("gap");
  // What cannot have been is told and not kept.
  await add("452", "860");
  expect(await page.getByRole("alert").textContent()).toContain("not kept: a setting of 452 mm lies beyond");
  await add("20", "3000");
  expect(await page.getByRole("alert").textContent()).toContain("longer than the edge itself");
  expect(await page.locator("[data-trial-form] li").count()).toBe(2);
  const bad = join(folder, "bad.yaml");
  writeFileSync(bad, "units: mm\nmachine: Small roll\ntrials:\n  - { setting: 3 }\n");
  await page.getByLabel("Open a file of trials").setInputFiles(bad);
  await page.getByText("exactly one of gap, closed and flat").waitFor();
  writeFileSync(bad, "units: mm\nmachine: Big roll\ntrials:\n  - { setting: 3, flat: true }\n");
  await page.getByLabel("Open a file of trials").setInputFiles(bad);
  await page.getByText("say nothing about Small roll").waitFor();
  expect(await answer()).toBe(before);
});

it("answers for both edges and both bearings, prints it, and takes an overlap as past the cap", async () => {
  const rows = page.locator('[data-trial="places"] tr');
  expect(await rows.first().innerText()).toMatch(
    /large edge\s+small edge\s+bearing, small edge\s+bearing, large edge/,
  );
  const large = async () => (await rows.nth(1).locator("td").allInnerTexts())[0]!;
  const words = page.locator('[data-words="first-raise"]');
  /** Without the letters of what its figures rest on. */
  const printed = () =>
    words.evaluate((one) =>
      [...one.childNodes]
        .filter(({ nodeName }) => nodeName !== "SUP")
        .map(({ textContent }) => textContent)
        .join("")
        .replaceAll("\u00a0", " "),
    );
  expect(await printed()).toContain("Last set 22.5 mm, came out gap 860 mm: ");
  expect(await printed()).toContain(`raise to ${await large()} mm at the large edge`);
  expect(await page.locator('[data-planned^="first-raise"]').allTextContents()).toContain(
    `${await large()}\u00a0mm`,
  );
  await add("30", "−40");
  expect(await page.getByRole("listitem").filter({ hasText: "set 30 mm: overlap 40 mm" }).count()).toBe(1);
  expect(await answer()).toContain("Stop: do not roll on with this blank");
  expect(await printed()).toContain("do not roll on with that blank, set it aside");
  expect(await printed()).toContain(`raise to ${await large()} mm at the large edge`);
  await page.getByRole("button", { name: "remove trial 3" }).click();
  await page.getByRole("button", { name: "remove trial 2" }).click();
  await page.getByRole("button", { name: "remove trial 1" }).click();
  expect(await page.locator('[data-trial="places"]').isVisible()).toBe(false);
  expect(await printed()).toMatch(
    /^With the plate moving raise to .*Bring it to 0; from there go in \d+ like steps/,
  );
});

it("leaves the table to carry over by hand out while trials tell the second raise, and puts it back", async () => {
  const table = page.locator('[data-table="second-raise"] tr');
  const cells = () => table.evaluateAll((rows) => rows.map(({ textContent }) => textContent.trim()));
  const before = await cells();
  expect(before.at(-1)).toContain("last raise ______ − table ______");
  await page.getByLabel("What came out").selectOption("closed");
  await add("22", "72");
  expect(await page.locator('[data-words="second-raise"]').textContent()).toMatch(
    /^By this part's own trials/,
  );
  expect(await table.count()).toBe(0);
  await page.getByRole("button", { name: "remove trial 1" }).click();
  expect((await cells()).map((row) => row.replace(/\s+/g, ""))).toEqual(
    before.map((row) => row.replace(/\s+/g, "")),
  );
  expect(
    await table
      .first()
      .locator("th")
      .evaluate((one) => getComputedStyle(one).textAlign),
  ).toBe("left");
  await page.getByLabel("What came out").selectOption("gap");
});

it("takes the scale's reading at 0 off, keeps it for this part on this roll, and lists the raise", async () => {
  const zero = page.getByLabel(/Scale’s reading at 0/);
  const raise = page.locator('[data-trial="raise"]');
  await zero.fill("112");
  await page.reload();
  expect(await zero.inputValue()).toBe("112");
  await page.getByLabel(/Scale’s reading at the large edge/).fill("131");
  expect(await raise.textContent()).toBe(": raise 19 mm");
  await page.getByLabel("Measured").fill("980");
  await page.getByRole("button", { name: "Add trial" }).click();
  expect(await page.getByRole("listitem").filter({ hasText: "set 19 mm: gap 980 mm" }).count()).toBe(1);
  expect(await answer()).toBe(told("setting=19,gap=980"));
  await zero.fill("");
  expect(await raise.textContent()).toBe("");
  await add("131", "980");
  expect(await answer()).toMatch(
    /^Is that the scale's reading, 131 mm\? The raise is counted from the flat plate/,
  );
  await page.getByRole("button", { name: "remove trial 2" }).click();
  await page.getByRole("button", { name: "remove trial 1" }).click();
});

it("works where the browser keeps nothing, and says so", async () => {
  const other = await browser.newPage();
  await other.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new Error("forbidden");
      },
    });
  });
  await other.goto(site.url + PAGE);
  await other.getByLabel(/Raise at the large edge/).fill("19");
  await other.getByLabel("Measured").fill("980");
  await other.getByRole("button", { name: "Add trial" }).click();
  expect(await other.getByRole("alert").textContent()).toContain("keeps nothing");
  expect(await other.locator("[data-trial-form]").getByRole("status").textContent()).toContain("set ");
  await other.close();
});

it("keeps the trials of two windows together, and shows either what the other one did", async () => {
  const context = await browser.newContext();
  const windows = [await context.newPage(), await context.newPage()] as const;
  const [one, other] = windows;
  const list = (on: typeof page) => on.locator("[data-trial-form] li").allTextContents();
  const put = async (on: typeof page, setting: string, gap: string) => {
    await on.getByLabel(/Raise at the large edge/).fill(setting);
    await on.getByLabel("Measured").fill(gap);
    await on.getByRole("button", { name: "Add trial" }).click();
  };
  for (const each of windows) await each.goto(site.url + PAGE);
  await put(one, "19", "980");
  await expect.poll(() => list(other)).toHaveLength(1);
  expect(await other.getByRole("alert").textContent()).toContain("Another window");
  // Also where the word of the change has not come yet.
  await other.addInitScript(() => addEventListener("storage", (event) => event.stopImmediatePropagation()));
  await other.reload();
  await put(one, "22.5", "860");
  await one.getByRole("button", { name: "remove trial 1" }).click();
  expect(await list(other)).toEqual([expect.stringMatching(/set 19 mm/)]);
  await put(other, "25", "650");
  const all = [/set 22.5 mm: gap 860/, /set 25 mm: gap 650/].map((text): unknown =>
    expect.stringMatching(text),
  );
  for (const each of windows) await expect.poll(() => list(each)).toEqual(all);
  await context.close();
});

it("keeps what it cannot read or believe of the trials for a file, and goes on with the rest", async () => {
  const context = await browser.newContext();
  const one = await context.newPage();
  await one.goto(site.url + PAGE);
  await one.getByLabel(/Raise at the large edge/).fill("19");
  await one.getByLabel("Measured").fill("980");
  await one.getByRole("button", { name: "Add trial" }).click();
  await one.evaluate(() => {
    const [key, text] = Object.entries(localStorage as unknown as Record<string, string>).find(([name]) =>
      name.includes(" trials "),
    )!;
    localStorage.setItem(
      key,
      text.replace("[", '[{"settingMm":"what I wrote"},{"settingMm":19,"gapMm":98765432},'),
    );
  });
  await one.reload();
  const notice = one.locator("[data-set-aside]");
  await expect.poll(() => notice.textContent()).toContain("could not be read");
  expect(await one.locator("[data-trial-form] li").count()).toBe(1);
  const [saved] = await Promise.all([
    one.waitForEvent("download"),
    notice.getByRole("button", { name: "Save it as a file" }).click(),
  ]);
  const aside = readFileSync(await saved.path(), "utf8");
  expect(aside).toContain("what I wrote");
  expect(aside).toContain("98765432");
  await notice.getByRole("button", { name: "Throw it away" }).click();
  await one.reload();
  await one.locator("[data-trial-form] li").waitFor();
  expect(await notice.count()).toBe(0);
  await context.close();
});

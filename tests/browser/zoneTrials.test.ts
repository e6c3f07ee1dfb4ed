import { execFileSync } from "node:child_process";
import { expect, it } from "vitest";
import { onePage, page, site } from "./onePage.ts";

const PART = "overflow-shift";

onePage(`parts/${PART}/forming/index.html`);

/** The same question asked of the command, the file next to the part coming first. */
function told(...trials: readonly string[]): { taught: string; zones: { advice: string }[] } {
  const part = `demo-data/parts/${PART}.yaml`;
  const words = trials.flatMap((trial) => ["--trial", trial]);
  const shop = ["--shop", "demo-data/shop.yaml", "--machine", "Big roll"];
  const out = execFileSync("npm", ["run", "--silent", "develop", "--", part, ...shop, ...words], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "ignore"],
  });
  return JSON.parse(out) as ReturnType<typeof told>;
}

const form = () => page.locator("[data-trial-form]");
const lines = () => form().getByRole("status").locator("span").allTextContents();

it("starts from the file next to the part, and says what its trials taught the zone that has none", async () => {
  const { taught, zones } = told("file");
  expect(await lines()).toEqual([taught, ...zones.map(({ advice }) => advice)]);
  expect((await lines())[3]).toMatch(
    /no trial yet; by what zone 1 taught start at .*Set alike with its mirror, zone 1\./,
  );
});

it("takes a zone's depths under a straightedge, answers zone by zone and prints it", async () => {
  await form().getByLabel("Zone (plan angles)").selectOption("3");
  await form()
    .getByLabel(/Raise at the large edge/)
    .fill("74.4");
  await form()
    .getByLabel(/What came out/)
    .selectOption("depth");
  await form().getByLabel("Measured at the large end").fill("14.1");
  await form().getByLabel("Measured at the small end").fill("19.6");
  await form().getByRole("button", { name: "Add trial" }).click();
  expect(await form().getByRole("alert").textContent()).toContain("length of the straightedge");
  await form()
    .getByLabel(/Length of the straightedge/)
    .fill("300");
  await form().getByRole("button", { name: "Add trial" }).click();
  const { taught, zones } = told("zone=3,setting=74.4,chord=300,largeDepth=14.1,smallDepth=19.6");
  expect(await lines()).toEqual([taught, ...zones.map(({ advice }) => advice)]);
  expect(await page.locator('[data-words="first-raise"]').textContent()).toMatch(
    /within \d+\u00a0% to \d+\u00a0%: set 78\.6\u00a0mm/,
  );
  // Zone 3 has a trial in its window now: its second pass goes by that, and the table of settings says so.
  const setting = (zone: number) => page.locator(`[data-setting="second-raise ${zone}"]`).textContent();
  expect(await setting(3)).toMatch(/^second pass, closed: overruled, step \d+$/);
  expect(await setting(2)).toBe("second pass, closed");
  const boxes = await page.locator('[data-boxes="first-raise"] li').allTextContents();
  // Zones 1 and 3 mirror each other: one setting, one row of both bearings and the large edge.
  expect(boxes).toHaveLength(6);
  expect(boxes[0]!.trim()).toMatch(/^zones 1 and 3, drop end: at 0\+ [\d.]+\u00a0mm =$/);
  expect(boxes[2]!.trim()).toMatch(/^large edge: [\d.]+\u00a0mm$/);
});

it("tells a zone measured at one end only, and keeps nothing of it", async () => {
  const before = await form().getByRole("listitem").count();
  await form().getByLabel("Zone (plan angles)").selectOption("1");
  await form()
    .getByLabel(/What came out/)
    .selectOption("radius");
  await form()
    .getByLabel(/Raise at the large edge/)
    .fill("70");
  await form().getByLabel("Measured at the large end").fill("900");
  await form().getByRole("button", { name: "Add trial" }).click();
  expect(await form().getByRole("alert").textContent()).toContain("measured at one end only");
  expect(await form().getByRole("listitem").count()).toBe(before);
});

it("gives the bench of the part what the form kept, and says when it holds no longer", async () => {
  await page.goto(`${site.url}parts/${PART}/index.html`);
  await page.getByRole("button", { name: "Change this part here" }).click();
  // Steps come to whoever goes to them.
  await page
    .getByRole("navigation", { name: "Sections of the bench" })
    .getByRole("link", { name: "First pass", exact: true })
    .click();
  await page.getByText("By this part's own trials, which overrule the plan's start").first().waitFor();
  await page.getByLabel("Plate thickness, mm").fill("5");
  await page
    .getByText(/3 trials of this part on Big roll no longer hold, for the plate is another/)
    .waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByText("By this part's own trials, which overrule the plan's start").first().waitFor();
});

import { expect, it } from "vitest";
import { freshPages, page, site } from "./freshPage.ts";

freshPages();

/** The bench in the place of a demo part's sheets. */
async function openPart(name: string, on = page): Promise<void> {
  await on.goto(`${site.url}parts/${name}/`);
  await on.locator(".bench-ask button").click();
  await on.locator(".bench .machine-choice").waitFor();
}
const title = (step: string) => page.locator(".bench .steps > li strong", { hasText: step });

it("shows the plan of the machine that is chosen, and still does when the page is loaded anew", async () => {
  await openPart("sand-trap-cone");
  const radio = (name: string) => page.locator(".machine-choice").getByLabel(name, { exact: true });
  expect(await page.locator(".machine-choice li").count()).toBe(3);
  expect(await page.locator(".machine-choice input").count()).toBe(2);
  expect(await radio("Big roll").isChecked()).toBe(true);
  expect(await page.locator(".machine-choice li", { hasText: "Small roll" }).textContent()).toMatch(
    /Does not take it: .*\d/,
  );
  // What stands far down is loaded for whoever is at work.
  await page.locator(".bench-form input").first().focus();
  await title("Align").first().waitFor();
  await expect.poll(() => page.locator(".bench .settings").count()).toBe(1);
  await radio("Brake").check();
  await expect.poll(() => page.locator(".bench .settings").count()).toBe(0);
  expect(await page.locator(".bench-judged h2", { hasText: "Bend lines" }).count()).toBe(1);
  expect(await page.locator(".bench .checks").textContent()).toContain("Die opening");
  expect(await page.locator(".machine-choice [role=status]").textContent()).toMatch(/those of Brake/);
  await openPart("sand-trap-cone");
  expect(await radio("Brake").isChecked()).toBe(true);
  // The part itself is as its file says.
  expect(await page.locator(".bench > .care", { hasText: "changed here" }).count()).toBe(0);
});

it("prints the sheets of the machine that is chosen, and those of the binder once it is the first choice again", async () => {
  await openPart("sand-trap-cone");
  await page.locator(".machine-choice").getByLabel("Brake", { exact: true }).check();
  await page.waitForLoadState("networkidle");
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const printed = page.locator(".bench-print");
  // They come with the first print.
  await expect.poll(() => printed.locator(".sheet").count()).toBe(2);
  expect(await printed.textContent()).toMatch(/For Brake, chosen at the bench; the first choice is Big roll/);
  expect(await printed.textContent()).toMatch(/on Brake/);
  // What stands on the work sheet alone is named, and where it is.
  expect(await printed.textContent()).toMatch(
    /Brake: bent in \d+ hits\.\s+Bend list, .*\s+sand-trap-cone-work-sheet\.pdf, made at the bench/,
  );
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await page.emulateMedia({ media: null });
  await page.locator(".machine-choice").getByLabel("Big roll", { exact: true }).check();
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await expect.poll(() => printed.count()).toBe(0);
  expect(await page.locator(".sheet .sheet, [data-bench] .sheet").first().isVisible()).toBe(true);
});

it("goes to the first choice while the chosen machine does not take what is typed, and says so", async () => {
  await openPart("dust-main-sleeve");
  await page.locator(".machine-choice").getByLabel("Brake", { exact: true }).check();
  const height = page.locator(".bench-form").getByLabel(/^Height between/);
  const before = await height.inputValue();
  await height.fill("3500");
  await expect
    .poll(() => page.locator(".machine-choice [role=status]").textContent())
    .toMatch(/Brake, which was chosen, does not take the part/);
  await height.fill(before);
  await expect
    .poll(() => page.locator(".machine-choice [role=status]").textContent())
    .toMatch(/those of Brake/);
});

it("has a work sheet for every machine that takes a part, one click from the part's page", async () => {
  await page.goto(`${site.url}parts/dust-main-sleeve/`);
  const links = page.locator(".machines a");
  expect(await links.count()).toBe(2);
  await links.last().click();
  await page.waitForURL(/forming\/brake\//);
  expect(await page.locator("main").textContent()).toMatch(/Brake takes this part too/);
  expect(await page.locator("main").textContent()).toMatch(/first choice is\s*Small roll/);
});

it("moves the part as a dot over what the chosen machine takes as its thickness is typed, and says the same in words", async () => {
  await openPart("sand-trap-cone");
  const chart = page.locator(".capacity-chart");
  const place = () =>
    chart.locator("text", { hasText: "this part" }).evaluate((one) => {
      const { e, f } = (one as SVGTextElement).getCTM()!;
      return [e, f] as const;
    });
  await chart.locator("svg").waitFor();
  const before = await place();
  expect(await chart.textContent()).toMatch(
    /This part, 0\.25\sin\s\S+ thick with 32\.72\sin\s\S+ of slant: goes\./,
  );
  await page.locator(".bench-form").getByLabel("Plate thickness, in", { exact: true }).fill("3/16");
  await expect.poll(() => chart.textContent()).toMatch(/This part, 0\.188\sin\s\S+ thick/);
  const [x, y] = await place();
  expect(Math.abs(x - before[0])).toBeLessThan(60);
  expect(y).toBeGreaterThan(before[1] + 3);
  await page.locator(".machine-choice").getByLabel("Brake", { exact: true }).check();
  await expect.poll(() => chart.locator("h3").textContent()).toBe("Where it lies on what Brake takes");
  expect(await chart.textContent()).toMatch(/with bend lines up to/);
});

it("keeps the dies of a brake when the shop's units are changed, and opens the fold that a mistake is in", async () => {
  await openPart("sand-trap-cone");
  await page.getByRole("button", { name: /^Look at the shop/ }).click();
  const shop = page.locator(".bench-shop").first();
  await shop.getByLabel("Units of its sizes", { exact: true }).selectOption("in");
  await shop.locator("summary", { hasText: "Brake" }).click();
  const dies = shop.getByLabel(/^Die openings, with commas/);
  expect(await dies.inputValue()).toMatch(/^12 mm, 16 mm, /);
  await dies.fill("12, 1/2");
  await expect
    .poll(() => shop.locator(".bench-field.wrong .problem").first().textContent())
    .toMatch(/12 would be 12 inches; write 12 mm/);
  await dies.fill("12 mm, 1/2");
  await expect.poll(() => shop.locator(".bench-field.wrong").count()).toBe(0);
  const fold = page.locator(".bench-form > details");
  expect(await fold.getAttribute("open")).toBeNull();
  await fold.locator("summary").click();
  const pieces = fold.getByLabel("Pieces round the part", { exact: true });
  await pieces.fill("0");
  await fold.locator(".problem").first().waitFor();
  await openPart("sand-trap-cone");
  await fold.locator(".problem").first().waitFor();
  expect(await fold.getAttribute("open")).not.toBeNull();
  expect(await fold.locator("summary").textContent()).toMatch(/\(.*0 pieces/);
});

it("asks the last shop that was right after the page is loaded anew with a mistake in it", async () => {
  await openPart("sand-trap-cone");
  const openShop = () => page.getByRole("button", { name: /^Look at the shop/ }).click();
  const shop = page.locator(".bench-shop").first();
  const name = () =>
    shop.locator("details", { hasText: "Working width" }).first().getByLabel("Name", { exact: true });
  const width = () =>
    shop
      .locator("details", { hasText: "Working width" })
      .first()
      .getByLabel(/^Working width/);
  const machines = () => page.locator(".machine-choice li").allTextContents();
  const told = () => page.locator(".bench > .care", { hasText: "machines and plates" }).textContent();
  await openShop();
  await shop.locator("summary").filter({ hasText: /roll/i }).first().click();
  await width().fill("wide");
  await shop.locator(".bench-field.wrong").first().waitFor();
  // Nothing was right yet but the binder's own.
  const own = await machines();
  await openPart("sand-trap-cone");
  expect(await machines()).toEqual(own);
  await expect.poll(told).toMatch(/By the binder’s own machines and plates, for/);
  await openShop();
  await shop.locator("summary").filter({ hasText: /roll/i }).first().click();
  await width().fill("2100 mm");
  await expect.poll(() => shop.locator(".bench-field.wrong").count()).toBe(0);
  await name().fill("Third roll");
  await expect.poll(async () => (await machines()).join()).toContain("Third roll");
  await width().fill("wide");
  await shop.locator(".bench-field.wrong").first().waitFor();
  await openPart("sand-trap-cone");
  expect((await machines()).join()).toContain("Third roll");
  await expect.poll(told).toMatch(/when they were last right/);
  await openShop();
  expect(await shop.locator(".problem").first().textContent()).toMatch(/last shop that was right/);
});

it("says at the machine's own field what its change did to the part, and where something else is wrong by it", async () => {
  await openPart("sand-trap-cone");
  await page.getByRole("button", { name: /^Look at the shop/ }).click();
  const shop = page.locator(".bench-shop").first();
  const roll = shop.locator("details", { hasText: "Big roll" }).first();
  await roll.locator("summary").click();
  const rated = roll.getByLabel(/^Cone rating, thickness/);
  const saidAt = (field: typeof rated) =>
    field.locator("xpath=ancestor::div[contains(@class, 'bench-field')][1]").locator(".bench-said");
  const before = await rated.inputValue();
  await rated.fill("2 mm");
  await expect
    .poll(() => saidAt(rated).locator(".care.fails").first().textContent())
    .toMatch(/^With this Big roll does not take the part\. /);
  // At no other field of the shop, and gone with its cause.
  expect(await shop.locator(".care.fails").count()).toBe(await saidAt(rated).locator(".care.fails").count());
  await rated.fill(before);
  await expect.poll(() => shop.locator(".care.fails").count()).toBe(0);
  // The slide is measured under plate of this thickness: the mistake is told at the slide.
  const full = roll.getByLabel(/^Rated thickness at full width/);
  await full.fill("2 mm");
  await expect
    .poll(() => saidAt(full).textContent())
    .toMatch(/The checks do not follow yet: “Slide, .*” of Big roll /);
  await roll.locator(".bench-field.wrong").first().waitFor();
});

it("says what to do where the last machine was taken off the list, and is as before with the binder's own shop", async () => {
  await openPart("sand-trap-cone");
  await page.getByRole("button", { name: /^Look at the shop/ }).click();
  const shop = page.locator(".bench-shop").first();
  const machines = shop.locator(".bench-shop > details");
  // The list comes with the form, a moment after the button.
  await machines.first().waitFor();
  for (let left = await machines.count(); left > 0; left--) {
    const one = machines.first();
    if ((await one.getAttribute("open")) === null) await one.locator("summary").click();
    await one.getByRole("button", { name: /^Remove / }).click();
    await expect.poll(() => machines.count()).toBe(left - 1);
  }
  const care = page.locator(".bench > .care", { hasText: "No machine is listed" });
  // Each removal is judged before the next is seen to be.
  await care.waitFor();
  expect(await care.textContent()).toMatch(/Add one below, .*or go\s+back to the binder’s own shop/s);
  expect(await shop.locator(".problem").count()).toBe(0);
  const words = await page.locator(".bench").textContent();
  expect(words).toMatch(/No machine is listed, so only the part itself was checked/);
  expect(words).not.toMatch(/file was given|hyphen|square brackets/);
  await care.getByRole("button").click();
  await page.locator(".bench .machine-choice").waitFor();
  expect(await care.count()).toBe(0);
});

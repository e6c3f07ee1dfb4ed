import { expect, it } from "vitest";
import { freshPages, page, site } from "./freshPage.ts";
import { openWithHand } from "./hand.ts";

freshPages();

const openShape = async (shape: string) => {
  await openWithHand(page, `${site.url}shapes/${shape}/`);
  await page.locator(".bench .machine-choice").waitFor();
};
const ask = (name: string | RegExp) => page.getByRole("button", { name });
const answer = (of: string) => page.getByRole("status", { name: new RegExp(`^${of}: `) });

/** The tables stand far down, and come with the first hand at the bench. */
const atWork = () => page.locator(".look").first().focus();

it("answers for a column of the marking table, line by line, and follows what is typed", async () => {
  await openShape("eccentric-cone");
  await atWork();
  await ask("How was it worked out: line length, true?").click();
  const said = answer("Marking table");
  await said.waitFor();
  expect(await said.textContent()).toMatch(
    /Line length, true, Line 1\..*√\([\d.]+² \+ [\d.]+²\) = [\d.]+\smm.*Basis:/,
  );
  const before = await said.textContent();
  await page.getByLabel("Line length, true, of").selectOption("Line 4");
  await expect.poll(() => said.textContent()).toMatch(/Line 4\./);
  await page
    .locator(".bench-form")
    .getByLabel(/^Height between/)
    .fill("444");
  await expect.poll(() => said.textContent()).toMatch(/\+ 444\.0²/);
  expect(await said.textContent()).not.toBe(before);
  await ask("How was it worked out: line length, true?").click();
  expect(await said.count()).toBe(0);
});

it("answers for what all lines of a right cone have alike, for bend lines and for each row of the inspection", async () => {
  await openShape("right-cone");
  await atWork();
  await ask("How was it worked out: line length, in plan?").click();
  await answer("Marking table").waitFor();
  await page.locator(".machine-choice input").last().check();
  await ask("How was it worked out: Force?").click();
  expect(await answer("Bend lines").textContent()).toMatch(
    /1\.33 × \d+ × [\d.]+ × [\d.]+² \/ [\d.]+ \/ 1000 = [\d.]+\skN/,
  );
  const rows = page.locator(".bench .inspection tbody tr");
  expect(await rows.locator(".ask").count()).toBe(await rows.count());
  await ask(/^How was it worked out: height at four places/).click();
  expect(await answer("Inspection").textContent()).toMatch(/Square from the plane/);
});

it("says what every field of the shop is, and lays blanks of the shop that is typed as far apart as it says", async () => {
  await openShape("right-cone");
  await page.getByRole("button", { name: "Look at the shop’s machines and change them" }).click();
  const form = page.locator(".bench-shop").first();
  await form.waitFor();
  await form
    .locator("details")
    .evaluateAll((all) => all.forEach((one) => ((one as HTMLDetailsElement).open = true)));
  const fields = form.locator(".bench-field");
  expect(await fields.count()).toBeGreaterThan(30);
  expect(await fields.locator(".ask").count()).toBe(await fields.count());
  await form.getByRole("button", { name: "What is this: Units of its sizes?" }).click();
  await expect.poll(() => form.textContent()).toContain("How numbers without a unit are read");
  await form.getByLabel(/^Between two blanks/).fill("14");
  await page.reload();
  await page.locator(".bench .machine-choice").waitFor();
  await page.getByRole("button", { name: "Look at the shop’s machines and change them" }).click();
  await page.locator(".bench-shop summary", { hasText: "Cutting" }).click();
  expect(await page.getByLabel(/^Between two blanks/).inputValue()).toBe("14");
});

it("answers for a check with this part's numbers, and for the figures under the pattern", async () => {
  await openShape("eccentric-cone");
  await ask("How was it worked out: Thickness times slant?").click();
  await answer("Checks").waitFor();
  expect(await answer("Checks").textContent()).toMatch(
    /This part: 3 × [\d.]+ = [\d.]+\smm²; Allowed: .* = [\d.]+\smm²; Left: 1 − .* = [\d.]+\s%/,
  );
  // Beside the check, not below them all.
  const check = page.locator(".bench .checks > li", { hasText: "Thickness times slant" });
  expect(await check.locator(".bench-answer").count()).toBe(1);
  await ask("How was it worked out: length of cutting?").click();
  await answer("Pattern").waitFor();
  expect(await answer("Pattern").textContent()).toMatch(
    /Length of cutting.* [\d.]+ \+ [\d.]+ \+ .* = [\d.]+\smm/,
  );
});

it("answers for every setting of the bending roll, and for where the part lies on what the machine takes", async () => {
  await page.goto(`${site.url}parts/overflow-shift/`);
  await page.locator(".bench-ask button").click();
  await page.locator(".bench .machine-choice").waitFor();
  await ask("How was it worked out: where it lies on the chart?").click();
  await answer("What the machine takes").waitFor();
  expect(await answer("What the machine takes").textContent()).toMatch(
    /Thickness times slant, at most: .* = [\d.]+\smm².*This part: .* = [\d.]+\smm².*So it lies where the chart says/s,
  );
  await atWork();
  await page.locator("table.settings").waitFor();
  // Each head of the table stands over the figures that it answers for.
  for (const name of ["Zone", "Raise, millimetres", "Large end asks", "Small end asks"])
    await ask(`How was it worked out: ${name}?`).click();
  const said = answer("Settings of the bending roll");
  await expect.poll(() => said.textContent()).toMatch(/Low: .*High: .*Best: .* = [\d.]+\smm/s);
  await page.getByLabel("Small end asks, of").selectOption("zone 2, second pass, closed");
  // Five moments a zone; before the figures of the small end stand the zone and those of the large end.
  const best = page.locator("table.settings tbody tr").nth(9).locator("td").nth(5);
  const shown = (await best.textContent()) ?? "";
  await expect.poll(() => said.textContent()).toMatch(new RegExp(`Best: .* = ${shown}\\smm`));
  await ask("How was it worked out: At the bearings?").click();
  await expect.poll(() => said.textContent()).toMatch(/Beyond the large edge: .* = -?[\d.]+\smm/);
});

it("answers for the closure table and for springback", async () => {
  await openShape("right-cone");
  await atWork();
  await ask("How was it worked out: large end, mm?").click();
  await page.getByLabel("Large end, of").selectOption({ index: 1 });
  const gap = (await page.locator("table.closure tbody tr").nth(1).locator("td").nth(3).textContent()) ?? "";
  await expect
    .poll(() => answer("Closure table").textContent())
    .toMatch(new RegExp(`Gap: √\\(\\(.* = ${gap}\\smm`));
  await ask("How was it worked out: what it is bent to?").click();
  await expect.poll(() => answer("Springback").textContent()).toMatch(/Radius under load: .* = [\d.]+\smm/);
});

it("answers for figures within the steps where they stand, by the answers of the tables", async () => {
  await openShape("right-cone");
  await atWork();
  await ask("How was it worked out: Raise for the first pass, start at the large edge?").click();
  const said = answer("Raise for the first pass");
  await said.waitFor();
  expect(await said.textContent()).toMatch(
    /first pass, first trial\..*Large end: [\d.]+ \/ [\d.]+ = [\d.]+\smm/s,
  );
  // Beside the step, not at the table.
  const step = page.locator(".bench .steps > li", { hasText: "Raise for the first pass." });
  expect(await step.getByRole("status").count()).toBe(1);
  await ask(/^How was it worked out: Close, template radius inside, large end/).click();
  expect(await answer("Close").textContent()).toMatch(/Template square: .* = [\d.]+\smm/s);
  await ask("How was it worked out: Set the cone stop, reach past the stop when closed?").click();
  expect(await answer("Set the cone stop").textContent()).toMatch(/Closed: [\d.]+ \/ 2 × .* = [\d.]+\smm/s);
  await page.locator(".machine-choice input").last().check();
  await ask("How was it worked out: Bend line by line, bend angle of each line?").click();
  expect(await answer("Bend line by line").textContent()).toMatch(/Stretch 1 turns/);
});

it("has fractions of a tape in the marking table of a part in inches, and both numberings of a brake's lines", async () => {
  await page.goto(`${site.url}parts/sand-trap-cone/`);
  await page.locator(".bench-ask button").click();
  await page.locator(".bench .machine-choice").waitFor();
  await page.locator(".bench-form input").first().focus();
  const marking = page.locator(".bench .marking");
  await marking.waitFor();
  const cells = await marking.locator("tbody td").allTextContents();
  const taped = cells.filter((text) =>
    /^-?\d+\.\d{3}\s\(-?\d+(?:-\d+\/\d+)?\)$|^-?\d+\.\d{3}\s\(-?\d+\/\d+\)$/.test(text.trim()),
  );
  expect(taped.length).toBeGreaterThan(20);
  expect(await marking.locator("> p").first().textContent()).toMatch(
    /In brackets: what a tape reads, to the nearest 1\/32/,
  );
  await page.locator(".machine-choice").getByLabel("Brake", { exact: true }).check();
  await marking.getByText("Bend lines up to the next").first().waitFor();
  const first = page.locator(".bench .lines tbody tr").first();
  expect((await first.locator("td").first().textContent())?.trim()).toMatch(/^1(?:–2)?$/);
  expect((await marking.locator("tbody tr").first().locator("td").first().textContent())?.trim()).toMatch(
    /^1\b/,
  );
});

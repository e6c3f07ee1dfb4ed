import { expect, it } from "vitest";
import { linkOf } from "../../src/site/bench/link.ts";
import { freshPages, page, site } from "./freshPage.ts";
import { openWithHand } from "./hand.ts";

freshPages();

const height = () => page.locator(".bench-form").getByLabel(/^Height between/);
const pagesOnPaper = async (format: "A4" | "Letter"): Promise<number> =>
  (await page.pdf({ format })).toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
/** What would be printed, as long as the window prints. */
async function printed(): Promise<string> {
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  expect(await page.locator(".bench-print .sheet").count()).toBe(2);
  const text = await page.locator(".bench-print").innerText();
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await page.emulateMedia({ media: null });
  return text;
}
/** The sheets are loaded once somebody is at work, and follow what is typed. */
const sheetsReady = async (): Promise<void> => {
  await page.locator(".bench .checks").waitFor();
  await page.waitForLoadState("networkidle");
};

it.each(["right-cone", "eccentric-cone", "square-to-round"])(
  "prints the last good sheets of a %s with a remark while a size is wrong, on two pages",
  async (shape) => {
    await page.goto(`${site.url}shapes/${shape}/`);
    await height().fill("345");
    for (const wrong of ["abc", "-5", ""]) {
      await height().fill(wrong);
      await page.locator(".bench-form .problem").first().waitFor();
      await sheetsReady();
      const text = await printed();
      expect(text, wrong).toMatch(/NOT what is typed/);
      expect(text, wrong).toContain("345");
    }
    for (const format of ["A4", "Letter"] as const) expect(await pagesOnPaper(format), format).toBe(2);
  },
);

it.each([
  ["3/16", { diameter: "20-3/4", offset: ["6", "0"] }],
  ["1/2", { diameter: "20", offset: ["6", "0"] }],
  ["10 ga", { diameter: "20", offset: ["6", "0"] }],
  ["3/16", { diameter: "20-3/4", offset: ["6", "4-1/2"] }],
  [
    "3/16",
    { diameter: "20-3/4", offset: ["6", "0"] },
    "Grind welds flush inside. Lugs at 90 and 270 degrees.",
  ],
] as const)(
  "prints an eccentric cone in inches on two pages, %s thick with its small end %j",
  async (thickness, { diameter, offset }, notes?: string) => {
    const part = {
      shape: "eccentric-cone",
      title: "Offset cone",
      units: "in",
      material: "a36",
      thickness,
      largeEnd: { diameter: `4'-2"`, measured: "outside" },
      smallEnd: { diameter, offset, measured: "inside" },
      height: `3'-1 1/2"`,
      seam: { at: "0", joint: "butt", gap: "3/32" },
      quantity: "4",
      ...(notes !== undefined && { notes, tolerance: "B" }),
    };
    await page.goto(`${site.url}shapes/eccentric-cone/${linkOf({ name: "offset-cone", part })}`);
    await sheetsReady();
    // Six key figures with fractions and millimetres under them may take a row or two.
    for (const format of ["A4", "Letter"] as const) expect(await pagesOnPaper(format), format).toBe(2);
  },
);

it("prints the last good sheets of a part's own page as well, and after the page is loaded anew", async () => {
  await page.goto(`${site.url}parts/feed-spout-reducer/`);
  await page.getByRole("button", { name: "Change this part here" }).click();
  await height().fill("abc");
  await page.locator(".bench-form .problem").first().waitFor();
  await sheetsReady();
  expect(await printed()).toMatch(/NOT what is typed/);
  expect(await pagesOnPaper("A4")).toBe(2);
  await page.reload();
  await page.getByRole("button", { name: "Go on with your changes" }).click();
  await page.locator(".bench-form .problem").first().waitFor();
  await sheetsReady();
  expect(await printed()).toMatch(/NOT what is typed/);
});

it("is named by its file where that is of another shape, and goes back to the example, which can be undone", async () => {
  await page.goto(`${site.url}shapes/right-cone/`);
  await page.locator("input[data-open]").first().setInputFiles("demo-data/parts/feed-spout-reducer.yaml");
  await page.waitForURL(/shapes\/eccentric-cone/);
  const said = () => page.locator(".bench-bar [role=status]").textContent();
  await expect.poll(said).toMatch(/^feed-spout-reducer\.yaml is on the bench/);
  const opened = await height().inputValue();
  await page.getByRole("button", { name: "Back to the example" }).click();
  await expect.poll(() => height().inputValue()).toBe("240");
  expect(opened).not.toBe("240");
  expect(await page.getByRole("button", { name: "Back to the example" }).isDisabled()).toBe(true);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  expect(await height().inputValue()).toBe(opened);
});

it.each([
  [390, "2"],
  [390, "4"],
  [320, "2"],
  [320, "4"],
])("is no wider than a telephone of %d px with %s pieces that differ", async (width, pieces) => {
  await page.setViewportSize({ width, height: 844 });
  await page.goto(`${site.url}shapes/eccentric-cone/`);
  await height().fill("300");
  await page.getByText("Seam, pieces, quantity and the rest").click();
  await page.getByLabel("Pieces round the part", { exact: true }).fill(pieces);
  await expect.poll(() => page.locator(".low-pattern svg").count()).toBe(Number(pieces));
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  const strip = (await page.locator(".low-pattern").boundingBox())!;
  expect(strip.height).toBeLessThan(844 / 4);
});

it("saves the tray with the first click after the job's title was typed", async () => {
  await page.goto(`${site.url}shapes/right-cone/`);
  // Told at the bar: it must not move to the tray while the hand is on its way.
  await page.getByRole("button", { name: "Put on the tray" }).click();
  await page.getByLabel("Title of the job").fill("Hoppers");
  const save = page.getByRole("button", { name: "Save the tray as a job (.zip)" });
  await save.scrollIntoViewIfNeeded();
  const { x, y, width, height: high } = (await save.boundingBox())!;
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.mouse.click(x + width / 2, y + high / 2),
  ]);
  expect(file.suggestedFilename()).toBe("hoppers.zip");
});

it("goes to the next gauge with an arrow key", async () => {
  await page.goto(`${site.url}shapes/right-cone/`);
  const thickness = page.locator(".bench-form").getByLabel("Plate thickness, mm", { exact: true });
  await thickness.fill("10 ga");
  await thickness.press("ArrowUp");
  await expect.poll(() => thickness.inputValue()).toBe("9 ga");
  await thickness.press("ArrowDown");
  await expect.poll(() => thickness.inputValue()).toBe("10 ga");
});

it("keeps feet and inches with the arrow keys, and goes ten steps with the page keys", async () => {
  await page.goto(`${site.url}shapes/right-cone/`);
  const height = page.locator(".bench-form").getByLabel("Height between the ends, mm", { exact: true });
  await height.fill(`3'-6"`);
  await height.press("ArrowUp");
  await expect.poll(() => height.inputValue()).toBe(`3'-6-1/8"`);
  await height.press("PageDown");
  await expect.poll(() => height.inputValue()).toBe(`3'-4-7/8"`);
  // With Shift they mark text, as in every field.
  await height.press("Shift+ArrowUp");
  expect(await height.inputValue()).toBe(`3'-4-7/8"`);
});

it("says where something is wrong at the field that was typed in too", async () => {
  await page.goto(`${site.url}shapes/right-cone/`);
  const form = page.locator(".bench-form");
  await form.getByLabel("Diameter, mm", { exact: true }).nth(1).fill("5000");
  const said = form.getByText("Not drawn yet: something is wrong at");
  await said.waitFor();
  expect(await said.textContent()).toContain("“Large end, below”, “Diameter”");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => said.count()).toBe(0);
});

it("says at the verdict that it is that of the last whole sizes, for as long as a field is half typed", async () => {
  await openWithHand(page, `${site.url}shapes/right-cone/`);
  await page.locator(".bench .machine-choice").waitFor();
  const verdict = page.locator(".bench section[aria-labelledby=will-it-go]");
  await verdict.locator(".checks").waitFor();
  const height = page.locator(".bench-form").getByLabel(/^Height between/);
  const before = await height.inputValue();
  const said = verdict.locator(".section-head p");
  expect(await said.count()).toBe(0);
  await height.fill("12 m of");
  await expect
    .poll(() => said.allTextContents())
    .toEqual(["Of the last sizes that could be laid out, not of what is typed now."]);
  await height.fill(before);
  await expect.poll(() => said.count()).toBe(0);
});

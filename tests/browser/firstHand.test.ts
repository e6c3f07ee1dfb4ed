import { expect, it } from "vitest";
import { freshPages, page, site } from "./freshPage.ts";
import { layHand } from "./hand.ts";
import { settled } from "./settled.ts";

freshPages();

const SHAPES = ["right-cone", "eccentric-cone", "square-to-round"] as const;
/** Opens a shape's page as nobody has touched it. */
async function open(shape: string, size = { width: 1280, height: 800 }): Promise<void> {
  await page.setViewportSize(size);
  await page.goto(`${site.url}shapes/${shape}/`);
  await page.locator(".bench .checks").waitFor();
  await page.waitForLoadState("networkidle");
}
/** All that comes with the first hand is there. */
async function live(): Promise<void> {
  await page.locator(".bench .machine-choice").waitFor();
  await page.getByRole("group", { name: /^Views/ }).waitFor();
  await page.locator(".bench #take-away").waitFor();
  await page.waitForLoadState("networkidle");
}
/** Whether it goes, in words: the whole, then check by check. Questions that can be asked at a live one are left out. */
const verdict = () =>
  page.locator(".bench section[aria-labelledby=will-it-go]").evaluate((section) => {
    const said = section.cloneNode(true) as Element;
    for (const ask of said.querySelectorAll("button")) ask.remove();
    return [...said.querySelectorAll(":scope > p, .checks > li")].map((one) =>
      one.textContent.replaceAll(/\s+/g, " ").trim(),
    );
  });
const fields = () =>
  page
    .locator(".bench :is(input, select, summary, .bench-form button, .bench-bar button)")
    .evaluateAll((all) =>
      all
        .filter((one) => one.closest(".bench-form, .bench-bar"))
        .map((one) => {
          const { x, y, width, height } = one.getBoundingClientRect();
          return [x, y, width, height].map((px) => px.toFixed(1)).join();
        }),
    );
/** Ids that more than one thing on the page has, and headings of the second level that stand there twice. */
const doubled = async (): Promise<string[]> => {
  const ids = await page.locator("[id]").evaluateAll((all) => all.map(({ id }) => id));
  const heads = await page.locator("h2").allTextContents();
  return [ids, heads].flatMap((all) => all.filter((one, i) => all.indexOf(one) < i));
};

it.each(SHAPES)("says of a %s before a hand is laid on it what it says afterwards", async (shape) => {
  await open(shape);
  expect(await page.locator(".bench .machine-choice").count()).toBe(0);
  expect(await doubled()).toEqual([]);
  const published = await verdict();
  expect(published.length).toBeGreaterThan(5);
  await layHand(page);
  await live();
  expect(await verdict()).toEqual(published);
  expect(await doubled()).toEqual([]);
  // What stood in is gone.
  expect(await page.locator(".bench .views, .bench-room").count()).toBe(0);
});

it.each(SHAPES.flatMap((shape) => [1280, 800, 390].map((width) => [shape, width] as const)))(
  "moves no field of a %s at %d px when the live parts come",
  async (shape, width) => {
    await open(shape, { width, height: 844 });
    const before = await fields();
    const low = page.locator(".low-pattern svg");
    expect(await low.count()).toBe(width < 1024 ? 1 : 0);
    await layHand(page);
    await live();
    await settled(page);
    expect(await fields()).toEqual(before);
    expect(before.length).toBeGreaterThan(10);
  },
);

it("draws what the first key types, with no other hand before it", async () => {
  await open("right-cone");
  // As somebody does who comes by the keyboard alone.
  for (let i = 0; i < 60; i++) {
    const label = await page.evaluate(
      () => (document.activeElement as HTMLInputElement).labels?.[0]?.textContent,
    );
    if (label?.includes("Height between")) break;
    await page.keyboard.press("Tab");
  }
  await page.keyboard.type("345");
  await page.getByRole("group", { name: /^Pattern/ }).waitFor();
  await live();
  await settled(page);
  expect(await page.getByRole("group", { name: /^Views/ }).textContent()).toContain("345");
});

it("waits for no hand where somebody was at work before, or comes to a place on the bench", async () => {
  await open("right-cone");
  await page.getByLabel(/^Height between/).fill("345");
  await live();
  await page.reload();
  await live();
  expect(await page.getByLabel(/^Height between/).inputValue()).toBe("345");
  await page.evaluate(() => localStorage.clear());
  await page.evaluate(() => sessionStorage.clear());
  await page.goto(`${site.url}shapes/eccentric-cone/#blank`);
  await live();
});

it.each([
  ["Will it go?", "will-it-go"],
  ["Blank", "blank"],
  ["Set-up", "set-up"],
  ["Take away", "take-away"],
])("leads to “%s” with the first hand on the page", async (name, id) => {
  await open("right-cone");
  const way = page
    .getByRole("navigation", { name: "Sections of the bench" })
    .getByRole("link", { name, exact: true });
  await way.evaluate((one: HTMLElement) => one.click());
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe(id);
  await live();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe(id);
});

it("keeps the blank where it is on the screen for whoever has read on to it", async () => {
  await open("right-cone", { width: 390, height: 844 });
  // To scroll is to lay a hand on the page.
  await page.locator(".bench #blank").evaluate((blank) => blank.scrollIntoView());
  const top = () => page.locator(".bench #blank").evaluate((blank) => blank.getBoundingClientRect().top);
  const before = await top();
  await live();
  await page.locator(".blank-tools").waitFor();
  expect(Math.abs((await top()) - before)).toBeLessThan(50);
});

it("goes to the tray, and puts the part on it, with the first hand on the page", async () => {
  await open("right-cone");
  await page.getByRole("link", { name: "Tray: 0" }).evaluate((one: HTMLElement) => one.click());
  await expect.poll(() => page.evaluate(() => location.hash)).toBe("#bench-tray");
  await live();
  expect(await page.locator("#bench-tray").count()).toBe(1);
  expect(await page.locator(".bench-bar [role=status]").textContent()).toBe("");
  await page.evaluate(() => history.replaceState(null, "", location.pathname));
  await open("right-cone");
  await page.getByRole("button", { name: "Put on the tray" }).evaluate((one: HTMLElement) => one.click());
  await page.getByRole("link", { name: "Tray: 1" }).waitFor();
});

it("keeps what was published, and says so, where live parts do not come", async () => {
  await open("right-cone");
  await page.route(/_astro\/(?:views|PartViews|judged|verdict|withReport|filing)\./, (route) =>
    route.abort(),
  );
  const published = await verdict();
  await layHand(page);
  for (const lacks of [
    /^Views cannot be drawn/,
    /^Whether it goes cannot be told/,
    /^Files cannot be opened/,
  ])
    await page.getByRole("alert").filter({ hasText: lacks }).waitFor();
  expect(await verdict()).toEqual(published);
  expect(await page.locator(".bench .views svg").count()).toBeGreaterThan(0);
  expect(await page.locator(".bench .patterns svg").count()).toBeGreaterThan(0);
  await page.waitForLoadState("networkidle");
});

it.each([1280, 390])(
  "chooses a line by the very first touch at %i px, on the drawing that was published",
  async (width) => {
    // So high that nobody has to scroll, which is a hand on the page too.
    await open("right-cone", { width, height: 4000 });
    const drawing = page.locator(".bench .views svg:visible").first();
    const number = drawing.locator("text.label-number").filter({ hasText: /^4$/ }).first();
    expect(await page.locator(".look").count()).toBe(0);
    const { x, y, ...size } = (await number.boundingBox())!;
    await page.mouse.click(x + size.width / 2, y + size.height / 2);
    await expect.poll(() => page.locator(".chosen-line strong").first().textContent()).toBe("Line 4");
  },
);

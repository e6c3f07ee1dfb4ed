import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { context, freshPages, page, site } from "./freshPage.ts";
import { openWithHand } from "./hand.ts";

freshPages();

const tab = (): Promise<Page> => context.newPage();

const said = (on = page) => on.locator(".bench-bar [role=status]");

it.each([
  ["#part", /cut off before the part itself/],
  ["#parking", /neither a part nor a place/],
  ["#%E0%A4%A", /changed on its way/],
])("says that %s behind the address is no part, and changes nothing", async (hash, why) => {
  await page.goto(`${site.url}shapes/right-cone/${hash}`);
  const height = page.locator(".bench-form").getByLabel(/^Height between/);
  await expect.poll(() => said().textContent()).toMatch(why);
  expect(await said().textContent()).toMatch(/Nothing was changed/);
  expect(await page.getByRole("button", { name: "Undo", exact: true }).isDisabled()).toBe(true);
  const before = await height.inputValue();
  await page.evaluate(() => (location.hash = "#bench-size"));
  await height.fill("345");
  await page.evaluate((rest) => (location.hash = rest), `${hash}x`.slice(0, -1));
  await expect.poll(() => said().textContent()).toMatch(why);
  expect(await height.inputValue()).toBe("345");
  expect(before).not.toBe("345");
});

it("says nothing of a link to a place on the page", async () => {
  await page.goto(`${site.url}shapes/right-cone/#will-it-go`);
  await page.locator(".bench .checks").waitFor();
  expect(await said().textContent()).toBe("");
});

it("says on loading that another tab typed last, and has its own one step back", async () => {
  const other = await tab();
  const height = (on: Page) => on.locator(".bench-form").getByLabel(/^Height between/);
  const open = (on: Page) => on.goto(`${site.url}shapes/right-cone/`);
  await open(page);
  await height(page).fill("250");
  await page.locator(".bench .checks").waitFor();
  await open(other);
  // A tab that is opened anew goes on with what is there, of which nobody need be told.
  await expect.poll(() => height(other).inputValue()).toBe("250");
  expect(await said(other).textContent()).toBe("");
  await height(other).fill("260");
  await expect.poll(() => said(page).textContent()).toMatch(/Another window/);
  await page.reload();
  await expect.poll(() => height(page).inputValue()).toBe("260");
  expect(await said(page).textContent()).toMatch(/Another window of this browser typed last/);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  expect(await height(page).inputValue()).toBe("250");
  // The last to type finds what it typed, without a word.
  await page.reload();
  await expect.poll(() => height(page).inputValue()).toBe("250");
  expect(await said(page).textContent()).toBe("");
});

/** Opens the shop's form of a bench and the first of its machines. */
async function openShop(on: Page): Promise<void> {
  await openWithHand(on, `${site.url}shapes/right-cone/`);
  await on.locator(".bench .checks").waitFor();
  await on.getByRole("button", { name: "Look at the shop’s machines and change them" }).click();
  await on.locator(".bench-shop details summary").first().click();
}
const width = (on: Page) =>
  on
    .locator(".bench-shop")
    .getByLabel(/^Working width/)
    .first();

it("keeps the shop that was typed last in either of two tabs, and tells the other one", async () => {
  const other = await tab();
  await openShop(page);
  await openShop(other);
  await width(page).fill("1111");
  await expect.poll(() => said(other).textContent()).toMatch(/Another window .* shop/);
  // Both go on with what they have: nothing that somebody types is taken from under their hands.
  expect(await width(other).inputValue()).not.toBe("1111");
  await width(other).fill("2222");
  await expect.poll(() => said(page).textContent()).toMatch(/Another window .* shop/);
  expect(await width(page).inputValue()).toBe("1111");
  for (const one of [page, other]) {
    await openShop(one);
    await expect.poll(() => width(one).inputValue()).toBe("2222");
  }
});

it("goes back to the binder's own shop in one tab while another still has its own changes", async () => {
  const other = await tab();
  await openShop(page);
  const own = await width(page).inputValue();
  await width(page).fill("1111");
  await openShop(other);
  expect(await width(other).inputValue()).toBe("1111");
  await page.getByRole("button", { name: "The binder’s own shop", exact: true }).click();
  await expect.poll(() => width(page).inputValue()).toBe(own);
  await expect.poll(() => said(other).textContent()).toMatch(/Another window .* shop/);
  await openShop(other);
  await expect.poll(() => width(other).inputValue()).toBe(own);
});

const draftOf = (part: string) =>
  page.evaluate(
    (name) =>
      Object.entries(localStorage as unknown as Record<string, string>).find(([key]) =>
        key.endsWith(` draft ${name}`),
      ),
    part,
  );
const material = () => page.locator(".bench-form").getByLabel(/^Material/);

it.each(["constructor", "__proto__"])(
  "says of a material called %s that there is none, and goes on by it",
  async (word) => {
    await openWithHand(page, `${site.url}shapes/right-cone/`);
    const part = JSON.parse((await page.locator("[data-part]").getAttribute("data-part"))!) as {
      part: object;
    };
    const sent = JSON.stringify({ name: "sent", part: { ...part.part, material: word } });
    await page.goto("about:blank");
    await page.goto(`${site.url}shapes/right-cone/#part=${encodeURIComponent(sent)}`);
    for (const opened of ["by the link", "by the draft"]) {
      await expect
        .poll(() => page.locator(".bench-form .problem").allTextContents(), { message: opened })
        .toContainEqual(expect.stringMatching(/There is no material|there is no material/));
      await page.reload();
    }
    await material().selectOption("s235");
    await expect.poll(() => page.locator(".bench-form .problem").count()).toBe(0);
  },
);

it("begins anew from what was published where a draft cannot be shown, and keeps it for a file", async () => {
  await page.goto(`${site.url}shapes/right-cone/`);
  const height = page.locator(".bench-form").getByLabel(/^Height between/);
  const own = await height.inputValue();
  await height.fill("345");
  await expect.poll(async () => (await draftOf("right-cone"))?.[1]).toContain("345");
  // Stands for any mistake of ours that one part brings out.
  await page.addInitScript(() => {
    const asked = Object.hasOwn;
    Object.hasOwn = (object: object, key: PropertyKey) => {
      if (key === "height" && (object as { height?: unknown }).height === "345")
        throw new TypeError("cannot be shown");
      return asked(object, key);
    };
  });
  const notice = page.locator("[data-set-aside]");
  await page.reload();
  await expect.poll(() => notice.textContent()).toMatch(/could not be shown \(TypeError: cannot be shown\)/);
  expect(await height.inputValue()).toBe(own);
  expect(await page.getByText("could not be made live").count()).toBe(0);
  // It is offered at every visit, also after something else has been typed.
  await height.fill("360");
  await expect.poll(async () => (await draftOf("right-cone"))?.[1]).toContain("360");
  await page.reload();
  await expect.poll(() => notice.textContent()).toMatch(/It is set aside in this browser/);
  expect(await height.inputValue()).toBe("360");
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    notice.getByRole("button", { name: "Save it as a file" }).click(),
  ]);
  expect(saved.suggestedFilename()).toBe("right-cone-set-aside.yaml");
  expect(readFileSync(await saved.path(), "utf8")).toContain("height: 345");
  await notice.getByRole("button", { name: "Throw it away" }).click();
  await page.reload();
  await expect.poll(() => height.inputValue()).toBe("360");
  expect(await notice.count()).toBe(0);
});

it("keeps a draft that is none for a file too, before anything is written over it", async () => {
  await page.goto(`${site.url}shapes/right-cone/`);
  const height = page.locator(".bench-form").getByLabel(/^Height between/);
  await height.fill("345");
  await expect.poll(async () => (await draftOf("right-cone"))?.[1]).toContain("345");
  const [key] = (await draftOf("right-cone"))!;
  await page.evaluate((at) => localStorage.setItem(at, '[{"name":"right-cone","par'), key);
  await page.evaluate(() => sessionStorage.clear());
  await page.reload();
  await expect.poll(() => page.locator("[data-set-aside]").textContent()).toMatch(/could not be shown/);
  await height.fill("360");
  expect(await page.evaluate((at) => localStorage.getItem(`${at}, set aside`), key)).toContain("par");
});

import { expect, it } from "vitest";
import { freshPages, page, site } from "./freshPage.ts";
import { openWithHand } from "./hand.ts";

freshPages();

const height = () => page.locator(".bench-form").getByLabel(/^Height between/);
/** The pattern as it stands: its lines, and what is written where. */
const pattern = () =>
  page
    .locator("[aria-label^=Pattern] svg :is(path, text)")
    .evaluateAll((all) =>
      all.map((one) => [one.textContent, one.getAttribute("d"), one.getAttribute("transform")].join(" ")),
    );

it("draws with every key where figures lay, and then as a page does that begins with what is typed", async () => {
  await openWithHand(page, `${site.url}shapes/right-cone/`);
  await page.locator("[aria-label^=Pattern] svg").waitFor();
  await height().fill("60");
  await page.reload();
  await page.locator("[aria-label^=Pattern] svg").waitFor();
  await page.waitForLoadState("networkidle");
  expect(await height().inputValue()).toBe("60");
  const begun = await pattern();
  for (const size of ["300", "210", "150", "90", "60"]) await height().fill(size);
  await expect.poll(pattern).toEqual(begun);
});

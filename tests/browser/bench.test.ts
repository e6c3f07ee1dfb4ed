import { globSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { linkOf } from "../../src/site/bench/link.ts";
import { context, freshPages, page, site } from "./freshPage.ts";
import { openWithHand } from "./hand.ts";
import { settled } from "./settled.ts";
import { DIST } from "./site.ts";

freshPages();

const field = (name: string | RegExp) =>
  page.locator(".bench-form").getByLabel(name, { exact: typeof name === "string" });
const open = async (path: string) => {
  await openWithHand(page, site.url + path);
  await page.locator(".bench-form").waitFor();
  await page.locator(".bench .key-figures").waitFor();
};
/** Figures by name, as the page shows them. */
const figures = (root: string) =>
  page
    .locator(`${root} .key-figures > div`)
    .evaluateAll((all) =>
      all.map((one) =>
        [...one.querySelectorAll("dt, dd")].map((cell) => cell.firstChild?.textContent?.trim()),
      ),
    );
const figure = async (name: string) => (await figures(".bench")).find(([first]) => first === name)?.[1];

it("redraws with every key, keeps the last good drawing while a field is half typed, and says what is wrong beside it", async () => {
  await open("shapes/right-cone/");
  expect(await figure("Outer radius")).toBe("500\u00a0mm");
  await field(/^Height between/).fill("400");
  await expect.poll(() => figure("Outer radius")).not.toBe("500\u00a0mm");
  const good = await figure("Outer radius");
  await field(/^Height between/).fill("4oo");
  await page.locator(".bench-field.wrong .problem").waitFor();
  expect(await page.locator(".bench-field.wrong").textContent()).toContain("4oo");
  expect(await figure("Outer radius")).toBe(good);
  expect(await field(/^Height between/).getAttribute("aria-invalid")).toBe("true");
});

it("takes sizes as the drawing gives them: inches, fractions, feet and inches, gauge", async () => {
  await open("shapes/right-cone/");
  await field(/^Height between/).fill(`0' 7-7/8"`);
  await field("Plate thickness, mm").fill("10 ga");
  await expect.poll(() => page.locator(".bench-field.wrong").count()).toBe(0);
  // Views follow, and come with the first hand on the page.
  await expect.poll(() => page.locator(".bench .drawing").first().textContent()).toContain("200");
  await page.getByLabel("Units of the drawing", { exact: true }).selectOption("in");
  await expect.poll(() => figure("Outer radius")).toMatch(/ in/);
  expect(await page.locator(".bench-field.wrong").count()).toBe(0);
});

it("undoes and redoes by key and by button, the typing in one field at once", async () => {
  await open("shapes/eccentric-cone/");
  const before = await field(/^Height between/).inputValue();
  await field(/^Height between/).pressSequentially("5");
  await field(/^Height between/).blur();
  const typed = await field(/^Height between/).inputValue();
  await page.keyboard.press("Control+z");
  expect(await field(/^Height between/).inputValue()).toBe(before);
  await page.getByRole("button", { name: "Redo" }).click();
  expect(await field(/^Height between/).inputValue()).toBe(typed);
});

it("keeps what is typed when the page is left or reloaded, half typed too", async () => {
  await open("shapes/square-to-round/");
  await field(/^Height between/).fill("3oo");
  await page.reload();
  await page.locator(".bench-form").waitFor();
  expect(await field(/^Height between/).inputValue()).toBe("3oo");
  await page.goto(`${site.url}glossary/`);
  await page.goBack();
  await page.locator(".bench-form").waitFor();
  expect(await field(/^Height between/).inputValue()).toBe("3oo");
});

it("takes the part of a link, on the page of its shape, and changes nothing for a broken one", async () => {
  const part = {
    shape: "right-cone",
    title: "Sent",
    units: "mm",
    material: "s235",
    thickness: "4",
    largeEnd: { diameter: "605", measured: "outside" },
    smallEnd: { diameter: "305", measured: "outside" },
    height: "333",
  };
  const link = `#part=${encodeURIComponent(JSON.stringify({ name: "sent", part }))}`;
  await page.goto(`${site.url}shapes/eccentric-cone/${link}`);
  await page.waitForURL(/shapes\/right-cone/);
  await page.locator(".bench-form").waitFor();
  expect(await field(/^Height between/).inputValue()).toBe("333");
  await page.evaluate(() => (location.hash = "#part=%7B%22na"));
  await expect
    .poll(() => page.locator(".bench-bar [role=status]").textContent())
    .toMatch(/cut off or changed/);
  expect(await field(/^Height between/).inputValue()).toBe("333");
});

it("works on with storage forbidden, and says that nothing is kept", async () => {
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, "localStorage", {
      get: () => {
        throw new DOMException("forbidden", "SecurityError");
      },
    });
  });
  await open("shapes/right-cone/");
  await field(/^Height between/).fill("400");
  await expect.poll(() => page.locator(".bench-bar [role=status]").textContent()).toMatch(/keeps nothing/);
  await expect.poll(() => figure("Outer radius")).not.toBe("500\u00a0mm");
});

it("works on with storage full", async () => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await open("shapes/right-cone/");
  await field(/^Height between/).fill("400");
  await expect.poll(() => page.locator(".bench-bar [role=status]").textContent()).toMatch(/keeps nothing/);
});

const names = globSync("demo-data/parts/*.yaml")
  .map((path) => path.replace(/^.*\/|\.yaml$/g, ""))
  .filter((name) => !name.includes("."));

it.each(names)("%s has the same figures at the bench as on its page and in its report", async (name) => {
  await page.goto(`${site.url}parts/${name}/`);
  const published = await figures("main");
  await page.getByRole("button", { name: "Change this part here" }).click();
  await page.locator(".bench .key-figures").waitFor();
  expect(await figures(".bench")).toEqual(published);
  const report = JSON.parse(readFileSync(`${DIST}/parts/${name}.json`, "utf8")) as {
    massKg: number;
    forming: { checks: { title: string }[] };
  };
  // Each has a button behind it by which it is asked.
  const titles = async () =>
    (await page.locator(".bench .checks > li strong").allTextContents()).map((text) =>
      text.replace(/\s*\?$/, ""),
    );
  await expect.poll(titles).toEqual(report.forming.checks.map(({ title }) => title));
});

it("goes back to what was typed after a link has been opened and the page loaded anew", async () => {
  await open("shapes/right-cone/");
  await field(/^Height between/).fill("456");
  const part = {
    shape: "right-cone",
    title: "Other",
    units: "mm",
    material: "s235",
    thickness: "3",
    largeEnd: { diameter: "600", measured: "inside" },
    smallEnd: { diameter: "300", measured: "inside" },
    height: "321",
  };
  await page.goto(`${site.url}shapes/right-cone/${linkOf({ name: "other", part })}`);
  await expect.poll(() => field(/^Height between/).inputValue()).toBe("321");
  await page.reload();
  await expect.poll(() => field(/^Height between/).inputValue()).toBe("321");
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  expect(await field(/^Height between/).inputValue()).toBe("456");
});

it("says how each figure was worked out, with this part's numbers", async () => {
  await open("shapes/right-cone/");
  await page.getByRole("button", { name: "How was it worked out: Outer radius?" }).click();
  await expect
    .poll(() => page.locator(".key-figures + .bench-answer").textContent())
    .toMatch(/600 \/ \(2 × sin 36.87°\)/);
  await page.getByRole("button", { name: "What is this: Plate thickness?" }).click();
  await expect.poll(() => page.locator(".bench-form").textContent()).toContain("which depends on the metal");
});

it("shows one element line in every drawing, by key and by touch, and says what it is", async () => {
  await open("shapes/eccentric-cone/");
  await page.locator(".look").nth(1).waitFor();
  await page.locator(".look").first().focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press("ArrowRight");
  const said = () => page.locator(".chosen-line").allTextContents();
  // What reads keys comes with the first one, and none is lost.
  await expect
    .poll(said)
    .toEqual([
      expect.stringMatching(/Line 4:\s+plan angle 90°, true length\s+[\d.]+\u00a0mm/),
      expect.stringMatching(/Line 4/),
    ]);
  const lit = (what: string) =>
    page
      .locator(`.look ${what}`)
      .evaluateAll((all) => [
        ...new Set(all.map((one) => one.closest(".look")?.getAttribute("aria-label")?.split(":")[0])),
      ]);
  expect(await lit("line.chosen")).toEqual(["Views", "Pattern"]);
  expect(await page.locator(".look").first().locator("line.chosen").count()).toBe(2);
  expect(await lit("text.marked")).toEqual(["Views", "Pattern"]);
  await page.locator(".look").nth(1).scrollIntoViewIfNeeded();
  const line = (await page.locator(".look").nth(1).locator("line.chosen").boundingBox())!;
  await page.keyboard.press("Escape");
  await expect.poll(() => page.locator("line.chosen").count()).toBe(0);
  // By touch, a little beside the line.
  await page.mouse.click(line.x + line.width / 2 + 5, line.y + line.height / 2);
  // What reads touches comes with the first one.
  await expect.poll(said).toEqual([expect.stringMatching(/Line 4/), expect.stringMatching(/Line 4/)]);
  await page.mouse.click(line.x + line.width / 2 + 5, line.y + line.height / 2);
  await expect.poll(() => page.locator("line.chosen").count()).toBe(0);
});

it("tells the two lines that bound a flat apart", async () => {
  await open("shapes/square-to-round/");
  const pattern = page.locator(".look").nth(1);
  await pattern.focus();
  const said = page.locator(".chosen-line strong").first();
  for (const number of [1, 2, 3, 4, 5, 6, 7, 8]) {
    await page.keyboard.press("ArrowRight");
    // What reads keys comes with the first one, and none is lost.
    await expect.poll(() => said.textContent()).toBe(`Line ${number} of piece 1`);
    expect(await pattern.locator("line.chosen").count()).toBe(1);
  }
});

it("marks the row of a chosen line, chooses by a row with mouse and keys, and shows a line of the back dashed", async () => {
  await open("shapes/square-to-round/");
  const rows = page.locator(".bench .choosable");
  // The table stands far down, and comes with the first hand at the bench.
  await page.locator(".look").first().focus();
  await rows.first().waitFor();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  // What reads keys comes with the first one, and none is lost.
  await expect
    .poll(() => page.locator(".bench .choosable.chosen th").allTextContents())
    .toEqual([expect.stringMatching(/^\s*2\s*$/)]);
  const before = await page.evaluate(() => scrollY);
  await page.keyboard.press("ArrowRight");
  expect(await page.evaluate(() => scrollY)).toBe(before);
  await rows.nth(4).locator("td").nth(2).click();
  await expect.poll(() => page.locator(".chosen-line strong").first().textContent()).toMatch(/^Line 5/);
  await rows.nth(4).getByRole("button").focus();
  await page.keyboard.press("ArrowDown");
  await expect.poll(() => page.locator(".chosen-line strong").first().textContent()).toMatch(/^Line 6/);
  expect(await rows.nth(5).getByRole("button").getAttribute("aria-pressed")).toBe("true");
  // Every line in both views and on the pattern, at the back dashed.
  let dashed = 0;
  for (let i = 0; i < 8; i++) {
    await page.keyboard.press("ArrowDown");
    expect(await page.locator(".look").first().locator("line.chosen").count()).toBeGreaterThanOrEqual(2);
    dashed += await page.locator("line.chosen.hidden").count();
  }
  expect(dashed).toBeGreaterThan(0);
  await page.keyboard.press("Escape");
  expect(await page.locator("line.chosen").count()).toBe(0);
  // A flat has one plan angle: both lines are told.
  const told: string[] = [];
  await page.locator(".look").first().focus();
  const said = page.locator(".chosen-line").first();
  for (let i = 1; i <= 6; i++) {
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => said.textContent()).toMatch(new RegExp(`^\\s*Line ${i}\\b`));
    told.push((await said.textContent()) ?? "");
  }
  expect(told.some((one) => /stays\s+flat/.test(one))).toBe(true);
});

it("keeps the pattern in sight on a telephone while one types, never over the field, and puts it away", async () => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open("shapes/eccentric-cone/");
  const low = page.locator(".low-pattern");
  const shape = () => low.locator("path").last().getAttribute("d");
  const inputs = page.locator(".bench-form > .bench-fields input, .bench-form > fieldset input");
  const count = await inputs.count();
  expect(count).toBeGreaterThan(5);
  for (let i = count - 1; i >= 0; i--) {
    await inputs.nth(i).focus();
    const [strip, field] = [(await low.boundingBox())!, (await inputs.nth(i).boundingBox())!];
    // In sight, and the field with its label below it.
    expect(strip.y).toBeGreaterThanOrEqual(-1);
    expect(strip.y + strip.height).toBeLessThan(field.y);
    expect(field.y + field.height).toBeLessThan(844);
    expect(strip.height).toBeLessThan(844 / 4);
  }
  const before = await shape();
  await field(/^Height between/).fill("900");
  await expect.poll(shape).not.toBe(before);
  await low.getByRole("button").click();
  expect(await low.locator("svg").count()).toBe(0);
  expect(await low.evaluate((one) => getComputedStyle(one).position)).toBe("static");
  await low.getByRole("button").click();
  // A screen as low as a telephone's at twice the size with its keyboard out: it scrolls with the page.
  await page.setViewportSize({ width: 195, height: 300 });
  expect(await low.evaluate((one) => getComputedStyle(one).position)).toBe("static");
  await page.setViewportSize({ width: 1280, height: 900 });
  expect(await low.isVisible()).toBe(false);
});

it("looks nearer with lettering of the same size, where the pointer is", async () => {
  await open("shapes/right-cone/");
  const pattern = page.locator(".live-drawing").nth(1);
  const letters = () =>
    pattern
      .locator("text")
      .first()
      .evaluate((one) => {
        const { a } = (one as SVGTextElement).getScreenCTM()!;
        return Number(one.getAttribute("font-size")) * a;
      });
  const before = await letters();
  await pattern.getByRole("button", { name: "Nearer" }).click();
  await expect.poll(() => pattern.locator("svg").getAttribute("viewBox")).not.toMatch(/^0 0/);
  expect(Math.abs((await letters()) / before - 1)).toBeLessThan(0.02);
  await pattern.getByRole("button", { name: "Whole" }).click();
  await expect.poll(() => pattern.locator("svg").getAttribute("viewBox")).toMatch(/^0 0/);
  // The place of the sheet under the pointer stays there.
  await pattern.locator("svg").scrollIntoViewIfNeeded();
  const box = (await pattern.locator("svg").boundingBox())!;
  const [x, y] = [box.x + box.width * 0.8, box.y + box.height * 0.3];
  const under = () =>
    pattern.locator("svg").evaluate(
      (svg, [x, y]) => {
        const at = new DOMPoint(x, y).matrixTransform((svg as SVGSVGElement).getScreenCTM()!.inverse());
        return [at.x, at.y] as const;
      },
      [x, y] as const,
    );
  const there = await under();
  await page.mouse.move(x, y);
  await page.keyboard.down("Control");
  await page.mouse.wheel(0, -400);
  await page.keyboard.up("Control");
  await expect.poll(() => pattern.locator("svg").getAttribute("viewBox")).not.toMatch(/^0 0/);
  const still = await under();
  for (const i of [0, 1] as const) expect(Math.abs(still[i] - there[i])).toBeLessThan(0.3);
});

it("says once that the wheel wants a key, and moves what is looked at nearer by keys", async () => {
  await open("shapes/right-cone/");
  const views = page.locator(".live-drawing").first();
  const told = page.locator(".wheel");
  await views.scrollIntoViewIfNeeded();
  const box = (await views.locator("svg").boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.wheel(0, 60);
  await told.waitFor();
  expect(await told.textContent()).toMatch(/^Hold Ctrl and turn the wheel/);
  expect(await views.locator("svg").getAttribute("viewBox")).toMatch(/^0 0/);
  await page.keyboard.down("Control");
  await page.mouse.wheel(0, -300);
  await page.keyboard.up("Control");
  await expect.poll(() => told.count()).toBe(0);
  await expect.poll(() => views.locator("svg").getAttribute("viewBox")).not.toMatch(/^0 0/);
  await page.mouse.wheel(0, 60);
  expect(await told.count()).toBe(0);
  const left = async () => Number((await views.locator("svg").getAttribute("viewBox"))!.split(" ")[0]);
  const before = await left();
  await views.locator(".look").focus();
  await page.keyboard.press("Shift+ArrowRight");
  await expect.poll(left).toBeGreaterThan(before);
  await page.keyboard.press("0");
  await expect.poll(left).toBe(0);
  await views.getByText("How to move in the drawing").click();
  expect(await views.locator("details p").textContent()).toMatch(/two fingers/);
});

it("reads off a distance between two points, by touch and by key", async () => {
  await open("shapes/right-cone/");
  const pattern = page.locator(".live-drawing").nth(1);
  await pattern.locator(".look").focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press("ArrowRight");
  // Both ends of an element line: its true length is that of the slant.
  const ends = await pattern.locator("line.chosen").evaluate((one) => {
    const svg = one.closest("svg")!;
    const at = (x: string, y: string) => {
      const p = new DOMPoint(Number(one.getAttribute(x)), Number(one.getAttribute(y))).matrixTransform(
        svg.getScreenCTM()!,
      );
      return [p.x, p.y] as const;
    };
    return [at("x1", "y1"), at("x2", "y2")];
  });
  await pattern.getByRole("button", { name: "Read off a distance" }).click();
  // Whoever has pressed it by key goes on with the keys.
  expect(await pattern.locator(".look").evaluate((look) => look === document.activeElement)).toBe(true);
  for (const [x, y] of ends) await page.mouse.click(x + 4, y - 3);
  const read = () => pattern.locator("[aria-live]").textContent();
  // What reads touches comes with the first one, and none is lost.
  await expect
    .poll(read)
    .toMatch(/^\s*250\u00a0mm:\s[\s\S]*\sfrom x [\d.]+, y [\d.]+ to x [\d.]+, y [\d.]+\./);
  await pattern.locator(".look").focus();
  await page.keyboard.press("Escape");
  await expect.poll(read).toMatch(/Touch a point/);
  await page.keyboard.press("ArrowRight");
  await expect.poll(read).toMatch(/Point at x /);
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Enter");
  await expect.poll(read).toMatch(/\sacross,\s/);
  expect(await pattern.locator("line.tape").count()).toBe(1);
});

it("unrolls the part by slider and by key, and turns it", async () => {
  await open("shapes/square-to-round/");
  await page.getByRole("button", { name: "See it in the round" }).click();
  const picture = page.locator(".round svg");
  const looks = () =>
    picture.locator("polygon").evaluateAll((all) => all.map((one) => one.getAttribute("points")).join());
  await picture.waitFor();
  const rolled = await looks();
  await page.getByLabel("Unroll", { exact: true }).fill("100");
  await expect.poll(looks).not.toBe(rolled);
  expect(await picture.getAttribute("aria-label")).toMatch(/100 per cent unrolled/);
  expect(await picture.locator("polygon.outside").count()).toBe(0);
  await page.locator(".turntable").focus();
  await page.keyboard.press("ArrowLeft");
  expect(await picture.getAttribute("aria-label")).toMatch(/turned by -20 degrees/);
});

it("unrolls at once where no motion is wanted", async () => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await open("shapes/right-cone/");
  await page.getByRole("button", { name: "See it in the round" }).click();
  await page.getByRole("button", { name: "Unroll it" }).click();
  expect(await page.locator(".round svg").getAttribute("aria-label")).toMatch(/100 per cent unrolled/);
});

it("turns the plate over and takes other divisions, with what they lose", async () => {
  await open("shapes/eccentric-cone/");
  await page.getByRole("button", { name: "Turn the plate over" }).click();
  expect(await page.locator(".blank-tools").textContent()).toMatch(/Outside face up/);
  const lost = () => page.locator(".blank-tools").textContent();
  const before = await lost();
  await page.getByLabel(/Divisions by hand: /).fill("96");
  await expect.poll(lost).not.toBe(before);
  expect(await page.locator(".blank-tools strong").textContent()).toBe("96");
});

it("prints the part's own sheets as it stands at the bench, and nothing of the bench", async () => {
  await open("shapes/right-cone/");
  await field(/^Height between/).fill("345");
  await page.locator(".bench .checks").waitFor();
  await settled(page);
  // What is printed is loaded once somebody is at work; till then the page says, on paper, to print it again.
  await page.emulateMedia({ media: "print" });
  await expect
    .poll(async () => {
      await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
      return page.locator(".bench-print .sheet").count();
    })
    .toBe(2);
  const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
  expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBe(2);
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  expect(await page.locator(".bench-print").textContent()).toContain("345");
  expect(await page.locator(".bench-form").isVisible()).toBe(false);
});

it("saves files for the cutting table of the part as it stands at the bench, with the network off as well", async () => {
  await open("shapes/right-cone/");
  await expect
    .poll(() => page.locator("[data-version] [role=status]").textContent(), { timeout: 20_000 })
    .toMatch(/network off/);
  await context.setOffline(true);
  await field(/^Height between/).fill("321");
  await settled(page);
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "right-cone.dxf" }).click(),
  ]);
  const dxf = readFileSync(await file.path(), "utf8");
  expect(dxf).toMatch(/AC1009[\s\S]*CUT[\s\S]*EOF/);
  expect(dxf).not.toBe(readFileSync(`${DIST}/parts/scalper-cone/scalper-cone.dxf`, "utf8"));
});

it("is headed by the part's title where it takes the place of a part's sheets", async () => {
  await page.goto(`${site.url}parts/seed-funnel/`);
  const title = await page.locator("h1").textContent();
  await page.getByRole("button", { name: "Change this part here" }).click();
  await page.locator(".bench .checks").waitFor();
  expect(await page.locator("h1").allTextContents()).toEqual([title]);
  const ids = await page.locator("[id]").evaluateAll((all) => all.map((one) => one.id));
  expect(ids.filter((id, i) => ids.indexOf(id) < i)).toEqual([]);
});

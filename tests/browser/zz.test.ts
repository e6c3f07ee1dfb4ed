import { it } from "vitest";
import { launch } from "./chromium.ts";
import { DIST, pagesOf, serve } from "./site.ts";
it("x", async () => {
  const site = await serve(DIST); const browser = await launch(); const page = await browser.newPage();
  await page.emulateMedia({ media: "print" });
  const out: string[] = [];
  for (const [f, w] of [["A4", ((210 - 28) / 25.4) * 96], ["Letter", ((215.9 - 28) / 25.4) * 96]] as const) {
    await page.setViewportSize({ width: Math.floor(w), height: 1000 });
    for (const p of pagesOf(DIST).filter((path) => /^parts\/.*\/forming\//.test(path))) {
      await page.goto(site.url + p);
      const r = await page.evaluate(() => { const s = document.querySelector(".sheet")!; const h = s.getBoundingClientRect().height; const q = (id: string) => { const e = [...document.querySelectorAll(".step-card > li")].find((x) => x.textContent.includes(id)); return e ? e.getBoundingClientRect().height.toFixed(0) : "-"; };
        s.querySelectorAll<HTMLElement>(".by-hand").forEach((e) => e.style.display = "none"); const h2 = s.getBoundingClientRect().height;
        return [h, h2, q("Correct the setting"), q("Raise for the first"), q("Raise for the second"), q("Close.")].join(" "); });
      if (/cone|sleeve|ring|funnel|bottom|shift|feed-spout/.test(p)) out.push(`${f} ${p.split("/")[1]} ${r}`);
      if (p.includes("dust-cyclone") && f === "A4") { await page.reload(); await page.locator(".sheet").first().screenshot({ path: "/tmp/sheet.png" }); }
    }
  }
  console.log(out.join("\n")); await browser.close(); site.close();
}, 200000);

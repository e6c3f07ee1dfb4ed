import { expect, it } from "vitest";
import { createPdf } from "../../src/output/pdf/document.ts";
import { fitted } from "../../src/output/pdf/words.ts";
import { fonts } from "./fonts.ts";
import { readPdf } from "./readPdf.ts";

it("a title that is made smaller to fit is never cut short for the rounding of its size", async () => {
  const pdf = createPdf({ title: "Titles", subject: "", date: "D:20260131120000+00'00'", fonts });
  const titles = Array.from(
    { length: 60 },
    (_, i) => `One quarter of the full-size pattern: Discharge cone Ø900/${300 + 7 * i}${"n".repeat(i % 20)}`,
  );
  pdf.sheet(210, 297);
  titles.forEach((title, i) => fitted(pdf, title, [10, 4 + 4 * i], { capMm: 4.5, bold: true }, 120));
  const { pages } = await readPdf(pdf.bytes());
  const said = pages[0]!.texts.map(({ text }) => text);
  for (const title of titles) expect(said).toContain(title);
});

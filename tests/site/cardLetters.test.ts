import { expect, it } from "vitest";
import { readBinder } from "../../src/site/binder/binder.ts";
import { sheetsPdf } from "../../src/site/pdf/write.ts";
import { fonts } from "../output/fonts.ts";
import { readPdf } from "../output/readPdf.ts";

const POINT_MM = 25.4 / 72;
/** What is read at arm's length from a wall; words of the verdict and headings are larger than any check. [points] */
const LEAST = { check: 7.5, reason: 7 };
const HEADING = 8.93;
const binder = readBinder();

it.each(
  binder.parts.flatMap((one) =>
    (["a4", "letter"] as const).map((paper) => ({ one, paper, name: one.report.part.name })),
  ),
)(
  "the card of $name on $paper takes two sheets, and its checks are read from a wall",
  async ({ one, paper }) => {
    const { report, material, gauge } = one;
    const around = { shop: binder.shop, job: binder.job, material: material.name, gauge };
    const made = sheetsPdf(report, around, {
      ...{ kind: "card" as const, paper, fonts, date: "D:20260131120000+00'00'" },
      ...{ known: new Map<string, string>(), glossary: new Map<string, string>() },
    })!;
    const { pages } = await readPdf(made.bytes);
    const texts = pages[0]!.texts;
    const from = texts.findIndex(({ text }) => text.startsWith("Will it go?"));
    const foot = Math.min(...texts.filter(({ text }) => text === "Material").map(({ at }) => at[1]));
    const checks = texts.slice(from).filter(({ at }) => at[1] > foot + 1);
    const sizes = [...new Set(checks.map(({ sizeMm }) => Number((sizeMm / POINT_MM).toFixed(2))))];
    const labels = texts.filter(({ text }) => text === "Material").map(({ sizeMm }) => sizeMm / POINT_MM);
    expect(pages.length).toBeLessThanOrEqual(2);
    // Words of the checks at 7.5 points, rules and what they rest on at 7, and no smaller letters there.
    expect(sizes.some((size) => size >= LEAST.check && size < HEADING)).toBe(true);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(LEAST.reason);
    expect(labels.length).toBeGreaterThan(0);
    for (const size of labels) expect(size).toBeGreaterThanOrEqual(LEAST.reason);
  },
);

import { describe, expect, it } from "vitest";
import { readBinder } from "../../src/site/binder/binder.ts";
import { byHandRows } from "../../src/site/forming/byHandWords.ts";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import { lostSigns } from "../../src/site/pdf/lostSigns.ts";
import { pdfDate } from "../../src/site/pdf/pdfDate.ts";
import { sheetsPdf } from "../../src/site/pdf/write.ts";
import { shortName } from "../../src/site/words/sources.ts";
import { keyFigures } from "../../src/site/words/keyFigures.ts";
import { markingOf } from "../../src/site/words/marking.ts";
import { yamlOf } from "../content/read.ts";
import { readPdf, type PdfPage } from "../output/readPdf.ts";
import { fonts } from "../output/fonts.ts";

const date = "D:20260131120000+00'00'";
const { parts, shop, job } = readBinder();
const sources = yamlOf("content/sources.yaml") as Record<string, Parameters<typeof shortName>[0]>;
const known = new Map(Object.entries(sources).map(([id, source]) => [id, shortName(source)]));
const glossary = new Map(
  Object.entries(yamlOf("content/glossary.yaml") as Record<string, { text: string }>).map(
    ([entry, { text }]) => [entry, text],
  ),
);
/** Ids mean nothing on paper. */
const idsIn = (words: string) => Object.keys(sources).filter((id) => words.includes(id));
/** The frame of a page lies this far from the paper's edge. [mm] */
const FRAME_MM = 9;

const made = (one: (typeof parts)[number], kind: "card" | "work-sheet", paper: "a4" | "letter") =>
  sheetsPdf(
    one.report,
    { shop, job, material: one.material.name, gauge: one.gauge },
    { kind, paper, fonts, date, known, glossary },
  );
const wordsOf = (page: PdfPage) =>
  page.texts
    .map(({ text }) => text)
    .join(" ")
    .replaceAll("\u00a0", " ");
const plain = (text: string) => text.replaceAll("\u00a0", " ");

/** What is written beyond the frame, save the page's number below it. */
const beyond = ({ widthMm, heightMm, texts }: PdfPage) =>
  texts.filter(
    ({ at: [x, y], longMm, text }) =>
      !/^\d+ of \d+$/.test(text) &&
      (x < FRAME_MM || x + longMm > widthMm - FRAME_MM || y < FRAME_MM || y > heightMm - FRAME_MM),
  );

describe.each(parts)("$report.part.name", (one) => {
  const { report } = one;
  it.each(["a4", "letter"] as const)(
    "has a card on %s with sizes, figures and marking table, all in its frame",
    async (paper) => {
      const { pages, bookmarks, info } = await readPdf(made(one, "card", paper)!.bytes);
      expect(pages.length).toBeLessThanOrEqual(2);
      expect(info["Title"]).toBe(`${report.part.title}: part card`);
      expect(bookmarks).toEqual(
        expect.arrayContaining(["Size", "Will it go?", "Blank", "Marking table", "Check"]),
      );
      expect(pages.flatMap(beyond)).toEqual([]);
      const words = pages.map(wordsOf).join(" ");
      for (const { value } of keyFigures(report)) expect(words).toContain(plain(value));
      for (const { title } of report.forming.checks) expect(words).toContain(title);
      // Where the offset goes both ways there is a third view, or else two that are as large as they go.
      if (words.includes("from the left")) expect(words).toContain("picture 118 mm wide");
      expect(words).toContain("Caution.");
      expect(idsIn(words)).toEqual([]);
      const { columns, rows } = markingOf(report);
      const cells = new Set(pages.flatMap(({ texts }) => texts.map(({ text }) => plain(text))));
      for (const row of rows)
        for (const { cell } of columns) if (cell(row) !== "") expect(cells).toContain(plain(cell(row)));
      for (const page of pages) expect(wordsOf(page)).toContain(report.part.name);
    },
  );

  it("has a work sheet with every step, where a machine takes it", async () => {
    const sheet = made(one, "work-sheet", "a4");
    const plan = chosenPlan(report);
    expect(sheet === undefined).toBe(plan === undefined);
    if (!sheet || !plan) return;
    const { pages } = await readPdf(sheet.bytes);
    expect(pages.length).toBe(sheet.pages);
    expect(pages.flatMap(beyond)).toEqual([]);
    const words = pages.map(wordsOf).join(" ");
    for (const { title } of plan.steps) expect(words).toContain(`${title}.`);
    // The table to correct by hand, which the step speaks of.
    for (const step of plan.steps)
      for (const { name, cells } of byHandRows(step, report.part.units))
        for (const cell of [name, ...cells]) expect(words).toContain(plain(cell));
    expect(words).toContain("Caution.");
    expect(idsIn(words)).toEqual([]);
    // What can spoil the work stands before the first step.
    for (const { text } of plan.brake?.remarks ?? []) {
      const [first] = text.split(":") as [string];
      expect(words).toContain(plain(first));
      expect(words.indexOf(plain(first))).toBeLessThan(words.indexOf(`${plan.steps[0]!.title}.`));
    }
    for (const { what } of report.forming.inspection?.rows ?? [])
      expect(words.replaceAll(" ", "")).toContain(what.replaceAll(" ", ""));
  });
});

it("keeps the words that somebody typed in its frame, however long and of whatever signs", async () => {
  const one = parts.find(({ report }) => report.blanks.length > 1)!;
  const title = `${"Trichter".repeat(30)} ⅛″ Žluťoučký 漢`;
  const notes = `${"x".repeat(400)}\nsecond line: Ø½ → ő`;
  const odd = { ...one, report: { ...one.report, part: { ...one.report.part, title, notes } } };
  for (const kind of ["card", "work-sheet"] as const) {
    const { pages, info } = await readPdf(made(odd, kind, "letter")!.bytes);
    expect(pages.flatMap(beyond)).toEqual([]);
    expect(pages.map(wordsOf).join(" ")).toContain("⅛″ Žluťoučký ?");
    expect(info["Title"]).toContain("漢");
  }
});

it("is the same byte for byte", () => {
  const one = parts[0]!;
  const [first, second] = [made(one, "card", "a4")!, made(one, "card", "a4")!];
  expect(Buffer.from(first.bytes).equals(Buffer.from(second.bytes))).toBe(true);
});

it("writes a moment in UTC", () => {
  expect(pdfDate(new Date("2026-01-31T23:30:05+09:00"))).toBe("D:20260131143005+00'00'");
});

it("tells which letters of a title cannot be printed, and says nothing where all can", () => {
  const [one] = parts;
  const titled = (title: string) =>
    made({ ...one!, report: { ...one!.report, part: { ...one!.report.part, title } } }, "card", "a4")!.lost;
  expect(lostSigns(titled("Trichter č Ø½"))).toBe("");
  expect(lostSigns(titled("Hopper 漢"))).toBe(
    " Print has no letters for 漢: a question mark stands for it, first in “Hopper 漢”.",
  );
  const two = lostSigns(titled(`漢\u202e ${"x".repeat(100)}`));
  expect(two).toMatch(
    /^ Print has no letters for 漢 U\+202E: a question mark stands for each, first in “漢 x+…”\.$/,
  );
});

import { expect, it } from "vitest";
import { sayIn } from "../../src/forming/say.ts";
import type { AnyTold } from "../../src/forming/settleTrials.ts";
import { trialCase } from "../../src/report/correct.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { footnotes } from "../../src/site/forming/footnotes.ts";
import { lotOf } from "../../src/site/forming/lot.ts";
import { addedWords, boxName, isSum, openBox, plannedWords } from "../../src/site/forming/planned.ts";
import { BRAKE_WORD_ENTRIES, explainedIn, ROLL_WORD_ENTRIES } from "../../src/site/forming/rollWords.ts";
import { WORDS_NEXT } from "../../src/site/forming/stepSides.ts";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import {
  BASIS_NOTE,
  blankNote,
  limitHead,
  limitWords,
  LOT_HEADING,
  lotNote,
  PASSES,
  WINDOW_NOTE,
} from "../../src/site/forming/sheetWords.ts";
import { bevelNote, bevelRows } from "../../src/site/forming/bevelRows.ts";
import { settingRows } from "../../src/site/forming/settingRows.ts";
import { zoneMarksSaid } from "../../src/site/forming/zoneBegins.ts";
import { reportAfter } from "../../src/site/pdf/triedReport.ts";
import { sheetsPdf } from "../../src/site/pdf/write.ts";
import { basisName, shortName } from "../../src/site/words/sources.ts";
import { CAUTION, neverOn, withCare, READ_FIRST } from "../../src/site/words/work.ts";
import { yamlOf } from "../content/read.ts";
import { readPdf, type PdfPage } from "../output/readPdf.ts";
import { fonts } from "../output/fonts.ts";

const { parts, shop, job, tables } = readBinder();
const sources = yamlOf("content/sources.yaml") as Record<string, Parameters<typeof shortName>[0]>;
const known = new Map(Object.entries(sources).map(([id, source]) => [id, shortName(source)]));
const glossary = new Map(
  Object.entries(yamlOf("content/glossary.yaml") as Record<string, { text: string }>).map(
    ([entry, { text }]) => [entry, text],
  ),
);
const planned = parts.flatMap((one) => {
  const plan = chosenPlan(one.report);
  return plan ? [{ name: one.report.part.name, one, plan }] : [];
});

const pagesOf = async (one: (typeof parts)[number], paper: "a4" | "letter", report = one.report) =>
  (
    await readPdf(
      sheetsPdf(
        report,
        { shop, job, material: one.material.name, gauge: one.gauge },
        {
          kind: "work-sheet",
          paper,
          fonts,
          date: "D:20260131120000+00'00'",
          known,
          glossary,
        },
      )!.bytes,
    )
  ).pages;
/** Letters of footnotes stand above their line: smaller than anything that is read. [mm] */
const isRaised = ({ text, sizeMm }: PdfPage["texts"][number], least: number) =>
  /^[a-z]$/.test(text) && sizeMm < least;
/** 10 points less what the reader rounds. [mm] */
const TEN_POINTS_MM = (10 * 25.4) / 72 - 0.01;
/** Words alone, whatever lines they were broken into, without the letters of footnotes. */
const run = (text: string) => text.replace(/\s/g, "");
const words = (pages: readonly PdfPage[]) =>
  run(
    pages
      .flatMap(({ texts }) => texts.filter((one) => !isRaised(one, 3)))
      .map(({ text }) => text)
      .join(""),
  );

it.each(planned)("$name: every text of the printed sheet stands in the PDF", async ({ one, plan }) => {
  const { report } = one;
  const { units } = report.part;
  const pages = await pagesOf(one, units === "mm" ? "a4" : "letter");
  const all = words(pages);
  const has = (text: string) => expect(all).toContain(run(text));
  has(`${CAUTION} ${READ_FIRST.before} ${READ_FIRST.what} ${READ_FIRST.after}`);
  if (plan.route === "roll") expect(neverOn(plan).length).toBeGreaterThan(2);
  neverOn(plan).forEach(has);
  plan.batch.forEach(has);
  has(withCare(plan));
  for (const { title, text, cautions, toNote } of plan.steps) {
    has([`${title}.${text}`, ...cautions].join(" "));
    for (const box of toNote) {
      if (box.planned === undefined) has(openBox(box.label, box.unit, units));
      else {
        has(boxName(box.label));
        has((isSum(box) ? addedWords : plannedWords)(box.planned, box.unit, units));
      }
    }
  }
  has(BASIS_NOTE);
  for (const { mark, basis } of footnotes(plan, units)) has(`${mark} ${basisName(known, basis)}`);
  if (plan.settings) {
    has(WINDOW_NOTE);
    for (const { label } of settingRows(plan.settings, plan.steps)) has(label);
    for (const { number, example } of plan.steps) if (example) has(`Step ${number}. ${example}`);
  }
  const lot = lotOf(report, plan);
  if (lot) {
    [LOT_HEADING, lotNote(lot, units)].forEach(has);
    for (const { name, columns } of lot.groups) [name, ...columns].forEach(has);
  }
  if (report.forming.springback && plan.route === "roll") has("Springback");
  if (report.forming.evenness) has("Curvature round the part");
  if (plan.route === "roll" && report.forming.inspection) {
    const [blank] = report.blanks;
    const bevels = bevelRows(report, blank!.piece);
    for (const { name, cells } of bevels) has([name, ...cells].join(" "));
    for (const row of report.forming.inspection.rows) {
      has(row.what);
      if (report.forming.inspection.toleranceClass !== null) has(limitWords(row, units).range);
    }
    [
      PASSES,
      limitHead(report.forming.inspection.toleranceClass),
      "The blank",
      blankNote(report, zoneMarksSaid(report, plan.settings?.zones ?? [])),
      ...(bevels.length > 0 ? [bevelNote(units)] : []),
    ].forEach(has);
  }
  expect(all).not.toContain("…");
});

const isFirst = ({ phase }: (typeof planned)[number]["plan"]["steps"][number]) =>
  phase === "set-up" || phase === "first pass";

it.each(planned)(
  "$name: steps stand on both sides of one sheet, in letters of 10 points",
  async ({ one, plan }) => {
    const { units } = one.report.part;
    for (const paper of ["a4", "letter"] as const) {
      const [front, back, third, ...rest] = await pagesOf(one, paper);
      const has = (page: PdfPage, text: string) => words([page]).includes(run(text));
      const behind = plan.steps.findIndex(({ title }) => !has(front!, `${title}.`));
      expect(behind).toBeGreaterThan(0);
      // The work is cut where the first pass ends, or for the sake of larger letters before it is measured or corrected.
      const usual = Math.max(
        1,
        plan.steps.findIndex((step) => !isFirst(step)),
      );
      const moved = plan.steps.slice(behind, usual).map(({ id }) => id);
      expect(["", "first-correct", "first-measure first-correct"]).toContain(moved.join(" "));
      expect(behind).toBeLessThanOrEqual(usual);
      expect(has(front!, `One sheet, both sides: steps ${behind + 1} to ${plan.steps.length}`)).toBe(true);
      expect(has(back!, `Back of the sheet: steps ${behind + 1} to ${plan.steps.length}`)).toBe(true);
      for (const [i, { title, text, cautions }] of plan.steps.entries()) {
        const page = i < behind ? front! : back!;
        expect(has(page, [`${title}.${text}`, ...cautions].join(" ")), `${paper}: ${title}`).toBe(true);
        const found = page.texts.find((one) =>
          one.text.replace(/^\d+ /, "").startsWith(title.split(" ").slice(0, 2).join(" ")),
        );
        if (!found) throw new RangeError(`no step ${title}`);
        expect(found.sizeMm).toBeGreaterThan(TEN_POINTS_MM);
      }
      expect(words([third!])).not.toContain(run(BASIS_NOTE));
      const notes = footnotes(plan, units);
      const letters = new Set(notes.map(({ mark }) => mark));
      const raised = [front!, back!].flatMap(({ texts }) =>
        texts.filter((text) => isRaised(text, 3) && letters.has(text.text)),
      );
      expect(raised.length).toBeGreaterThanOrEqual(plan.steps.length);
      // No letter is explained that stands nowhere.
      expect(new Set(raised.map(({ text }) => text))).toEqual(letters);
      // The lot is read before its first blank is dressed.
      if (plan.batch.length > 0)
        expect(words([front!]).indexOf("Thelot.")).toBeLessThan(
          words([front!]).indexOf(run(`${plan.steps[0]!.title}.`)),
        );
      // For the sake of larger letters words are explained on the next sheet, and the back says so.
      const explained = words(has(back!, WORDS_NEXT) ? [third!, ...rest] : [back!]);
      for (const { word, means } of explainedIn(plan, glossary))
        expect(explained).toContain(run(`${word}: ${means}`));
    }
  },
);

it("explains the words of a roll's sheet and of a brake's that stand on it", () => {
  for (const { plan } of planned) {
    const entries = explainedIn(plan, glossary).map(({ word }) => word);
    if (plan.route === "brake")
      expect(entries).toEqual(
        expect.arrayContaining(["ram depth", "die opening", "springback", "template", "throat"]),
      );
    else {
      expect(entries).toContain("raise");
      // What is laid by the element line goes by no groove.
      expect(entries.includes("aligning groove")).toBe(plan.settings?.lying?.by !== "element");
    }
  }
  const cone = planned.find(({ plan }) => plan.settings?.lying?.by === "groove")!;
  expect(explainedIn(cone.plan, glossary).map(({ word }) => word)).toEqual([...ROLL_WORD_ENTRIES]);
  for (const entry of [...ROLL_WORD_ENTRIES, ...BRAKE_WORD_ENTRIES])
    expect(glossary.has(entry), entry).toBe(true);
});

it("starts from trials that were kept in the browser", async () => {
  const one = parts.find(({ report }) => report.part.name === "seed-funnel")!;
  const { report } = one;
  const roll = shop!.machines.find(({ name }) => name === report.forming.machine)!;
  if (roll.kind !== "plate roll") throw new RangeError(roll.kind);
  const item = trialCase(report.part, { catalogue: tables.catalogue, shop: shop! })!;
  const seen: AnyTold[] = [{ settingMm: 23, flat: true }];
  const { units } = report.part;
  const asked = { part: report.part.name, units, item, roll, zones: 1, trials: [] };
  const after = reportAfter(report, asked, seen);
  const [first] = await pagesOf(one, "letter", after);
  const start = run(
    `By this part's own trials, which overrule the plan's start and were made on an earlier blank: Last set ${sayIn(units).length(23)}, came out sprang back flat.`,
  );
  expect(words([first!])).toContain(start);
  expect(words(await pagesOf(one, "letter"))).not.toContain(start);
  // The rest of the sheet is as it was.
  expect(chosenPlan(after)!.steps.map(({ number, title }) => [number, title])).toEqual(
    chosenPlan(report)!.steps.map(({ number, title }) => [number, title]),
  );
});

import { expect, it } from "vitest";
import { rollSections } from "../../src/drawing/forming/rollSection.ts";
import { forceColumn } from "../../src/drawing/format.ts";
import type { FormingPlan } from "../../src/forming/plan.ts";
import { develop } from "../../src/report/develop.ts";
import type { Report } from "../../src/report/report.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { figureWords } from "../../src/site/forming/figureWords.ts";
import { footnotes, marked } from "../../src/site/forming/footnotes.ts";
import { SECTIONS_PAPER } from "../../src/site/forming/papers.ts";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import { plannedWords } from "../../src/site/forming/planned.ts";
import { sectionsOf } from "../../src/site/forming/sections.ts";
import { numbersIn } from "../../src/site/words/numbers.ts";

const { parts, shop, tables } = readBinder();

/** Every part of the demo job with its plan, its numbers told in either unit. */
const told = parts.flatMap(({ report: { part } }) =>
  (["mm", "in"] as const).flatMap((units) => {
    const developed = develop({ ...part, units }, { catalogue: tables.catalogue, ...(shop && { shop }) });
    if (developed.kind === "refused") throw new Error(JSON.stringify(developed.issues));
    const { report } = developed;
    const plan = chosenPlan(report);
    return plan ? [{ name: `${part.name} in ${units}`, units, report, plan }] : [];
  }),
);

const plain = (text: string) => text.replaceAll("\u00a0", " ");
/** The number at the head of some words, as it is read; every place that has the quantity must have this. */
const read = (text: string): number => Number(/-?[\d.]+/.exec(plain(text))?.[0]);
const step = ({ steps }: FormingPlan, id: string) => steps.find((one) => one.id === id);
const figure = (plan: FormingPlan, id: string, label: string) =>
  step(plan, id)?.figures.find((one) => one.label.startsWith(label));

/** What a step says of a figure, which stands in its few words. */
function said(one: (typeof told)[number], id: string, label: string): string {
  const found = figure(one.plan, id, label);
  if (!found) throw new Error(`${one.name}: ${id} has no ${label}`);
  return plain(figureWords(found, one.units));
}
const drawn = ({ report, plan }: (typeof told)[number]): string[] =>
  sectionsOf(report, plan, shop!).flatMap((one) =>
    rollSections(one, { paper: SECTIONS_PAPER }).labels.map(({ text }) => text),
  );

const rolled = told.filter(({ plan }) => plan.settings?.stopMm != null && plan.settings.zones.length === 1);

it.each(rolled)("$name: a setting reads the same in step, box, table and picture", (one) => {
  const { plan, units } = one;
  const column = (mm: number) => Number(numbersIn(units).column(mm));
  const pictures = drawn(one);
  for (const [id, pass] of [
    ["first-raise", "trial"],
    ["second-raise", "finished"],
  ] as const) {
    const start = plan.settings!.zones[0]!.passes.find((moment) => moment.id === pass)!.start!;
    const boxes = step(plan, id)!.toNote.map(({ planned }) => read(plannedWords(planned!, "mm", units)));
    const text = plain(step(plan, id)!.text);
    for (const [label, mm, box, picture] of [
      ["start at the large edge", start.largeMm, true, true],
      ["start at the small edge", start.smallMm, false, true],
      ["bearing beyond the small edge", start.smallBearingMm!, true, false],
      ["bearing beyond the large edge", start.largeBearingMm!, true, false],
    ] as const) {
      const words = said(one, id, label);
      expect(text, label).toContain(words);
      expect(read(words), label).toBe(column(mm));
      if (box) expect(boxes, label).toContain(column(mm));
      if (picture) expect(pictures.map(read), label).toContain(column(mm));
    }
  }
});

const gapped = rolled.filter(({ report }) => report.forming.closure.length > 0);

it.each(gapped)("$name: gaps and templates read the same in step, closure table and inspection", (one) => {
  const { report, units } = one;
  const column = (mm: number) => Number(numbersIn(units).column(mm));
  const row = (words: string) => report.forming.closure.find(({ mark }) => mark?.includes(words));
  for (const [label, mark] of [
    ["widest of the window", "start of"],
    ["never below", "cap"],
  ] as const) {
    const words = said(one, "first-measure", `gap at the large end, ${label}`);
    expect(plain(step(one.plan, "first-measure")!.text)).toContain(words);
    expect(read(words)).toBe(column(row(mark)!.large!.insideGapMm));
  }
  for (const end of ["large end", "small end"]) {
    const label = `template radius inside, ${end}`;
    const words = said(one, "close", label);
    expect(plain(step(one.plan, "close")!.text)).toContain(words);
    const nominal = report.forming.inspection!.rows.find(({ what }) => what.startsWith(label))!.nominalMm;
    expect(read(words)).toBe(column(nominal));
  }
});

const bent = told.filter(({ plan }) => plan.brake !== null);

it.each(bent)("$name: a force reads the same in step, box, table and check", ({ plan, report, units }) => {
  const most = plan.brake!.greatestForceKN;
  const words = numbersIn(units).force(most);
  expect(plain(step(plan, "tooling")!.text)).toContain(plain(words));
  expect(Number(forceColumn(most, units))).toBe(read(words));
  const own: Report["forming"]["checks"][number] | undefined = report.forming.checks.find(
    ({ id }) => id === "brake-force",
  );
  expect(plain(own?.advice ?? "")).toContain(plain(numbersIn(units).force(own?.value ?? NaN)));
});

it("has parts of both kinds in it", () => {
  expect(rolled.length).toBeGreaterThan(8);
  expect(gapped.length).toBeGreaterThan(4);
  expect(bent.length).toBeGreaterThan(4);
});

it.each(told)("$name: every figure of a step has the letter of its basis behind it", ({ plan, units }) => {
  const notes = footnotes(plan, units);
  expect(new Set(notes.map(({ mark }) => mark)).size).toBe(notes.length);
  for (const one of plan.steps) {
    const pieces = marked(one, units, notes);
    expect(pieces.map(({ text }) => text).join("")).toBe(plain(one.text));
    for (const { text, mark } of pieces) {
      if (mark === null) continue;
      const basis = notes.find((note) => note.mark === mark)!.basis;
      // The figure that stands before the letter rests on what the letter leads to.
      const own = one.figures.filter((figure) => {
        const words = plain(figureWords(figure, units));
        return text.endsWith(words) || text.endsWith(words.replace(/ (?:mm|in)$/, ""));
      });
      expect(
        own.map((figure) => figure.basis),
        `${one.id}: ${text}`,
      ).toContain(basis);
    }
  }
  const measured = plan.steps.find(({ id }) => id === "close");
  if (plan.route === "roll" && measured && measured.figures.length > 0)
    expect(marked(measured, units, notes).some(({ mark }) => mark !== null)).toBe(true);
});

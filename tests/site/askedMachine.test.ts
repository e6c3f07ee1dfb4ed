import { expect, it } from "vitest";
import type { Shop } from "../../src/forming/machine.ts";
import { settableStart } from "../../src/forming/settingProblem.ts";
import { formingCase } from "../../src/report/formingCase.ts";
import { layOut } from "../../src/report/layOut.ts";
import type { Report } from "../../src/report/report.ts";
import { partChart } from "../../src/site/bench/machines/partChart.ts";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import { rollOf } from "../../src/site/forming/rollOf.ts";
import { settingRows } from "../../src/site/forming/settingRows.ts";
import { REGIONS } from "../../src/site/machines/words.ts";
import type { TableAnswers } from "../../src/site/words/asked/answers.ts";
import { askedChecks } from "../../src/site/words/asked/checks.ts";
import { askedInspection } from "../../src/site/words/asked/inspection.ts";
import { askedMarking } from "../../src/site/words/asked/marking.ts";
import { askedClosure } from "../../src/site/words/asked/closure.ts";
import { askedRegion } from "../../src/site/words/asked/region.ts";
import { askedSpringback } from "../../src/site/words/asked/springback.ts";
import { askedSettings } from "../../src/site/words/asked/settings.ts";
import { SETTING_GROUPS } from "../../src/site/words/asked/settingGroups.ts";
import { numbersIn } from "../../src/site/words/numbers.ts";
import { reports, shop, SOURCES, tables, worth } from "./askedSums.ts";

/** Every sum of an answer, a line each: "Best: 1 + 2 = 3 mm". */
function* sums(numbers: string): Generator<{ text: string; came: number; told: number; half: number }> {
  for (const text of numbers.replaceAll("\u00a0", " ").split("\n")) {
    const [, left, told] = /^[^:]*: (?:[^=]*: )?(.*?) = (-?[\d.]+\d|\d)/.exec(text) ?? [];
    if (left === undefined || told === undefined) continue;
    const half = 0.5 * 10 ** -(told.split(".")[1]?.length ?? 0);
    yield { text, came: worth(left), told: Number(told), half };
  }
}

/** @param share what a sum of rounded numbers may be off by, of what comes out */
function keyed(answers: TableAnswers, share: number): number {
  let count = 0;
  for (const { name, rows } of answers.values())
    for (const { worked } of rows) {
      expect(worked.rule.length, name).toBeGreaterThan(20);
      expect(SOURCES, name).toContain(worked.basis);
      expect(`${worked.rule}${worked.numbers}`).not.toMatch(/NaN|undefined|Infinity|\[object/);
      for (const { text, came, told, half } of sums(worked.numbers)) {
        count++;
        expect(Math.abs(came - told), `${name}: ${text}`).toBeLessThan(half + share * Math.abs(came));
      }
    }
  return count;
}

function settingsOf(report: Report) {
  const plan = chosenPlan(report)!;
  const laid = layOut(report.part, tables);
  if (laid.kind !== "laid") throw new Error(report.part.name);
  const { settings } = plan;
  const roll = rollOf(plan, shop!)!;
  const answers = askedSettings({
    settings: settings!,
    item: formingCase(report.part, laid),
    roll,
    units: report.part.units,
  });
  return { settings: settings!, answers };
}

const rolled = reports.filter(([, report]) => chosenPlan(report)?.settings);

it.each(rolled)("%s: every setting of the bending roll is answered, and its sums come out", (_, report) => {
  const { settings, answers } = settingsOf(report);
  const rows = settingRows(settings, []);
  for (const { id } of SETTING_GROUPS) expect(answers.get(id)!.rows.length, id).toBe(rows.length);
  expect(answers.get("zone")!.rows.length).toBe(settings.zones.length);
  // Numbers of a sum are told to five figures or more.
  expect(keyed(answers, 2e-4)).toBeGreaterThan(10 * settings.zones.length);
});

it.each(rolled)("%s: what a sum of the settings comes to is what stands in the table", (_, report) => {
  const { settings, answers } = settingsOf(report);
  const say = numbersIn(report.part.units);
  const passes = settings.zones.flatMap((zone) => zone.passes);
  let found = 0;
  passes.forEach((pass, i) => {
    const told = (id: string, name: string) =>
      new RegExp(`^${name}: .* = ([\\d.-]+)\\s`, "m").exec(answers.get(id)!.rows[i]!.worked.numbers)?.[1];
    const start = settableStart(pass);
    const expected = [
      ["large", "Low", pass.large.lowMm],
      ["large", "Best", pass.large.bestMm],
      ["large", "High", pass.large.highMm],
      ["small", "Low", pass.small.lowMm],
      ["small", "Best", pass.small.bestMm],
      ["small", "High", pass.small.highMm],
      ["start", "Large end", start?.largeMm ?? null],
      ["start", "Small end", start?.smallMm ?? null],
      ["bearings", "Beyond the small edge", start?.smallBearingMm ?? null],
      ["bearings", "Beyond the large edge", start?.largeBearingMm ?? null],
    ] as const;
    for (const [id, name, mm] of expected) {
      if (mm !== null) found++;
      expect(told(id, name), `${id} ${name} ${pass.label}`).toBe(mm === null ? undefined : say.column(mm));
    }
  });
  expect(found).toBeGreaterThan(6);
});

it.each(reports)(
  "%s: where it lies on the chart of its machine is answered, and its sums come out",
  (_, report) => {
    const charted = partChart(report, shop as Shop, tables.catalogue);
    if (!charted) return;
    const { thickness: thicknessMm, units } = report.part;
    const answers = askedRegion({ ...charted, thicknessMm, units, shopUnits: shop!.units });
    expect(keyed(answers, 5e-4)).toBeGreaterThan(2);
    const { numbers } = answers.get("region")!.rows[0]!.worked;
    expect(numbers).toContain(`“${REGIONS[charted.region]}”`);
  },
);

const cased = (report: Report) => {
  const laid = layOut(report.part, tables);
  if (laid.kind !== "laid") throw new Error(report.part.name);
  return formingCase(report.part, laid);
};

it.each(reports.filter(([, { forming }]) => forming.closure.length > 0))(
  "%s: every figure of the closure table is answered, and is what its sum comes to",
  (_, report) => {
    const { closure } = report.forming;
    const { units } = report.part;
    const say = numbersIn(units);
    const answers = askedClosure(closure, cased(report), units);
    expect(answers.get("closed")!.rows.length).toBe(closure.length);
    // Lengths are told to a hundredth, and a radius goes into the gap twice over.
    expect(keyed(answers, 1e-4)).toBeGreaterThan(2 * closure.length);
    for (const end of ["large", "small"] as const) {
      const known = closure.flatMap((row) => row[end] ?? []);
      const { rows } = answers.get(end)!;
      expect(rows.length).toBe(known.length);
      known.forEach((one, i) => {
        const { numbers } = rows[i]!.worked;
        for (const [name, mm] of [
          ["Template level", one.insideLevelRadiusMm],
          ["Template square", one.insideSquareRadiusMm],
          ["Gap", one.insideGapMm],
        ] as const)
          expect(new RegExp(`^${name}: (?:.* = ([\\d.]+)\\s|Nought)`, "m").exec(numbers)?.[1], name).toBe(
            mm === 0 ? undefined : say.column(mm),
          );
      });
    }
  },
);

it.each(reports.filter(([, { forming }]) => forming.springback))(
  "%s: what springback asks is answered for every place, and its sums come out",
  (_, report) => {
    const { springback } = report.forming;
    const answers = askedSpringback(springback!, cased(report), report.part.units);
    expect(answers.get("springback")!.rows.length).toBe(springback!.places.length);
    expect(keyed(answers, 2e-4)).toBeGreaterThan(2);
  },
);

it("says what the shop's sizes are in its file where the part counts in inches, and only there", () => {
  const told = (name: string) => {
    const [, report] = reports.find(([one]) => one === name)!;
    const { forming } = report;
    const machine = shop!.machines.find((one) => one.name === forming.machine);
    const by = { checks: forming.checks, item: cased(report), machine, brake: undefined };
    const { thickness: thicknessMm, units } = report.part;
    const charted = partChart(report, shop!, tables.catalogue)!;
    return [
      askedChecks({ ...by, shopUnits: shop!.units }).get("capacity")!,
      askedRegion({ ...charted, thicknessMm, units, shopUnits: shop!.units }).get("region")!,
    ].map(({ rows }) => rows[0]!.worked.numbers.replaceAll("\u00a0", " "));
  };
  for (const numbers of told("dryer-stack-cone on Small roll"))
    expect(numbers).toMatch(/[Rr]ated thickness 0\.1575 in is 4 mm in the shop file/);
  for (const numbers of told("scalper-cone on Big roll")) expect(numbers).not.toContain("in the shop file");
});

it("takes away no number below nought, and names no limit's range twice over", () => {
  for (const [, report] of reports)
    for (const answers of [askedMarking(report), askedInspection(report)])
      for (const { rows } of answers.values())
        for (const { worked } of rows)
          expect(worked.numbers).not.toMatch(/− -|over and from|round \([^)]*\) .*arc of 0\.0+ /);
});

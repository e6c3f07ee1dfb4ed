import { expect, it } from "vitest";
import { zoneOfLabel } from "../../src/forming/zoneWords.ts";
import { formingCase } from "../../src/report/formingCase.ts";
import { layOut } from "../../src/report/layOut.ts";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import { askedBendLines } from "../../src/site/words/asked/bendLines.ts";
import { askedChecks } from "../../src/site/words/asked/checks.ts";
import { askedClosure } from "../../src/site/words/asked/closure.ts";
import { askedInspection } from "../../src/site/words/asked/inspection.ts";
import { askedSettings } from "../../src/site/words/asked/settings.ts";
import { answersOfStep, askedOfStep } from "../../src/site/words/asked/stepFigures.ts";
import type { Report } from "../../src/report/report.ts";
import { reports, shop, tables } from "./askedSums.ts";

/** Every table of answers of a part, as the bench has them. */
function answersOf(report: Report) {
  const laid = layOut(report.part, tables);
  if (laid.kind !== "laid") throw new Error(report.part.name);
  const item = formingCase(report.part, laid);
  const plan = chosenPlan(report)!;
  const { units } = report.part;
  const machine = shop!.machines.find(({ name }) => name === plan.machine)!;
  return {
    checks: askedChecks({
      checks: report.forming.checks,
      item,
      machine,
      brake: plan.brake,
      shopUnits: shop!.units,
    }),
    settings:
      plan.settings && machine.kind === "plate roll"
        ? askedSettings({ settings: plan.settings, item, roll: machine, units })
        : new Map<never, never>(),
    closure: askedClosure(report.forming.closure, item, units),
    bends: plan.brake ? askedBendLines(report, plan.brake) : new Map<never, never>(),
    inspection: askedInspection(report),
  };
}

/** What an answer tells as the figure, to its last place. */
const tells = (numbers: string, value: number): boolean =>
  [...numbers.matchAll(/\d+(?:\.(\d+))?/g)].some(
    ([text, places = ""]) => Math.abs(Number(text) - value) <= 0.5001 * 10 ** -places.length,
  );

const planned = reports.filter(([, report]) => chosenPlan(report));

it.each(planned)(
  "%s: what can be asked of a step is answered, with the figure that stands there",
  (_, report) => {
    const plan = chosenPlan(report)!;
    const all = answersOf(report);
    const perMm = report.part.units === "in" ? 1 / 25.4 : 1;
    const perKN = report.part.units === "in" ? 1 / 8.896443 : 1;
    let asked = 0;
    for (const step of plan.steps) {
      const of = askedOfStep(report, plan, step);
      const answers = answersOfStep(of, all);
      for (const [name, { rows }] of answers) {
        expect(rows.length, `${step.title}: ${name}`).toBeGreaterThan(0);
        const figures = step.figures.filter(
          ({ label }) => (zoneOfLabel(label)?.label ?? label) === name && !/^lines stop short/.test(name),
        );
        // Zones stand in one order in both.
        for (const [i, { value, unit, label }] of figures.entries()) {
          asked++;
          const { numbers } = rows[figures.length === rows.length ? i : 0]!.worked;
          const told = Math.abs(value) * (unit === "mm" ? perMm : unit === "kN" ? perKN : 1);
          expect(tells(numbers, told), `${step.title}: ${label} ${told}: ${numbers}`).toBe(true);
        }
      }
    }
    expect(asked).toBeGreaterThan(1);
  },
);

it("answers for template radius, gap, raise, stop, bend angle and force, where the part has them", () => {
  const names = new Set(
    planned.flatMap(([, report]) => {
      const plan = chosenPlan(report)!;
      return plan.steps.flatMap((step) =>
        [...askedOfStep(report, plan, step).keys()].map((name) => `${step.id}: ${name}`),
      );
    }),
  );
  for (const main of [
    "first-raise: start at the large edge",
    "first-raise: bearing beyond the small edge",
    "second-raise: tilt, small end higher",
    "first-measure: gap at the large end, widest of the window",
    "close: template radius inside, large end, held square to the element line",
    "stop: stop from the drop end of the roll face",
    "stop: reach past the stop when closed",
    "tooling: greatest force of a hit, about",
    "bend: bend angle of each line",
    "bend: force of each hit",
  ])
    expect(names, main).toContain(main);
});

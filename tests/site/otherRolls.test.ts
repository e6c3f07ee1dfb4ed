import { describe, expect, it } from "vitest";
import type { PlateRoll } from "../../src/forming/machine.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readFolder } from "../../src/input/readFolder.ts";
import { develop } from "../../src/report/develop.ts";
import { lotOf } from "../../src/site/forming/lot.ts";
import { printedSteps } from "../../src/site/forming/printed.ts";
import { neverOn } from "../../src/site/words/work.ts";

const tables = loadCatalogue();
const { parts, shop } = readFolder("demo-data", tables);

/** A part of the demo job on its rolls, as they would be with another arrangement. */
function on(arrangement: NonNullable<PlateRoll["arrangement"]>, name: string) {
  const { part } = parts.find(({ part }) => part.name === name)!;
  const machines = shop!.machines.map((one) => (one.kind === "plate roll" ? { ...one, arrangement } : one));
  const made = develop(part, { ...tables, shop: { ...shop!, machines } });
  if (made.kind === "refused") throw new Error(JSON.stringify(made.issues));
  const plan = made.report.forming.plans.find(({ route }) => route === "roll")!;
  return { report: made.report, plan };
}

/** What only a roll with an initial pinch has. */
const PINCH = /roll backwards|bending roll|pinch pressure|enter the pinch/;

describe.each(["pyramid", "double-pinch", "four-roll"] as const)("on a %s", (arrangement) => {
  it.each(["elevator-head-cone", "dust-main-sleeve"])(
    "%s has cautions, a lot and a sheet of its own, none of them a pinch roll's",
    (name) => {
      const { report, plan } = on(arrangement, name);
      expect(neverOn(plan)).toHaveLength(3);
      expect(neverOn(plan).join(" ")).not.toMatch(PINCH);
      const { groups } = lotOf(report, plan)!;
      expect(groups.map((one) => one.name)).toEqual(["Rolled", "Inspected"]);
      const { sides } = printedSteps({
        plan,
        units: report.part.units,
        title: report.part.title,
        known: new Map(),
        glossary: new Map(),
      });
      for (const { types } of sides)
        expect(Math.min(types.a4.points, types.letter.points)).toBeGreaterThan(10.5);
    },
  );
});

it("keeps a pinch roll's cautions on such a roll, and tells none of rolls on the brake", () => {
  expect(neverOn(on("initial-pinch", "elevator-head-cone").plan).join(" ")).toMatch(PINCH);
  expect(neverOn({ route: "brake" })).toEqual([]);
});

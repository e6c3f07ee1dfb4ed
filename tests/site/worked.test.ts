import { globSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readPart } from "../../src/input/readPart.ts";
import { develop } from "../../src/report/develop.ts";
import { keyFigures } from "../../src/site/words/keyFigures.ts";
import { workedFigures } from "../../src/site/words/worked.ts";

const tables = loadCatalogue();
const sources = readFileSync("content/sources.yaml", "utf8");

const reports = globSync("demo-data/parts/*.yaml")
  .filter((path) => !path.includes(".trials."))
  .flatMap((path) => {
    const { part } = readPart(readFileSync(path, "utf8"), { path, ...tables });
    const made = part && develop(part, { catalogue: tables.catalogue });
    return made?.kind === "report" ? [made.report] : [];
  });

it.each(reports.map((report) => [report.part.name, report] as const))(
  "%s: every figure at its head says how it was worked out, and from which source",
  (_, report) => {
    const worked = workedFigures(report, tables.catalogue.materials[report.part.material]!);
    for (const { name, value } of keyFigures(report)) {
      if (value === "none: a point") continue;
      const one = worked.get(name);
      expect(one, name).toBeDefined();
      expect(one?.basis === "derived here" || sources.includes(`\n${one?.basis ?? "?"}:`), one?.basis).toBe(
        true,
      );
    }
  },
);

/** The numbers of the sentence, worked out as it says, give the figure: within what its rounding leaves. */
it.each(
  reports
    .filter(({ cone }) => (cone?.outerRadiusMm ?? null) !== null)
    .map((report) => [report.part.name, report] as const),
)("%s: its radii and angle follow from the numbers told", (_, report) => {
  const worked = workedFigures(report, tables.catalogue.materials[report.part.material]!);
  const perUnit = report.part.units === "in" ? 25.4 : 1;
  for (const [name, exact] of [
    ["Outer radius", report.cone!.outerRadiusMm! / perUnit],
    ["Angle of the pattern", report.cone!.sectorDeg],
  ] as const) {
    const { numbers } = worked.get(name)!;
    const [sum = "", result = ""] = numbers.split(" = ");
    const [first, ...rest] = sum
      .replaceAll(",", "")
      .match(/\d+(?:\.\d+)?/g)!
      .map(Number);
    const sine = Math.sin((rest.at(-1)! * Math.PI) / 180);
    const value = name === "Outer radius" ? first! / (2 * sine) : 360 * sine;
    // Half a unit in the third decimal of the half angle, and in the last place of the diameter.
    const slack =
      (0.0005 * Math.PI) / 180 / Math.tan((rest.at(-1)! * Math.PI) / 180) +
      0.06 / (first! * (perUnit > 1 ? 10 : 1));
    expect(Math.abs(value / exact - 1), `${name}: ${numbers}`).toBeLessThan(slack);
    const told = Number(/\d[\d.,]*/.exec(result)![0].replaceAll(",", ""));
    expect(Math.abs(told / exact - 1), numbers).toBeLessThan(3e-4);
  }
});

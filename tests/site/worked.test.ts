import { globSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readPart } from "../../src/input/readPart.ts";
import { develop } from "../../src/report/develop.ts";
import { keyFigures } from "../../src/site/words/keyFigures.ts";
import { workedFigures } from "../../src/site/words/worked.ts";
import { keyIn } from "../tables/arithmetic.ts";

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
      const plainly = ["derived here", "common practice, no source"].includes(one?.basis ?? "");
      expect(plainly || sources.includes(`\n${one?.basis ?? "?"}:`), one?.basis).toBe(true);
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

/** The sum before the equals sign, keyed in again; what it is said to come to, and half of the last place of that. */
function keyed(numbers: string) {
  const [sum = "", after = ""] = numbers.replaceAll("\u00a0", " ").split(" = ");
  const told = /^[\d.]+/.exec(after)?.[0].replace(/\.$/, "") ?? "";
  const bare = sum
    .replaceAll(/ \([^()]*ft²\)| (?:kg\/m³|m²|mm|in²|in|lb\/in³)(?= |$)/g, "")
    .replaceAll(" / ", " ÷ ");
  const half = 0.5 * 10 ** -(told.split(".")[1]?.length ?? 0);
  return { left: keyIn(bare), right: Number(told), half };
}

it.each(reports.map((report) => [report.part.name, report] as const))(
  "%s: girths and mass follow from the numbers told, in the units of the drawing",
  (_, report) => {
    const worked = workedFigures(report, tables.catalogue.materials[report.part.material]!);
    const names = keyFigures(report)
      .map(({ name }) => name)
      .filter((name) => /^(?:Girth|Mass)/.test(name));
    expect(names.length).toBeGreaterThan(report.cone?.outerRadiusMm == null ? 1 : 0);
    for (const name of names) {
      const { numbers } = worked.get(name)!;
      const { left, right, half } = keyed(numbers);
      // Each number of the mass has five figures or as many as its rounding leaves; those of a girth a place more than it.
      const slack = name.startsWith("Mass") ? 4e-4 * right : half;
      expect(Math.abs(left - right), `${name}: ${numbers}`).toBeLessThan(half + slack);
      if (report.part.units === "in") expect(numbers, name).not.toMatch(/ mm\b| kg(?!\/m³)/);
    }
  },
);

it.each([
  ["eccentric-cone", "inside", 0.4],
  ["eccentric-cone", "outside", 0.5],
  ["eccentric-cone", "middle", 0.5],
  ["square-to-round", "outside", 0.4],
  ["square-to-round", "middle", 0.5],
] as const)(
  "a thick %s, measured %s, has girths that follow from the numbers told",
  (shape, measured, neutral) => {
    const ends =
      shape === "eccentric-cone"
        ? `largeEnd: { diameter: 900, measured: ${measured} }\nsmallEnd: { diameter: 400, measured: inside, offset: [120, 40] }`
        : `rectangularEnd: { length: 900, width: 700, measured: ${measured} }\nroundEnd: { diameter: 400, measured: ${measured}, offset: [50, 20] }`;
    const text = `shape: ${shape}\ntitle: Thick\nunits: mm\nmaterial: s235\nthickness: 16\nneutral: ${neutral}\nheight: 500\n${ends}\n`;
    const { part } = readPart(text, { path: "thick.yaml", ...tables });
    const made = develop(part!, { catalogue: tables.catalogue });
    if (made.kind !== "report") throw new Error(shape);
    const worked = workedFigures(made.report, tables.catalogue.materials["s235"]!);
    const girths = [...worked].filter(([name]) => name.startsWith("Girth"));
    expect(girths).toHaveLength(2);
    for (const [name, { numbers }] of girths) {
      const { left, right, half } = keyed(numbers);
      expect(Math.abs(left - right), `${name}: ${numbers}`).toBeLessThan(half + 0.05);
    }
  },
);

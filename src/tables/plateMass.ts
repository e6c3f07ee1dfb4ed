import { plain } from "../drawing/format.ts";
import { inchFraction } from "../geometry/inches.ts";
import { KG_PER_POUND, MM_PER_INCH, type Units } from "../geometry/units.ts";
import type { Catalogue } from "../shapes/catalogue.ts";
import { halfUp } from "./halfUp.ts";
import { groupsBy, sourcesOf, type MaterialGroup } from "./materialGroups.ts";
import { rowOf } from "./steps.ts";
import type { ReckonerTable, Step } from "./table.ts";

const THICKNESSES_MM = [
  0.5, 0.6, 0.7, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 16, 18, 20, 22, 25, 30, 35, 40, 50,
];
/** Thirty-seconds of an inch. */
const THIRTY_SECONDS = [
  1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 22, 24, 28, 32, 36, 40, 44, 48, 56, 64,
];
const MM_PER_FOOT = 12 * MM_PER_INCH;
const MM_PER_METRE = 1000;

/** kg/m² of plate: thickness in metres times density. */
const perSquareMetre = (mm: number, densityKgM3: number): number => (mm * densityKgM3) / MM_PER_METRE;
/** kg/m² → lb/ft² */
const perSquareFoot = (kgM2: number): number => (kgM2 / KG_PER_POUND) * (MM_PER_FOOT / MM_PER_METRE) ** 2;

interface Thickness {
  readonly mm: number;
  /** How the table names it. */
  readonly cells: readonly string[];
}

const inMillimetres = (mm: number): Thickness => ({
  mm,
  cells: [plain(mm, 1), halfUp(mm / MM_PER_INCH, 4)],
});

function inInches(thirtySeconds: number): Thickness {
  const inches = thirtySeconds / 32;
  const mm = inches * MM_PER_INCH;
  return { mm, cells: [inchFraction(mm, 32), halfUp(inches, 4), halfUp(mm, 2)] };
}

/** Both masses of one plate, that of the table's own units first. */
function masses(mm: number, densityKgM3: number, units: Units): readonly [string, string] {
  const metric = perSquareMetre(mm, densityKgM3);
  const [kg, lb] = [halfUp(metric, 2), halfUp(perSquareFoot(metric), 2)];
  return units === "in" ? [lb, kg] : [kg, lb];
}

/** One thickness by hand, in the first of the materials. */
function workedMass(units: Units, { names, material }: MaterialGroup, mm: number): readonly Step[] {
  const metric = `${plain(mm, 4)} ÷ 1000 × ${material.densityKgM3}`;
  const [first, second] = masses(mm, material.densityKgM3, units);
  const steps: readonly [Step, Step] = [
    { what: "Kilograms a square metre", sum: metric, is: `${units === "in" ? second : first} kg/m²` },
    {
      what: "Pounds a square foot",
      sum: `${metric} × 0.204816`,
      is: `${units === "in" ? first : second} lb/ft²`,
    },
  ];
  const plate =
    units === "in"
      ? { what: "A plate of 4 ft × 8 ft", sum: `4 × 8 × ${first}`, is: `${halfUp(32 * Number(first), 0)} lb` }
      : {
          what: "A plate of 3 m × 1.5 m",
          sum: `3 × 1.5 × ${first}`,
          is: `${halfUp(4.5 * Number(first), 0)} kg`,
        };
  return [{ ...steps[0], what: `${names}: ${steps[0].what.toLowerCase()}` }, steps[1], plate];
}

/** Mass of plate for each square metre and square foot, by thickness and material. */
export function plateMass(units: Units, materials: Catalogue["materials"]): ReckonerTable {
  const inches = units === "in";
  const groups = groupsBy(materials, ({ densityKgM3 }) => String(densityKgM3));
  const thicknesses = inches ? THIRTY_SECONDS.map(inInches) : THICKNESSES_MM.map(inMillimetres);
  const rows = thicknesses.map(({ mm, cells }) => [
    ...cells,
    ...groups.flatMap(({ material: { densityKgM3 } }) => masses(mm, densityKgM3, units)),
  ]);
  const row = rowOf(rows, [inches ? "3/8" : "8"]);
  const entries = inches ? 3 : 2;
  const perArea = inches ? ["lb/ft²", "kg/m²"] : ["kg/m²", "lb/ft²"];
  return {
    id: inches ? "plate-mass-inch" : "plate-mass-mm",
    goesBy: ["gauges", "materials"],
    twin: inches ? "plate-mass-mm" : "plate-mass-inch",
    title: `Mass of plate, ${inches ? "inches" : "millimetres"}`,
    about: "What a square metre or a square foot of plate weighs, by its thickness and material.",
    use: [
      "Take the area of the blank, or of the rectangle it is cut from, times the figure of the table.",
      `The thickness is the nominal one. For a sheet gauge look up its thickness first and take as much of the row of 1 ${units}: ${inches ? "0.1345 in are 0.1345 times it" : "3.4 mm are 3.4 times it"}. A zinc coating is not counted.`,
    ],
    formula: ["kg/m² = thickness in mm ÷ 1000 × density in kg/m³", "lb/ft² = kg/m² × 0.204816"],
    columns: [
      ...(inches ? ["in", "in", "mm"] : ["mm", "in"]).map((unit, i) => ({
        head: inches && i === 1 ? "Decimal" : "Thickness",
        unit,
      })),
      ...groups.flatMap(({ names, material: { densityKgM3 } }) =>
        perArea.map((unit) => ({ group: `${names}: ${densityKgM3} kg/m³`, head: "mass", unit })),
      ),
    ],
    entries,
    rows,
    worked: {
      row,
      columns: [entries, entries + 1],
      steps: workedMass(units, groups[0] as MaterialGroup, thicknesses[row]?.mm ?? 0),
    },
    basis: [...sourcesOf(materials, "density"), "en-10029-1991"],
    caution:
      "Plate may be delivered thicker than its nominal size and so heavier: EN 10029:1991, class A, lets plate of 3 to 5 mm be 0.8 mm thicker. Leave room for that, add what hangs on it, and let a trained person choose the lifting gear.",
  };
}

import { fixed, inchFraction, plain } from "../drawing/format.ts";
import { KG_PER_POUND, MM_PER_INCH, type Units } from "../geometry/units.ts";
import type { Catalogue } from "../shapes/catalogue.ts";
import { groupsBy, sourcesOf } from "./materialGroups.ts";
import { rowOf } from "./steps.ts";
import type { Column, ReckonerTable } from "./table.ts";

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

/** Mass of plate for each square metre and square foot, by thickness and material. */
export function plateMass(units: Units, materials: Catalogue["materials"]): ReckonerTable {
  const inches = units === "in";
  const groups = groupsBy(materials, ({ densityKgM3 }) => String(densityKgM3));
  const thicknesses = inches ? THIRTY_SECONDS.map((n) => (n / 32) * MM_PER_INCH) : THICKNESSES_MM;
  const entry = (mm: number) =>
    inches
      ? [inchFraction(mm, 32), fixed(mm / MM_PER_INCH, 4), fixed(mm, 3)]
      : [plain(mm, 1), fixed(mm / MM_PER_INCH, 4)];
  const row = (mm: number): string[] => [
    ...entry(mm),
    ...groups.flatMap(({ material: { densityKgM3 } }) => {
      const kgM2 = perSquareMetre(mm, densityKgM3);
      return inches
        ? [fixed(perSquareFoot(kgM2), 2), fixed(kgM2, 2)]
        : [fixed(kgM2, 2), fixed(perSquareFoot(kgM2), 2)];
    }),
  ];
  const [first, second] = inches ? ["lb/ft²", "kg/m²"] : ["kg/m²", "lb/ft²"];
  const columns: Column[] = groups.flatMap(({ names, material: { densityKgM3 } }) => {
    const group = `${names}: ${densityKgM3} kg/m³`;
    return [
      { group, head: "mass", unit: first },
      { group, head: "mass", unit: second },
    ];
  });
  const rows = thicknesses.map(row);
  const shown = inches ? "3/8" : "8";
  const at = rowOf(rows, [shown]);
  const mm = thicknesses[at] as number;
  const density = groups[0]?.material.densityKgM3 ?? 0;
  const kgM2 = perSquareMetre(mm, density);
  const entries = inches ? 3 : 2;
  const toPounds = {
    what: `Pounds a square foot, of ${plain(kgM2, 4)} kg/m²`,
    sum: `${plain(kgM2, 4)} × 0.204816`,
    is: `${fixed(perSquareFoot(kgM2), 2)} lb/ft²`,
  };
  const plate = inches
    ? {
        what: "A plate of 4 ft × 8 ft",
        sum: `4 × 8 × ${fixed(perSquareFoot(kgM2), 2)}`,
        is: `${fixed(32 * Number(fixed(perSquareFoot(kgM2), 2)), 0)} lb`,
      }
    : {
        what: "A plate of 3 m × 1.5 m",
        sum: `3 × 1.5 × ${fixed(kgM2, 2)}`,
        is: `${fixed(4.5 * Number(fixed(kgM2, 2)), 0)} kg`,
      };
  return {
    id: inches ? "plate-mass-inch" : "plate-mass-mm",
    twin: inches ? "plate-mass-mm" : "plate-mass-inch",
    title: `Mass of plate, ${inches ? "inches" : "millimetres"}`,
    about: "What a square metre or a square foot of plate weighs, by its thickness and material.",
    use: [
      "Take the area of the blank, or of the rectangle it is cut from, times the figure of the table.",
      `The thickness is the nominal one. For a sheet gauge look up its thickness first and take as much of the row of 1 ${units}: ${inches ? "0.1345 in are 0.1345 times it" : "3.4 mm are 3.4 times it"}. A zinc coating is not counted.`,
    ],
    formula: ["kg/m² = thickness in mm ÷ 1000 × density in kg/m³", "lb/ft² = kg/m² × 0.204816"],
    columns: [
      ...(inches
        ? [
            { head: "Thickness", unit: "in" },
            { head: "Decimal", unit: "in" },
            { head: "Thickness", unit: "mm" },
          ]
        : [
            { head: "Thickness", unit: "mm" },
            { head: "Thickness", unit: "in" },
          ]),
      ...columns,
    ],
    entries,
    rows,
    worked: {
      row: at,
      columns: [entries, entries + 1],
      steps: [
        {
          what: `${groups[0]?.names ?? ""}, ${plain(mm, 4)} mm`,
          sum: `${plain(mm, 4)} ÷ 1000 × ${density}`,
          is: `${fixed(kgM2, 2)} kg/m²`,
        },
        toPounds,
        plate,
      ],
    },
    basis: [...sourcesOf(materials, "density"), "en-10029-1991"],
    caution:
      "Plate may be delivered thicker than its nominal size and so heavier: EN 10029:1991, class A, lets plate of 3 to 5 mm be 0.8 mm thicker. Leave room for that, add what hangs on it, and let a trained person choose the lifting gear.",
  };
}

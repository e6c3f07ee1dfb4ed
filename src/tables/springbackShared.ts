import { fixed } from "../drawing/format.ts";
import { widePlate, yieldBand, type Elastic } from "../forming/springback.ts";
import type { Catalogue } from "../shapes/catalogue.ts";
import { groupsBy, sourcesOf, type MaterialGroup } from "./materialGroups.ts";
import { steps } from "./steps.ts";
import type { Column } from "./table.ts";

/** Radius of the middle of the plate over its thickness; both tables share them. [-] */
export const RADII = [
  ...steps(5, 30, 5),
  ...steps(40, 100, 10),
  ...steps(120, 200, 20),
  ...steps(225, 300, 25),
  ...steps(350, 500, 50),
];
export const WORKED = 60;
/** [mm] */
export const THICKNESS = 8;
const FLAT = "flat";

/** Two plates a material, of a millimetre: as its grade says, and as strong as it may well be. */
export interface Bent {
  readonly group: MaterialGroup;
  readonly plates: readonly Elastic[];
}

export function bentOf(materials: Catalogue["materials"]): Bent[] {
  const alike = groupsBy(materials, ({ yieldMPa, youngsGPa, poisson }) =>
    [yieldMPa, youngsGPa, poisson].join(),
  );
  return alike.map((group) => ({
    group,
    plates: yieldBand(widePlate(1, group.material, group.material.yieldMPa)),
  }));
}

export const columnsOf = (bent: readonly Bent[], entry: string): Column[] => [
  { head: entry },
  ...bent.flatMap(({ group: { names, material } }) => [
    { group: names, head: "as its grade", unit: `${material.yieldMPa} MPa` },
    { group: names, head: "stronger", unit: `${fixed(1.4 * material.yieldMPa, 0)} MPa` },
  ]),
];

/** More than so many times over hangs on the last MPa of a yield strength: as good as flat. */
const MOST = 10;

/** Radius over radius, to three places. */
export function ratio(value: number): string {
  if (!Number.isFinite(value)) return FLAT;
  return value > MOST ? `> ${MOST}` : fixed(value, 3);
}

export const COMMON_USE = [
  "Springback is what a bend opens again when the load is taken off. The radius is that of the middle of the plate’s thickness, square to the element line: the inside radius and half the thickness.",
  "The first column of a material reckons with the yield strength that its grade promises, the second with 1.4 times as much, for plate is usually stronger than its grade; with a certificate, judge between them.",
];
export const CAUTION =
  "A start for the first blank, never a promise: real plate hardens as it is bent, stainless above all, and springs back more. Set by small steps and a template, with the machine’s manual first.";

/** The numbers both worked rows begin with. */
export function wideSteps({ group: { material } }: Bent, [plate]: readonly Elastic[]) {
  const [strength, stiffness] = [fixed(plate?.yieldMPa ?? 0, 2), fixed(plate?.youngsMPa ?? 0, 0)];
  return {
    strength,
    stiffness,
    first: [
      {
        what: `${material.name}, yield of wide plate`,
        sum: `2 × ${material.yieldMPa} ÷ √(3)`,
        is: `${strength} MPa`,
      },
      {
        what: "Stiffness of wide plate",
        sum: `${material.youngsGPa} × 1000 ÷ (1 − ${material.poisson}²)`,
        is: `${stiffness} MPa`,
      },
    ],
  };
}

/** The cubic, wide plate, the band of yields, and the materials' own figures. */
export const basisOf = (materials: Catalogue["materials"]): string[] => [
  "gardiner-1957-memory",
  "wagoner-2006",
  "common practice, no source",
  ...sourcesOf(materials, "strength"),
  ...sourcesOf(materials, "elastic"),
];

export const FORMULA = [
  "loaded radius ÷ free radius = 4x³ − 3x + 1, with x = (loaded radius ÷ thickness) × yield ÷ stiffness; from x = ½ on the plate springs back flat",
  "wide plate: yield = 2 ÷ √3 × the material’s; stiffness = Young’s modulus ÷ (1 − Poisson’s ratio²)",
];

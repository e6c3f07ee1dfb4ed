import { columnLength, fixed, plain } from "../drawing/format.ts";
import { nearestFraction } from "../geometry/inches.ts";
import { degrees } from "../geometry/angle.ts";
import type { Units } from "../geometry/units.ts";
import { GREATEST_RATIO, coneForm, conesBetween, perThickness, STEEPEST, type Cone } from "./coneForm.ts";
import type { Size } from "./coneSizes.ts";
import { coneWorked } from "./coneWorked.ts";
import { rowOf } from "./steps.ts";
import { NONE, type Column, type ReckonerTable } from "./table.ts";

/** What a table of cones is about. Lengths in its own units. */
export interface ConeTableOrder {
  readonly id: string;
  readonly twin?: string;
  readonly title: string;
  readonly about: string;
  /** What the sizes are, and how they are measured. */
  readonly sizesAre: string;
  readonly units: Units;
  readonly sizes: readonly Size[];
  readonly heights: readonly number[];
  /** How much larger the large end is at least: nearer ends are joined otherwise. [-] */
  readonly leastRatio: number;
  readonly basis: readonly string[];
  /** The worked row by its ends and height. */
  readonly worked: { readonly large: number; readonly small: number; readonly height: number };
  /** The plate that the worked row is corrected for. */
  readonly plate: { readonly thickness: number; readonly face: "inside" | "outside" };
}

const FORMULA = [
  "half angle = arctan((large − small) ÷ 2 ÷ height); slant = √(height² + ((large − small) ÷ 2)²)",
  "radius = diameter ÷ (2 × sin(half angle)); sector angle = 360° × sin(half angle)",
  "chord = 2 × radius × sin(sector angle ÷ 2)",
  "radii, for each 1 of thickness = 1 ÷ sin(2 × half angle)",
];
const CAUTION =
  "Cut blanks are heavy and sharp, and rolls draw in hands and gloves: the machine’s manual and trained hands come first. For a part that is to be made write a part file: it is checked against the machine, and thickness, seam and gap are allowed for.";

/** How to go from the middle of the thickness to the sizes that a drawing gives; the likelier way first. */
const howToCorrect = ({ face }: ConeTableOrder["plate"]): string =>
  face === "inside"
    ? "Where the diameters are inside ones, add the last column times the thickness to both radii; where they are outside ones, take it off."
    : "Where the diameters are outside ones, as a pipe’s are, take the last column times the thickness off both radii; where they are inside ones, add it.";

/** Lengths in millimetres stand alone; inches have decimals and the nearest fraction. */
function lengthCells(mm: number, units: Units): string[] {
  const decimal = columnLength(mm, units);
  return units === "mm" ? [decimal] : [decimal, nearestFraction(mm) ?? NONE];
}

function lengthColumns(group: string, head: string, units: Units): Column[] {
  if (units === "mm") return [{ group, head, unit: units }];
  const of = head === "" ? group : `${group}, ${head}`;
  return [
    { group: of, head: "decimal", unit: units },
    { group: of, head: "nearest", unit: units },
  ];
}

function rowOfCone(cone: Cone, units: Units, named: boolean): string[] {
  const form = coneForm(cone, units);
  const { large, small, height } = cone;
  return [
    ...(named ? [`${large.number ?? ""} × ${small.number ?? ""}`] : []),
    ...[large.diameter, small.diameter, height].map((length) => plain(length, 3)),
    fixed(degrees(form.halfAngleRad), 2),
    ...[form.slantMm, form.outerMm, form.innerMm].flatMap((mm) => lengthCells(mm, units)),
    fixed(degrees(form.sectorRad), 2),
    ...[form.outerChordMm, form.innerChordMm].flatMap((mm) => lengthCells(mm, units)),
    fixed(perThickness(form.halfAngleRad), 3),
  ];
}

/**
 * Flat patterns of right cones between given diameters, in two heights each.
 *
 * @see derived here; the closed forms recompute net-of-a-frustum
 */
export function coneTable(order: ConeTableOrder): ReckonerTable {
  const { units, sizes, leastRatio, worked } = order;
  const named = sizes.some(({ number }) => number !== undefined);
  const entries = named ? 4 : 3;
  const rows = conesBetween(order).map((cone) => rowOfCone(cone, units, named));
  const row = rowOf(
    rows.map((cells) => cells.slice(entries - 3)),
    [worked.large, worked.small, worked.height].map((length) => plain(length, 3)),
  );
  return {
    id: order.id,
    ...(order.twin !== undefined && { twin: order.twin }),
    title: order.title,
    about: order.about,
    use: [
      order.sizesAre,
      "The table takes both diameters to the middle of the plate’s thickness, and the height straight between the two end planes. The half angle lies between centre line and wall; the sector angle is that of the flat pattern at its centre.",
      `${howToCorrect(order.plate)} Slant and sector angle stay as they are, and the chords change as their radii do. That holds with the ends dressed level.`,
      `Pairs are those whose large end is ${leastRatio} to ${GREATEST_RATIO} times the small one, each with the shortest round heights that keep the half angle to ${STEEPEST.join("° and to ")}°. Chords are straight from corner to corner of an edge: set the pattern out by them, and check the arc with a tape against 3.1416 × diameter. Nothing is added for a weld gap or a lap.`,
    ],
    formula: FORMULA,
    columns: [
      ...(named ? [{ head: "Pipe sizes" }] : []),
      ...["Large", "Small", "Height"].map((head) => ({ head, unit: units })),
      { head: "Half angle", unit: "°" },
      ...(units === "mm" ? [{ head: "Slant", unit: units }] : lengthColumns("Slant", "", units)),
      ...lengthColumns("Radius", "large edge", units),
      ...lengthColumns("Radius", "small edge", units),
      { head: "Sector angle", unit: "°" },
      ...lengthColumns("Chord", "large edge", units),
      ...lengthColumns("Chord", "small edge", units),
      { head: "Radii, for each 1 of thickness" },
    ],
    entries,
    block: entries - 3,
    rows,
    worked: coneWorked(order, { cells: rows[row] as string[], row, entries }),
    basis: order.basis,
    checked: ["net-of-a-frustum"],
    caution: CAUTION,
  };
}

import { fixed } from "../drawing/format.ts";
import { nearestFraction } from "../geometry/inches.ts";
import { MM_PER_INCH, type Units } from "../geometry/units.ts";
import { rowOf, steps } from "./steps.ts";
import { NONE, type Column, type ReckonerTable } from "./table.ts";

interface Kind {
  readonly id: string;
  readonly twin: string;
  readonly title: string;
  readonly chords: readonly number[];
  readonly radii: readonly number[];
  readonly places: number;
  /** The worked row, its chord, and a depth that was measured instead. */
  readonly worked: { readonly radius: number; readonly chord: number; readonly measured: number };
}

const KINDS: Readonly<Record<Units, Kind>> = {
  mm: {
    id: "template-mm",
    twin: "template-inch",
    title: "Depth of a template, millimetres",
    chords: [50, 100, 150, 200, 250, 300, 400, 500, 600, 800, 1000],
    radii: [
      ...[50, 60, 80],
      ...steps(100, 300, 25),
      ...steps(350, 500, 50),
      ...steps(600, 1000, 100),
      ...steps(1200, 2000, 200),
      ...[2500, 3000, 4000, 5000],
    ],
    places: 2,
    worked: { radius: 500, chord: 300, measured: 25 },
  },
  in: {
    id: "template-inch",
    twin: "template-mm",
    title: "Depth of a template, inches",
    chords: [4, 6, 8, 12, 18, 24, 36],
    radii: [
      ...steps(2, 12, 1),
      ...steps(14, 24, 2),
      ...steps(27, 48, 3),
      ...steps(54, 96, 6),
      108,
      120,
      144,
      180,
    ],
    places: 3,
    worked: { radius: 20, chord: 12, measured: 1 },
  },
};

/** Depth of an arc under its chord: h = r − √(r² − c²/4); null where no such chord goes into the circle. */
function depth(radius: number, chord: number): number | null {
  return chord > 2 * radius ? null : radius - Math.sqrt(radius ** 2 - chord ** 2 / 4);
}

/**
 * How deep an arc is under a chord of a template or straightedge. @see derived here
 */
export function template(units: Units): ReckonerTable {
  const { id, twin, title, chords, radii, places, worked } = KINDS[units];
  const inches = units === "in";
  const cells = (radius: number, chord: number): string[] => {
    const found = depth(radius, chord);
    if (found === null) return inches ? [NONE, NONE] : [NONE];
    const decimals = fixed(found, places);
    return inches ? [decimals, nearestFraction(found * MM_PER_INCH) ?? NONE] : [decimals];
  };
  const rows = radii.map((radius) => [String(radius), ...chords.flatMap((chord) => cells(radius, chord))]);
  const columns: Column[] = chords.flatMap((chord): Column[] =>
    inches
      ? [
          { group: `Chord ${chord} in`, head: "depth", unit: "in" },
          { group: `Chord ${chord} in`, head: "nearest", unit: "in" },
        ]
      : [{ group: "Depth over a chord of", head: String(chord), unit: "mm" }],
  );
  const { radius, chord, measured } = worked;
  const [deep = NONE, near] = cells(radius, chord);
  const at = 1 + chords.indexOf(chord) * (inches ? 2 : 1);
  const shown = radius ** 2 - (chord / 2) ** 2;
  return {
    id,
    twin,
    title,
    about:
      "How to check a rolled radius with a template or a straightedge: the depth of the arc under its chord.",
    use: [
      "A template is a piece of thin sheet cut to the radius wanted. The chord is its straight width, corner to corner; the depth is how far the arc stands off the middle of the chord.",
      "Cut it to the depth of the table, or lay a straightedge as long as the chord across the inside of the bend and measure how deep the plate lies under its middle. The radius is then that of the face that is touched, the inside, and not of the middle of the plate.",
      "On a cone the template is held square to an element line, a straight line down the wall, and its radius is the inside template radius of the part’s sheet at that place; it is another one at each end.",
      `A dash means that the chord does not go into the circle.${inches ? " Nearest gives a fraction within 2 % of the depth, where a rule has one." : ""}`,
    ],
    formula: [
      "depth = radius − √(radius² − (chord ÷ 2)²)",
      "the other way: radius = chord² ÷ (8 × depth) + depth ÷ 2",
    ],
    columns: [{ head: "Radius", unit: units }, ...columns],
    entries: 1,
    rows,
    worked: {
      row: rowOf(rows, [String(radius)]),
      columns: [at],
      steps: [
        {
          what: `Chord ${chord} ${units}, half of it squared`,
          sum: `(${chord} ÷ 2)²`,
          is: String((chord / 2) ** 2),
        },
        { what: "Under the root", sum: `${radius}² − ${(chord / 2) ** 2}`, is: String(shown) },
        {
          what: "Depth",
          sum: `${radius} − √(${shown})`,
          is: `${deep} ${units}${near === undefined || near === NONE ? "" : `, nearest ${near}`}`,
        },
        {
          what: `Measured ${measured} ${units} instead, the radius is`,
          sum: `${chord}² ÷ (8 × ${measured}) + ${measured} ÷ 2`,
          is: `${fixed(chord ** 2 / (8 * measured) + measured / 2, 1)} ${units}: too tight`,
        },
      ],
    },
    basis: ["derived here"],
    caution:
      "Stop the rolls, take the pressure off and support the piece before anybody reaches in to measure: under load a bend is tighter than it will be, and hands are drawn in. The machine’s manual comes first.",
  };
}

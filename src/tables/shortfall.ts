import { fixed, plain } from "../drawing/format.ts";
import { rowOf } from "./steps.ts";
import type { ReckonerTable } from "./table.ts";

const DIVISIONS = [4, 6, 8, 10, 12, 16, 18, 20, 24, 30, 32, 36, 40, 48, 60, 64, 72, 96];
const WORKED = 12;
const DIAMETER = 600;

function reckon(n: number) {
  const half = Math.PI / n;
  return {
    chord: 1000 * Math.sin(half),
    arc: 1000 * half,
    rise: 500 * (1 - Math.cos(half)),
    /** For 1000 of girth: the chords make n/π · sin(π/n) of it. */
    short: 1000 * (1 - Math.sin(half) / half),
  };
}

function row(n: number): string[] {
  const { chord, arc, rise, short } = reckon(n);
  return [
    String(n),
    plain(360 / n, 2),
    fixed(chord, 3),
    fixed(arc, 3),
    fixed(rise, 2),
    fixed(Math.PI * short, 2),
    fixed(short, 2),
    fixed(short / 10, 3),
  ];
}

/** What a girth loses when it is stepped off in chords. @see derived here */
export function shortfall(): ReckonerTable {
  const rows = DIVISIONS.map(row);
  const { chord, arc, rise, short } = reckon(WORKED);
  const perDiameter = fixed(Math.PI * short, 2);
  return {
    id: "shortfall",
    title: "Shortfall by number of divisions",
    about:
      "How much too short a girth comes out when it is stepped off with dividers, and what to step instead.",
    use: [
      "The girth is the length once round an end. Dividers set on the round end step chords, straight lines from mark to mark, and a chord is shorter than the arc over it: the blank comes out too small by the shortfall.",
      "Step the arc of the table instead of the chord, or lay a tape along the edge. Where the pattern’s edge is itself curved, as a cone’s is, a tape along it is surest.",
      "Lengths are for 1000 of diameter or girth, in millimetres, inches or any other unit.",
    ],
    formula: [
      "chord = diameter × sin(180° ÷ divisions)",
      "arc = diameter × π ÷ divisions",
      "chords ÷ girth = divisions ÷ π × sin(180° ÷ divisions); the shortfall is what is missing to 1",
      "the arc rises over the middle of its chord by diameter ÷ 2 × (1 − cos(180° ÷ divisions))",
    ],
    columns: [
      { head: "Divisions" },
      { head: "Angle of one", unit: "°" },
      { group: "For 1000 of diameter", head: "chord, too short" },
      { group: "For 1000 of diameter", head: "arc, right" },
      { group: "For 1000 of diameter", head: "arc rises over its chord by" },
      { group: "For 1000 of diameter", head: "short, once round" },
      { group: "Short", head: "for 1000 of girth" },
      { group: "Short", head: "of the girth", unit: "%" },
    ],
    entries: 1,
    rows,
    worked: {
      row: rowOf(rows, [String(WORKED)]),
      columns: [2, 3, 4, 5, 6, 7],
      steps: [
        { what: "Chord", sum: `1000 × sin(180° ÷ ${WORKED})`, is: fixed(chord, 3) },
        { what: "Arc", sum: `1000 × π ÷ ${WORKED}`, is: fixed(arc, 3) },
        { what: "Rise", sum: `1000 ÷ 2 × (1 − cos(180° ÷ ${WORKED}))`, is: fixed(rise, 2) },
        {
          what: "Short, once round",
          sum: `1000 × π − ${WORKED} × 1000 × sin(180° ÷ ${WORKED})`,
          is: perDiameter,
        },
        {
          what: "Short for 1000 of girth",
          sum: `1000 × (1 − ${WORKED} ÷ π × sin(180° ÷ ${WORKED}))`,
          is: fixed(short, 2),
        },
        {
          what: "Short of the girth",
          sum: `100 × (1 − ${WORKED} ÷ π × sin(180° ÷ ${WORKED}))`,
          is: `${fixed(short / 10, 3)} %`,
        },
        {
          what: `A girth of diameter ${DIAMETER} stepped so is short by`,
          sum: `${DIAMETER} ÷ 1000 × ${perDiameter}`,
          is: fixed((DIAMETER / 1000) * Number(perDiameter), 1),
        },
      ],
    },
    basis: ["derived here"],
  };
}

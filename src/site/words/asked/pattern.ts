import { capital } from "../../../drawing/capital.ts";
import { degrees as inDegrees } from "../../../geometry/angle.ts";
import type { Report } from "../../../report/report.ts";
import { closely, leansRound } from "../girth.ts";
import { degrees, numbersIn, type Numbers } from "../numbers.ts";
import { END_NAMES } from "../shapes.ts";
import type { Worked } from "../worked.ts";
import type { TableAnswers } from "./answers.ts";
import { PATTERN_FIGURES } from "./patternFigures.ts";

const DERIVED = "derived here";

interface Told {
  readonly row: string;
  readonly worked: Worked;
}

/** How the figures under the pattern came about. */
export function askedPattern(report: Report): TableAnswers {
  const say = numbersIn(report.part.units);
  const rows: Readonly<Record<(typeof PATTERN_FIGURES)[number]["id"], readonly Told[]>> = {
    cutting: cutting(report, say),
    loss: [{ row: "", worked: loss(report, say) }],
    hand: chords(report, say),
    exact: [{ row: "", worked: exact(report) }],
  };
  return new Map(PATTERN_FIGURES.map(({ id, name }) => [id, { name: capital(name), rows: rows[id] }]));
}

function cutting({ blanks }: Report, say: Numbers): Told[] {
  const own = blanks.filter(({ sameAs }) => sameAs === null);
  return own.map(({ piece, edges, cutLengthMm }) => ({
    row: own.length > 1 ? `piece ${piece}` : "",
    worked: {
      rule: "Once round the outline of the blank: all its edges together.",
      numbers: `${edges
        .filter(({ lengthMm }) => lengthMm > 0)
        .map(({ lengthMm }) => closely(say, lengthMm))
        .join(" + ")} = ${say.length(cutLengthMm)}`,
      basis: DERIVED,
    },
  }));
}

function loss(report: Report, say: Numbers): Worked {
  const { part, shape } = report;
  const { least, greatest } = shape.edgeLossMm;
  const rule =
    "Half the thickness × the tangent of the lean of the wall: an edge cut square to the plate lacks that of its end plane at one face. Where the wall leans unevenly, by its least lean and by its greatest.";
  if (part.edges === "square") return { rule, numbers: "The edges stay square.", basis: DERIVED };
  const round = leansRound(report);
  const leans = round.map(Math.abs);
  const sum = (lean: number, mm: number) =>
    `${closely(say, part.thickness)} / 2 × tan ${degrees(inDegrees(lean), 3)} = ${say.length(mm)}`;
  // Where it leans in on one side and out on the other it is upright in between.
  const upright = Math.min(...round) < 0 && Math.max(...round) > 0;
  const [low, high] = [sum(upright ? 0 : Math.min(...leans), least), sum(Math.max(...leans), greatest)];
  return { rule, numbers: low === high ? high : `${low}; ${high}`, basis: DERIVED };
}

function chords({ part, shape, hand }: Report, say: Numbers): Told[] {
  const count = hand.rows.filter(({ next }) => next !== null).length;
  const of = (key: "aMm" | "bMm") => hand.rows.reduce((sum, { next }) => sum + (next?.[key] ?? 0), 0);
  const told = (row: string, girthMm: number, chordsMm: number, shortMm: number): Told => ({
    row,
    worked: {
      rule: `The girth of the end less the ${count} straight distances between the points of the layout by hand: a chord is shorter than its arc.`,
      numbers: `${closely(say, girthMm)} − ${closely(say, chordsMm)} = ${say.length(shortMm)}`,
      basis: DERIVED,
    },
  });
  const { a, b } = END_NAMES[part.shape];
  return [
    told(`the ${a}`, shape.rims.a, of("aMm"), hand.shortfallMm.a),
    ...(shape.rims.b > 0 ? [told(`the ${b}`, shape.rims.b, of("bMm"), hand.shortfallMm.b)] : []),
  ];
}

const exact = ({ accuracy }: Report): Worked => ({
  rule: "The skin is unrolled line by line, and again with twice as many lines until the outline moves no more: the bound is what it moved last, and the height of its arcs over their chords. Girth and area of the pattern are compared with those of the skin, which are found in another way.",
  numbers: `${accuracy.stations} lines were unrolled.`,
  basis: DERIVED,
});

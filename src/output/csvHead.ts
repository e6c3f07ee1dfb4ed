import { CHECKED } from "../drawing/format.ts";
import { edgePaths, isSeam } from "../drawing/pattern/edges.ts";
import { inchFraction } from "../geometry/inches.ts";
import { add2, distance2, scale2, sub2, unit2 } from "../geometry/vector.ts";
import { cutRadii } from "../report/cutRadii.ts";
import type { Blank, Report } from "../report/report.ts";
import { cutPatterns, type FileUnits, numbersInWords, piecesAlike } from "./contour.ts";
import type { Cell } from "./csvText.ts";
import { type CutCorner, cutCorners } from "./cutCorners.ts";
import { NOUGHT } from "./origin.ts";

/** On a rule in inches, its unit behind it: a bare 5-3/16 is a date to some spreadsheets. */
const onRule = (mm: number): string => `${inchFraction(mm, CHECKED)} in`;

interface Measures {
  readonly units: FileUnits;
  readonly length: (mm: number) => number;
}

/**
 * What stands above the tables of one blank: which part and plate, where x and y begin, what is cut and what is the seam's
 * line; the radii of a right cone; the corners of the cut edge, and the straight distances between them for the tape. What is
 * taped or struck stands in fractions of an inch beside the decimals, as on the full-size pattern.
 */
export const headRows = (report: Report, blank: Blank, measures: Measures): Cell[][] => [
  ...aboutRows(report, blank, measures),
  ...coneRows(report, blank, measures),
  ...cornerRows(blank, measures),
  [],
];

function aboutRows(report: Report, blank: Blank, { units, length }: Measures): Cell[][] {
  const { part, blanks } = report;
  const alike = piecesAlike(report, blank);
  const count = cutPatterns(report).find((one) => one.blank.piece === (blank.sameAs ?? blank.piece))?.count;
  return [
    ["title", part.title],
    ["part", part.name],
    ...(blanks.length > 1
      ? [
          [
            "piece",
            `${numbersInWords(alike)} of ${blanks.length}${alike.length > 1 ? ": all of this form" : ""}`,
          ],
        ]
      : []),
    ...(count === undefined ? [] : [["to cut", count]]),
    ["material", part.material],
    [`thickness ${units}`, length(part.thickness)],
    ["units", units === "mm" ? "millimetres and degrees" : "inches and degrees"],
    ["face up", `${blank.faceUp} face up`],
    ["origin", `${NOUGHT} as drawn; x to the right and y up`],
    ["what is cut", "corners, girths and ordinates are those of the cut edge"],
    ["lines", linesSay(report)],
  ];
}

/** How the ends and the first and last line lie to the cut edge. */
function linesSay({ part }: Report): string {
  const { seam, trimAllowance } = part;
  const said = [
    ...(seam?.gap
      ? [
          "the first and the last line are the seam's lines before the gap is taken off and lie outside the cut edge: do not cut by them",
        ]
      : []),
    ...(seam?.joint === "lap" && seam.lap
      ? ["the lap runs on past the seam's line to the cut edge: do not cut by that line"]
      : []),
    ...(trimAllowance === true ? ["lines end on the finished edge, and the trim allowance lies beyond"] : []),
  ];
  return said.length > 0 ? said.join("; ") : "the first and the last line are the cut edge of the seam";
}

/** Radii of the arcs, with their centre, and the angle between the seam's lines of this blank. */
function coneRows(report: Report, { piece }: Blank, { units, length }: Measures): Cell[][] {
  const { cone, part, hand } = report;
  const row = hand.rows.find((one) => one.piece === piece);
  const cut = cutRadii(report);
  if (!cone || !cut || !row) return [];
  const { outerMm, innerMm, trimMm } = cut;
  const centre = add2(row.a, scale2(unit2(sub2(row.b, row.a)), outerMm - trimMm));
  const what = trimMm > 0 ? " of the cut edge" : "";
  const rule = (mm: number): Cell[] => (units === "in" ? [`to the nearest 1/${CHECKED}: ${onRule(mm)}`] : []);
  return [
    [`outer radius ${units}${what}`, length(outerMm), ...rule(outerMm)],
    [`inner radius ${units}${what}`, length(innerMm), ...rule(innerMm)],
    ...(trimMm > 0 ? [[`trim allowance ${units} at each end beyond the lines`, length(trimMm)]] : []),
    [`centre of both x ${units}`, length(centre[0])],
    [`centre of both y ${units}`, length(centre[1])],
    ["sector angle deg between the seam's lines", Number((cone.sectorDeg / (part.pieces ?? 1)).toFixed(4))],
  ];
}

function cornerRows(blank: Blank, { units, length }: Measures): Cell[][] {
  const corners = cutCorners(blank);
  const ends = corners.filter(({ isEnd }) => isEnd);
  const paths = edgePaths(blank);
  // Ends are in the order of the edges: each edge runs from its own to the next.
  const nameOf = (i: number, j: number): string => {
    const edge = j === i + 1 ? paths[i] : i === 0 && j === ends.length - 1 ? paths[j] : undefined;
    if (!edge) return "diagonal";
    return isSeam(edge) ? `along ${edge.name}` : `straight across the ${edge.name}`;
  };
  const pairs = ends.flatMap((from, i) =>
    ends.slice(i + 1).map((to, k): Cell[] => {
      const j = i + 1 + k;
      const mm = distance2(from.at, to.at);
      return [nameOf(i, j), from.number, to.number, length(mm), ...(units === "in" ? [onRule(mm)] : [])];
    }),
  );
  return [
    [],
    ["corner of the cut edge", `x ${units}`, `y ${units}`, "where"],
    ...corners.map(({ number, at, where }: CutCorner): Cell[] => [number, ...at.map(length), where]),
    [],
    [
      "tape check of the cut edge",
      "from corner",
      "to corner",
      `distance ${units}`,
      ...(units === "in" ? [`to the nearest 1/${CHECKED}`] : []),
    ],
    ...pairs.toSorted(([p], [q]) => Number(q === "diagonal") - Number(p === "diagonal")),
  ];
}

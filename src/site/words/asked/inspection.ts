import { degrees as inDegrees, radians } from "../../../geometry/angle.ts";
import { farthestTowards, leanOfRounds } from "../../../geometry/lineLean.ts";
import { add2, scale2, type Vec2 } from "../../../geometry/vector.ts";
import type { Inspection } from "../../../forming/inspection.ts";
import { linearRangeMm } from "../../../forming/iso13920.ts";
import type { Report, SpacePoint } from "../../../report/report.ts";
import { MM_PER_INCH, plain } from "../../../drawing/format.ts";
import { degrees, numbersIn, type Numbers } from "../numbers.ts";
import { MOVED_GIRTH, roundGirth } from "../girth.ts";
import type { Worked } from "../worked.ts";
import { acrossWords, type TableAnswers, withUnitOf } from "./answers.ts";

type Row = Inspection["rows"][number];
type Size = Omit<Worked, "basis">;

/** How the size and the limits of each row of the inspection sheet came about, by what the row measures. */
export function askedInspection(report: Report): TableAnswers {
  const { inspection } = report.forming;
  const say = numbersIn(report.part.units);
  return new Map(
    (inspection?.rows ?? []).map((row) => {
      const size = sizeOf(row, report, say);
      const limit = limitOf(row, inspection?.toleranceClass ?? null, report);
      return [
        row.what,
        {
          name: row.what,
          rows: [
            {
              row: "",
              worked: {
                rule: `${size.rule} ${limit.rule}`.trim(),
                numbers: [size.numbers, limit.numbers].filter((words) => words !== "").join("; "),
                basis: row.basis,
              },
            },
          ],
        },
      ];
    }),
  );
}

/** The standard's own limits are millimetres. */
const inInches = (mm: number, units: Report["part"]["units"]): string =>
  units === "in" ? `, that is ${plain(mm / MM_PER_INCH, 3)} in` : "";

/** A corner's limit goes by the shorter side of its rectangular end. */
function angleLimit(
  withinDeg: number,
  toleranceClass: Inspection["toleranceClass"],
  part: Report["part"],
): Size {
  if (toleranceClass === null || part.shape !== "square-to-round")
    return {
      rule: "The part names no tolerance class: the limit is common practice, no source.",
      numbers: `± ${degrees(withinDeg, 2)}`,
    };
  const { length, width } = part.rectangularEnd;
  const shorter = Math.min(length, width);
  return {
    rule: `The limit is that of class ${toleranceClass} of ISO 13920 for an angle whose shorter leg is so long: the shorter side.`,
    numbers: `class ${toleranceClass}, shorter leg ${plain(shorter, 1)} mm${inInches(shorter, part.units)}: ± ${plain(60 * withinDeg, 0)}′ = ± ${degrees(withinDeg, 2)}`,
  };
}

function limitOf(
  { id, nominalMm, withinMm, withinDeg }: Row,
  toleranceClass: Inspection["toleranceClass"],
  { part }: Report,
): Size {
  if (withinDeg !== null) return angleLimit(withinDeg, toleranceClass, part);
  if (withinMm === null || toleranceClass === null) return { rule: "", numbers: "" };
  // Out of round is asked of the diameter's own limit, the edges' offset as of a length of the thickness.
  const asked = id === "edge-offset" ? part.thickness : nominalMm;
  if (id === "out-of-round")
    return {
      rule: "Two diameters may each be off by their limit, so that they differ by no more than twice that.",
      numbers: `2 × ${plain(withinMm / 2, 1)} mm = ${plain(withinMm, 1)} mm${inInches(withinMm, part.units)}`,
    };
  const { overMm, upToMm } = linearRangeMm(asked);
  const range = Number.isFinite(upToMm)
    ? `${overMm === 2 ? "from" : "over"} ${overMm} up to ${upToMm} mm`
    : `over ${overMm} mm`;
  return {
    rule: `The limit is that of class ${toleranceClass} of ISO 13920 for a length of this size.`,
    numbers: `class ${toleranceClass}, ${range}: ± ${plain(withinMm, 1)} mm${inInches(withinMm, part.units)}`,
  };
}

function sizeOf(row: Row, report: Report, say: Numbers): Size {
  switch (row.id) {
    case "diameter":
    case "side":
      return {
        rule: "The size as drawn, measured as the drawing does.",
        numbers: withUnitOf(say, row.nominalMm),
      };
    case "out-of-round":
      return { rule: "Nought is what is wanted: a round end is as wide in every direction.", numbers: "" };
    case "girth":
      return girth(row, report, say);
    case "height":
      return {
        rule: "Square from the plane of one end to that of the other.",
        numbers: height(report, say),
      };
    case "tape":
      return tape(row, report, say);
    case "edge-offset":
      return {
        rule: "Nought is what is wanted: the edges meet flush. The limit is that of a length as small as the plate is thick.",
        numbers: "",
      };
    case "lap":
      return {
        rule: "How far one seam edge goes over the other, as drawn.",
        numbers: withUnitOf(say, row.nominalMm),
      };
    case "diagonal":
      return diagonal(row, report, say);
    case "template":
      return report.part.shape === "square-to-round"
        ? roundTemplate(row, report, say)
        : template(row, report, say);
    case "corner":
      return {
        rule: "180° less the angle between the planes of the two flats beside the corner. It is the greatest that a protractor reads while it is rocked along the corner.",
        numbers: degrees(row.nominalDeg ?? 0),
      };
  }
}

/** Which end a row is about: its words begin with the end's name, or hold it. */
const endOf = ({ what }: Row): "a" | "b" => (/small end|round end/.test(what) ? "b" : "a");

function girth(row: Row, report: Report, say: Numbers): Size {
  const round = roundGirth(report, { end: endOf(row), share: OUTSIDE, say });
  return {
    rule:
      round?.isMoved !== false
        ? `π × the mean width of this end’s outside: the diameter as drawn, moved to the outside. ${MOVED_GIRTH}.`
        : "π × the mean width of this end’s outside, as it is drawn.",
    numbers: round === undefined ? "" : `${round.sum} = ${withUnitOf(say, row.nominalMm)}`,
  };
}

/** The outside face, as a share of the thickness. */
const OUTSIDE = 1;

function height({ part, shape, cone }: Report, say: Numbers): string {
  const known = part.shape === "right-cone" && part.height === undefined && cone;
  const total = withUnitOf(say, shape.heightMm);
  return known
    ? `${say.column(cone.slantMm)} × cos ${degrees(cone.halfAngleDeg, 3)} = ${total}, from the slant of the middle of the wall`
    : `${total}, as drawn`;
}

function tape({ what, nominalMm }: Row, { solid }: Report, say: Numbers): Size {
  const [from = 0, to = from] = (what.match(/\d+(?=°)/g) ?? []).map(Number);
  const [p, q] = [
    farthestTowards(solid.a.inside, radians(from)),
    farthestTowards(solid.b.inside, radians(to)),
  ];
  return {
    rule: "Straight through the inside from one point to the other, by what they differ across, away and up. Tapes that ought to be alike tell by their difference that the part leans or twists.",
    numbers: p && q ? `${acrossWords(say, p, q)} = ${withUnitOf(say, nominalMm)}` : "",
  };
}

function diagonal({ nominalMm }: Row, { solid }: Report, say: Numbers): Size {
  const [p, q] = [45, 225].map((deg) => farthestTowards(solid.a.inside, radians(deg)));
  return {
    rule: "Straight across the inside of the rectangular end from corner to corner. Both are alike where its corners are square.",
    numbers: p && q ? `${acrossWords(say, p, q)} = ${withUnitOf(say, nominalMm)}` : "",
  };
}

function roundTemplate({ nominalMm }: Row, { part }: Report, say: Numbers): Size {
  const wide = say.column(2 * nominalMm);
  const to = part.shape === "square-to-round" ? part.roundEnd.measured : "inside";
  return {
    rule: `Half of what is clear inside the round end in its plane${to === "inside" ? ", as drawn" : `, moved from the ${to} of a wall that leans`}.`,
    numbers: `${wide} / 2 = ${withUnitOf(say, nominalMm)}`,
  };
}

/** The middle of a round end, in plan. */
const centreOf = (points: readonly SpacePoint[]): Vec2 =>
  scale2(
    points.reduce<Vec2>((sum, [x, y]) => add2(sum, [x, y]), [0, 0]),
    1 / points.length,
  );

/** How the wall of round ends leans at a normal angle, and how fast that changes with it. */
function leanOf(
  { solid, shape }: Report,
  deg: number,
): { readonly leanDeg: number; readonly change: number } {
  const { a, b } = solid;
  const round = (points: readonly SpacePoint[], girthMm: number) => ({
    centre: centreOf(points),
    radiusMm: girthMm / (2 * Math.PI),
  });
  const heightMm = (b.middle[0]?.[2] ?? 0) - (a.middle[0]?.[2] ?? 0);
  const { beta, dBeta } = leanOfRounds(round(a.middle, shape.rims.a), round(b.middle, shape.rims.b), {
    heightMm,
    planRad: radians(deg),
  });
  return { leanDeg: inDegrees(beta), change: dBeta };
}

const QUARTER_DEG = 90;

/** The plan angle of a template: a whole number of quarter turns from the seam. */
function planOf({ what }: Row, { shape: { seamDeg } }: Report): number {
  const told = Number(/plan (\d+)°/.exec(what)?.[1] ?? seamDeg);
  return seamDeg + QUARTER_DEG * Math.round((told - seamDeg) / QUARTER_DEG);
}

/** The radius that one setting bends a zone to, which its radii lie round. */
function meanTemplate({ nominalMm }: Row, { part }: Report, say: Numbers): Size {
  const thickness = plain(say.unit === "in" ? part.thickness / MM_PER_INCH : part.thickness, 4);
  return {
    rule: "One setting bends a zone to one radius, that of its mean curvature: n / (1/r₁ + … + 1/rₙ), r the middle radii square to the lines of the zone, 5° apart in the direction that the wall faces; less half the thickness for the inside.",
    numbers: `${say.column(nominalMm + part.thickness / 2)} − ${thickness} / 2 = ${withUnitOf(say, nominalMm)}`,
  };
}

function template(row: Row, report: Report, say: Numbers): Size {
  const { part, shape, cone } = report;
  if (/, mean \(true /.test(row.what)) return meanTemplate(row, report, say);
  const { leanDeg, change } = cone
    ? { leanDeg: cone.halfAngleDeg, change: 0 }
    : leanOf(report, planOf(row, report));
  const radius = say.column(shape.rims[endOf(row)] / (2 * Math.PI));
  const half = `${plain(say.unit === "in" ? part.thickness / MM_PER_INCH : part.thickness, 4)} / 2`;
  const cos = `cos ${degrees(Math.abs(leanDeg), 3)}`;
  const square =
    Math.abs(change) < STEADY
      ? `${radius} / ${cos}`
      : `${radius} × ${cos} / ((${cos})² + ${plain(Math.abs(change), 4)}²)`;
  return {
    rule: "Held square to a line of the wall, a template is bent to r × cos β / (cos² β + β′²), less half the thickness for the inside: r the middle radius of the end, β how the wall leans there, β′ how fast that changes on the way round. Where it leans alike all round that is r / cos β.",
    numbers: `${square} − ${half} = ${withUnitOf(say, row.nominalMm)}`,
  };
}

/** Slower than this the change of the lean does not show in a radius. [-] */
const STEADY = 0.0005;

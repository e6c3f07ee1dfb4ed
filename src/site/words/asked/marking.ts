import { degrees as inDegrees, radians } from "../../../geometry/angle.ts";
import { leanOfLine, turnNearlyRad } from "../../../geometry/lineLean.ts";
import { SAME_POINT_MM } from "../../../geometry/tolerance.ts";
import type { MarkingRow, Report, SpacePoint } from "../../../report/report.ts";
import { markingOf, type MarkingColumn } from "../marking.ts";
import { degrees, numbersIn, type Numbers } from "../numbers.ts";
import { END_NAMES } from "../shapes.ts";
import type { Worked } from "../worked.ts";
import { acrossWords, type TableAnswers, withUnitOf } from "./answers.ts";

type Key = MarkingColumn["key"];

type Neighbour = Pick<Line, "row" | "leanDeg">;

/** A row of the marking table with the rows beside it on the same piece, and the line in space that it stands for. */
interface Line {
  readonly row: MarkingRow;
  readonly before: Neighbour | undefined;
  readonly after: Neighbour | undefined;
  /** Its ends in space. */
  readonly space: { readonly a: SpacePoint; readonly b: SpacePoint };
  readonly leanDeg: number;
}

const TURN_DEG = 360;
/** Angles that differ by rounding alone are one. [°] */
const SAME_DEG = 0.001;

const leanDeg = ({ planDeg, a, b }: Report["solid"]["elements"][number]): number =>
  inDegrees(leanOfLine(a, b, radians(planDeg)));

/** The lines of the layout by hand are those of the solid, in the same order. */
function linesOf({ hand: { rows }, solid }: Report): Line[] {
  const all = rows.map((row, i) => {
    const space = solid.elements[i];
    if (!space) throw new RangeError(`line ${i} of ${solid.elements.length}`);
    return { row, space, leanDeg: leanDeg(space) };
  });
  return all.map((line, i) => {
    const beside = (one: (typeof all)[number] | undefined) =>
      one?.row.piece === line.row.piece ? one : undefined;
    return { ...line, before: beside(all[i - 1]), after: beside(all[i + 1]) };
  });
}

/** How each figure of the marking table was worked out, by its column and line. */
export function askedMarking(report: Report): TableAnswers {
  const { columns, told, pieces } = markingOf(report);
  const say = numbersIn(report.part.units);
  const lines = linesOf(report).filter(({ row }) => pieces.includes(row.piece));
  const nameOf = ({ piece, number }: MarkingRow) =>
    pieces.length > 1 ? `Line ${number} of piece ${piece}` : `Line ${number}`;
  return new Map(
    [...columns, ...told].map(({ key, group, name, cell }) => [
      key,
      {
        name: group === null ? name : `${group[0]?.toUpperCase()}${group.slice(1)}, ${name}`,
        rows: lines
          .filter(({ row }) => cell(row) !== "")
          .map((line) => ({ row: nameOf(line.row), worked: WORKED[key](line, report, say) })),
      },
    ]),
  );
}

const TRIANGLE = "longfield-1921";
const DERIVED = "derived here";

function plan({ row: { planDeg } }: Line, { shape, hand }: Report): Worked {
  const step = TURN_DEG / hand.divisions;
  const steps = ((planDeg - shape.seamDeg + 2 * TURN_DEG) % TURN_DEG) / step;
  const whole = Math.round(steps);
  const even = Math.abs(steps - whole) * step < SAME_DEG;
  const sum = shape.seamDeg + whole * step;
  const less = Math.floor((sum + SAME_DEG) / TURN_DEG);
  return {
    rule: "Which way the wall faces along the line, seen from above, counter-clockwise from the right. Lines share the whole round in equal steps from the seam; a flat begins and ends with a line of its own.",
    numbers: even
      ? `${degrees(shape.seamDeg)} + ${whole} × 360° / ${hand.divisions}${less > 0 ? ` − ${less} × 360°` : ""} = ${degrees(planDeg, 1)}`
      : `${degrees(planDeg, 1)}: the line stands where a flat begins or ends, between two steps of ${degrees(step)}.`,
    basis: DERIVED,
  };
}

/** How far the plane that touches the wall turns from one line to the next, nearly, and the sum that says so. [degrees] */
function turned(from: Neighbour, to: Neighbour): { readonly sum: string; readonly deg: number } | undefined {
  const inPlan = (to.row.planDeg - from.row.planDeg + TURN_DEG) % TURN_DEG;
  // Between two lines of one plan angle lies a flat.
  if (inPlan < SAME_DEG || inPlan > TURN_DEG - SAME_DEG) return undefined;
  const [lean, more] = [(from.leanDeg + to.leanDeg) / 2, Math.abs(to.leanDeg - from.leanDeg)];
  return {
    sum: `√((${degrees(inPlan, 3)} × cos ${degrees(Math.abs(lean))})² + (${degrees(more)})²) / 2`,
    deg: inDegrees(turnNearlyRad(radians(inPlan), radians(lean), radians(more))) / 2,
  };
}

function bend({ row, before, after, leanDeg: lean }: Line): Worked {
  const here = { row, leanDeg: lean };
  const halves = [before && turned(before, here), after && turned(here, after)].filter(
    (half) => half !== undefined,
  );
  const sum = halves.reduce((all, { deg }) => all + deg, 0);
  return {
    rule: "The plate turns as the plane does that touches the wall: in plan by so much times the cosine of its lean, and by what the lean changes. A line takes half of what is turned since the line before, and half of what is turned up to the next. The table adds it up in small steps; by the lines alone it comes out nearly so.",
    numbers:
      halves.length === 0
        ? "Flats lie on both sides: nothing is turned."
        : `${halves.map((half) => half.sum).join(" + ")} ≈ ${degrees(sum, 1)}; added up ${degrees(row.bendDeg, 1)}.`,
    basis: DERIVED,
  };
}

const pointWords = (say: Numbers, [x, y]: readonly [number, number]): string =>
  `(${say.column(x)}, ${say.column(y)})`;

/** Where the point of a line lies on the pattern: two arcs, swung from points that lie already. */
function point(
  { row, before }: Line,
  { part }: Report,
  { say, end }: { say: Numbers; end: "a" | "b" },
): Worked {
  const ends = END_NAMES[part.shape];
  const rule = `Two arcs cross there. At the ${ends.b}: the diagonal, swung from the line before’s point of the ${ends.a}, and the step along the ${ends.b} from its other point. At the ${ends.a}: the step along the ${ends.a}, and the line’s own true length swung from the point just found. In brackets: how far to the right of the leftmost and how far above the lowest point of the cut edge. The table’s own points come from many small triangles between the lines.`;
  const next = before?.row.next;
  if (!next)
    return {
      rule,
      numbers: `The pattern begins with this line, from ${pointWords(say, row.a)} to ${pointWords(say, row.b)}: ${acrossWords(say, row.a, row.b)} = ${withUnitOf(say, row.trueMm)}`,
      basis: TRIANGLE,
    };
  const unit = say.unit === "mm" ? "millimetres" : "inches";
  const step = next.flat[end === "a" ? "aMm" : "bMm"];
  if (step < SAME_POINT_MM)
    return {
      rule,
      numbers: `No step: it is the same point as that of the line before, ${pointWords(say, row[end])}, in ${unit}.`,
      basis: TRIANGLE,
    };
  const arc = (mm: number, round: readonly [number, number]) =>
    `an arc of ${say.column(mm)} round ${pointWords(say, round)}`;
  const [first, second] =
    end === "b"
      ? [arc(next.flat.diagonalMm, before.row.a), arc(next.flat.bMm, before.row.b)]
      : [arc(next.flat.aMm, before.row.a), arc(row.trueMm, row.b)];
  return {
    rule,
    numbers: `${first} and ${second} cross at ${pointWords(say, row[end])}, in ${unit}.`,
    basis: TRIANGLE,
  };
}

const WORKED: Readonly<Record<Key, (line: Line, report: Report, say: Numbers) => Worked>> = {
  plan,
  bend,
  ax: (line, report, say) => point(line, report, { say, end: "a" }),
  ay: (line, report, say) => point(line, report, { say, end: "a" }),
  bx: (line, report, say) => point(line, report, { say, end: "b" }),
  by: (line, report, say) => point(line, report, { say, end: "b" }),
  true: ({ row, space: { a, b } }, _, say) => ({
    rule: "True length = √(plan length² + height²): the long side of a triangle that stands upright on the line’s plan.",
    numbers: `√(${say.column(row.planMm)}² + ${say.column(b[2] - a[2])}²) = ${withUnitOf(say, row.trueMm)}`,
    basis: TRIANGLE,
  }),
  inPlan: ({ row, space: { a, b } }, { part }, say) => ({
    rule: `Straight across between the line’s two ends as they lie in plan, by how much they differ to the right, and by how much away from you. Both are measured from the middle of the ${END_NAMES[part.shape].a}.`,
    numbers: `${acrossWords(say, a.slice(0, 2), b.slice(0, 2))} = ${withUnitOf(say, row.planMm)}`,
    basis: TRIANGLE,
  }),
  nextA: (line, _, say) => step(line, say, "a"),
  nextB: (line, _, say) => step(line, say, "b"),
  diagonal: ({ row, after }, { part }, say) => ({
    rule: `Straight across the flat pattern, by what the points differ across and up, from this line’s point of the ${END_NAMES[part.shape].a} to the next line’s point of the ${END_NAMES[part.shape].b}: what dividers span.`,
    numbers: `${acrossWords(say, row.a, after?.row.b ?? row.b)} = ${withUnitOf(say, row.next?.flat.diagonalMm ?? 0)}; in the finished part ${withUnitOf(say, row.next?.diagonalMm ?? 0)}.`,
    basis: TRIANGLE,
  }),
};

function step({ row, after }: Line, say: Numbers, end: "a" | "b"): Worked {
  const mm = end === "a" ? "aMm" : "bMm";
  return {
    rule: "Straight across the flat pattern, by what the points differ across and up, to the same end of the next line: what dividers span. The skin between two lines is curved before it lies flat, so that in the finished part the two points lie a little nearer.",
    numbers: `${acrossWords(say, row[end], after?.row[end] ?? row[end])} = ${withUnitOf(say, row.next?.flat[mm] ?? 0)}; in the finished part ${withUnitOf(say, row.next?.[mm] ?? 0)}.`,
    basis: TRIANGLE,
  };
}

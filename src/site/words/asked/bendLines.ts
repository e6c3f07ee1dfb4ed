import { linesOf } from "../../../drawing/forming/brakePicture.ts";
import { KN_PER_SHORT_TON, MM_PER_INCH, MPA_PER_KSI } from "../../../geometry/units.ts";
import { distance2 } from "../../../geometry/vector.ts";
import { fromSeam1 } from "../../../forming/brakeLines.ts";
import type { BrakePlan } from "../../../forming/brakePlan.ts";
import type { Report } from "../../../report/report.ts";
import { plain } from "../../../drawing/format.ts";
import { degrees, numbersIn, type Numbers } from "../numbers.ts";
import { bentFrom, END_NAMES } from "../shapes.ts";
import type { Worked } from "../worked.ts";
import { bendKey, type BendColumn } from "./bendKey.ts";
import { acrossWords, type TableAnswers, withUnitOf } from "./answers.ts";

const columnsOf = (shape: Report["part"]["shape"]): Readonly<Record<BendColumn, string>> => ({
  bend: "Bend",
  depth: "Depth",
  a: `Along the ${END_NAMES[shape].a}`,
  b: `Along the ${END_NAMES[shape].b}`,
  length: "Length",
  bent: `Bent from the ${bentFrom(shape)}`,
  hit: "Order of the hits",
  force: "Force",
});

type Line = BrakePlan["lines"][number];

interface Asked {
  readonly line: Line;
  readonly before: Line | undefined;
  readonly zone: BrakePlan["zones"][number];
  /** Lines of its stretch, and of its piece. */
  readonly stretch: readonly Line[];
  readonly own: readonly Line[];
  readonly plan: BrakePlan;
  readonly thicknessMm: number;
  /** The end that what is bent of a line is measured from. */
  readonly from: string;
  readonly say: Numbers;
}

/** How each figure of the tables of bend lines was worked out, by piece, column and line. */
export function askedBendLines({ part, blanks }: Report, plan: BrakePlan): TableAnswers {
  const say = numbersIn(part.units);
  const columns = columnsOf(part.shape);
  const patterns = blanks.filter(({ sameAs }) => sameAs === null);
  const answers = patterns.flatMap((blank) => {
    const own = linesOf(plan, blank);
    const asked = own.flatMap((line, i): Asked[] => {
      const zone = plan.zones.find((one) => one.piece === line.piece && one.zone === line.zone);
      const stretch = own.filter((one) => one.zone === line.zone);
      return zone
        ? [
            {
              line,
              before: own[i - 1],
              zone,
              stretch,
              own,
              plan,
              thicknessMm: part.thickness,
              from: bentFrom(part.shape),
              say,
            },
          ]
        : [];
    });
    return (Object.keys(columns) as BendColumn[]).map(
      (column) =>
        [
          bendKey(blank.piece, column),
          {
            name: `${columns[column]}${patterns.length > 1 ? `, piece ${blank.piece}` : ""}`,
            rows: asked.map((one) => ({ row: `Line ${one.line.number}`, worked: WORKED[column](one) })),
          },
        ] as const,
    );
  });
  return new Map(answers);
}

/** A sum in which those that follow each other and are alike are told once: "7.2° + 3 × 8.1° + 7.2°". */
function alike(terms: readonly string[]): string {
  const runs: { term: string; times: number }[] = [];
  for (const term of terms) {
    const last = runs.at(-1);
    if (last?.term === term) last.times++;
    else runs.push({ term, times: 1 });
  }
  return runs.map(({ term, times }) => (times > 1 ? `${times} × ${term}` : term)).join(" + ");
}

const DERIVED = "derived here";
const COMMON = "common practice, no source";

const WORKED: Readonly<Record<BendColumn, (asked: Asked) => Worked>> = {
  bend: ({ line, zone, stretch }) => ({
    rule: "What the curved stretch turns from the middle of the space before the line to the middle of the space after it; a line beside a flat takes half a space. What no line bends is left to the seam edges. Springback is not in it: the ram depth of the trial strip takes care of that.",
    numbers: `Stretch ${zone.zone} turns ${degrees(zone.turnDeg)} in ${zone.spaces} ${zone.spaces === 1 ? "space" : "spaces"}, ${degrees(zone.turnDeg / zone.spaces)} each on average; this line takes ${degrees(line.bendDeg)}. All its lines, and what is left at the seam edges: ${alike(stretch.map(({ bendDeg }) => degrees(bendDeg)))} + ${degrees(zone.seamDeg)} = ${degrees(zone.turnDeg)}`,
    basis: DERIVED,
  }),
  depth: ({ line, plan }) => {
    const depth = plan.depths.find(({ letter }) => letter === line.depth);
    return {
      rule: "Lines of nearly the same angle are bent by one ram depth, found on a trial strip: angles within half a degree, or within as much as leaves six letters.",
      numbers: `${line.depth} is for ${degrees(depth?.fromDeg ?? line.bendDeg)} to ${degrees(depth?.toDeg ?? line.bendDeg)}, ${depth?.lines ?? 1} in all; this line takes ${degrees(line.bendDeg)}.`,
      basis: DERIVED,
    };
  },
  a: (asked) => along(asked, "a"),
  b: (asked) => along(asked, "b"),
  length: ({ line, say }) => ({
    rule: "Straight across the pattern between the line’s two points, by what they differ across and up; where a gap cuts its tip off, as far as there is plate.",
    numbers: `${acrossWords(say, line.from, line.to)} = ${withUnitOf(say, line.lengthMm)}`,
    basis: DERIVED,
  }),
  bent: ({ line, zone, plan, from, say }) => {
    const [half, { narrow, wide }] = [plan.dieMm / 2, zone.spacingMm];
    return {
      rule: `Bend lines lie no nearer to each other than half the die opening. Where they run together a line is not bent up to its end; it stops short of that by length × (half the opening − spacing there) / (spacing at the ${from} − spacing there), at most all of it.`,
      numbers:
        line.stopsShortMm === 0
          ? `Half of the ${say.length(plan.dieMm)} die is ${withUnitOf(say, half)}; where they run together lines are ${withUnitOf(say, narrow)} apart: all of it is bent.`
          : `${say.column(line.lengthMm)} − ${say.column(line.lengthMm)} × (${say.column(half)} − ${say.column(narrow)}) / (${say.column(wide)} − ${say.column(narrow)}) = ${withUnitOf(say, line.lengthMm - line.stopsShortMm)}`,
      basis: "metalforming-step-bending",
    };
  },
  hit: ({ line, own }) => {
    const half = fromSeam1(own.length);
    return {
      rule: "From seam 1 to the middle, then from seam 2 to the middle, so that the bent plate comes up on both sides clear of the ram.",
      numbers:
        line.number <= half
          ? `Line ${line.number} is among the first ${half} of ${own.length}: hit ${line.order}.`
          : `${half} lines go before, then from line ${own.length} back: ${half} + ${own.length} − ${line.number} + 1 = ${line.order}`,
      basis: COMMON,
    };
  },
  force: (asked) => {
    const { plan } = asked;
    return {
      rule: `Constant × tensile strength × bent length × thickness² / die opening. The constant used is ${plan.forceConstant.used}; those in print run from ${plan.forceConstant.least} to ${plan.forceConstant.greatest}, and real plate is often stronger than its grade.`,
      numbers: forceSum(asked),
      basis: "groover-memory",
    };
  },
};

/** In the units of the drawing: ksi and inches give thousands of pounds, two of which are a short ton. */
function forceSum({
  line,
  plan,
  thicknessMm,
  say,
}: Pick<Asked, "line" | "plan" | "thicknessMm" | "say">): string {
  const bent = line.lengthMm - line.stopsShortMm;
  const { used } = plan.forceConstant;
  if (say.unit === "mm")
    return `${used} × ${plain(plan.tensileMPa, 0)} × ${say.column(bent)} × ${plain(thicknessMm, 3)}² / ${plain(plan.dieMm, 2)} / 1000 = ${plain(line.forceKN, 2)}\u00a0kN, in MPa and mm.`;
  const inches = (mm: number) => plain(mm / MM_PER_INCH, 4);
  return `${used} × ${plain(plan.tensileMPa / MPA_PER_KSI, 2)} × ${say.column(bent)} × ${inches(thicknessMm)}² / ${inches(plan.dieMm)} / 2 = ${plain(line.forceKN / KN_PER_SHORT_TON, 2)} short tons, in ksi and inches: two thousands of pounds are a short ton.`;
}

function along({ line, before, say }: Asked, end: "a" | "b"): Worked {
  const point = ({ from, to }: Line) => (end === "a" ? from : to);
  const rule =
    "Along the edge of the plate as cut, from seam 1, with the plate flat: the small pieces of the edge added up.";
  if (!before)
    return {
      rule,
      numbers: `${withUnitOf(say, line.alongMm[end])} from seam edge 1.`,
      basis: DERIVED,
    };
  const further = line.alongMm[end] - before.alongMm[end];
  return {
    rule,
    numbers: `${say.column(before.alongMm[end])} + ${say.column(further)} = ${withUnitOf(say, line.alongMm[end])}, the first as far as line ${before.number}; straight across the two points are ${acrossWords(say, point(before), point(line))} = ${withUnitOf(say, distance2(point(before), point(line)))} apart.`,
    basis: DERIVED,
  };
}

import { cutRadii } from "../../report/cutRadii.ts";
import type { Shaped } from "../../report/report.ts";
import type { Material } from "../../shapes/material.ts";
import { plain } from "../../drawing/format.ts";
import { KG_PER_POUND, MM_PER_INCH } from "../../geometry/units.ts";
import { MIDDLE } from "../../shapes/layout.ts";
import { otherLeg } from "../../geometry/vector.ts";
import { closely, MOVED_GIRTH, roundGirth } from "./girth.ts";
import { degrees, numbersIn, type Numbers } from "./numbers.ts";
import { plateNeeds } from "./plateNeed.ts";

/** How a figure was worked out: the rule, this part's numbers in it, and where the rule comes from. */
export interface Worked {
  readonly rule: string;
  readonly numbers: string;
  readonly basis: string;
}

const MM2_PER_M2 = 1e6;
const MM3_PER_M3 = 1e9;
/** A diameter's turn of its circle. */
const PI = 3.14159;

/** How each figure at the head of a part was worked out, by the figure's name. */
export function workedFigures(shaped: Shaped, material: Material): ReadonlyMap<string, Worked> {
  const say = numbersIn(shaped.part.units);
  return new Map([...layoutFigures(shaped, say), ...plateFigures(shaped, material, say)]);
}

function layoutFigures(shaped: Shaped, say: Numbers): [string, Worked][] {
  const { cone, shape } = shaped;
  if (cone && cone.outerRadiusMm !== null) return coneFigures(shaped, cone, say);
  const { shortest, longest } = shape.elementMm;
  const share = shaped.part.neutral ?? MIDDLE;
  const girth = (end: "a" | "b"): Worked => {
    const mm = shape.rims[end];
    const { sum, isMoved } = roundGirth(shaped, { end, share, say }) ?? { sum: "", isMoved: true };
    const moved = isMoved
      ? `: the diameter as drawn, moved to that surface. ${MOVED_GIRTH}: so this is not exactly π × (diameter ± thickness).`
      : ", on which its diameter is drawn.";
    return {
      rule: `π × the mean width of this end on the surface that is laid out${neutralWords(shaped)}${moved}`,
      numbers: `${sum} = ${say.length(mm)}; a circle of that girth is Ø${say.length(mm / PI)}.`,
      basis: "derived here",
    };
  };
  const line = (mm: number): Worked => ({
    rule: "True length = √(plan length² + height²): a line of the wall seen square, between points of the two ends whose tangents are parallel.",
    numbers: `√(${say.bare(otherLeg(mm, shape.heightMm))}² + ${say.bare(shape.heightMm)}²) = ${say.length(mm)}`,
    basis: "longfield-1921",
  });
  const girths: [string, Worked][] =
    shaped.part.shape === "square-to-round"
      ? [
          ["Girth, rectangular end", rectangleGirth(shaped, say)],
          ["Girth, round end", girth("b")],
        ]
      : [
          ["Girth, large end", girth("a")],
          ...(shape.rims.b > 0 ? ([["Girth, small end", girth("b")]] satisfies [string, Worked][]) : []),
        ];
  return [
    ...girths,
    ["Line length", line(shortest)],
    ["Shortest line", line(shortest)],
    ["Longest line", line(longest)],
  ];
}

/** Sides of the rectangle that is laid out sharp, on the face where it is folded. */
function rectangleGirth({ part, solid, shape }: Shaped, say: Numbers): Worked {
  const face =
    part.shape === "square-to-round" && part.rectangularEnd.measured === "middle" ? "middle" : "inside";
  const side = (axis: 0 | 1): string => {
    const all = solid.a[face].map((point) => point[axis]);
    return closely(say, Math.max(...all) - Math.min(...all));
  };
  return {
    rule: `2 × (length + width) on the ${face} of the wall, where the corners are laid out sharp${face === "inside" ? "; an outside size is first brought inside, each side by thickness / cos of the lean of its flat" : ""}.`,
    numbers: `2 × (${side(0)} + ${side(1)}) = ${say.length(shape.rims.a)}`,
    basis: "common practice, no source",
  };
}

/** On which surface between the faces the wall is laid out. */
const neutralWords = ({ part }: Shaped): string =>
  part.neutral === undefined || part.neutral === MIDDLE
    ? ", the middle of the wall"
    : `, ${plain(part.neutral, 3)} of the thickness from the inside face`;

function coneFigures(shaped: Shaped, cone: NonNullable<Shaped["cone"]>, say: Numbers): [string, Worked][] {
  const { rims } = shaped.shape;
  const [large, small] = [rims.a / PI, rims.b / PI];
  const trimMm = cutRadii(shaped)?.trimMm ?? 0;
  const half = degrees(cone.halfAngleDeg, 3);
  const radius = (
    name: string,
    end: string,
    { diameter, mm, more }: { diameter: number; mm: number; more: number },
  ): [string, Worked] => [
    name,
    {
      rule: `Half the ${end} end’s middle diameter over the sine of the half angle: all lines of the wall run to one point, and laid flat they keep their length.${
        more === 0
          ? ""
          : ` Edges are cut square and dressed: half the thickness times the tangent of the half angle lies outside the finished edge.`
      }`,
      numbers: `${say.bare(diameter)} / (2 × sin ${half}) = ${say.length(mm)}${
        more === 0
          ? ""
          : `; ${say.bare(mm)} ${more > 0 ? "+" : "−"} ${say.bare(Math.abs(more))} = ${say.length(mm + more)}`
      }`,
      basis: "net-of-a-frustum",
    },
  ];
  return [
    radius("Outer radius", "large", { diameter: large, mm: cone.outerRadiusMm ?? 0, more: trimMm }),
    ...(small > 0
      ? [radius("Inner radius", "small", { diameter: small, mm: cone.innerRadiusMm ?? 0, more: -trimMm })]
      : []),
    [
      "Angle of the pattern",
      {
        rule: "360° × the sine of the half angle: the outer arc is as long as the large end is round.",
        numbers: `360° × sin ${half} = ${degrees(cone.sectorDeg)}`,
        basis: "net-of-a-frustum",
      },
    ],
  ];
}

function plateFigures(shaped: Shaped, material: Material, say: Numbers): [string, Worked][] {
  const { part, blanks, massKg } = shaped;
  const area = blanks.reduce((sum, blank) => sum + blank.areaMm2, 0);
  const plates = plateNeeds(shaped, say).map(({ name, xMm, yMm, anyOf, turned }): [string, Worked] => [
    name,
    {
      rule: anyOf
        ? "The upright rectangle that just holds whichever blank is laid on it as it is drawn: the widest across by the highest up."
        : `The upright rectangle that just holds the blank as it is drawn${turned === null ? "" : "; and of all rectangles at any angle the one of least area"}.`,
      numbers: `${anyOf ? "The outlines reach" : "The outline reaches"} from 0 to ${say.length(xMm)} across and from 0 to ${say.length(yMm)} up: ${say.length(xMm)} × ${say.length(yMm)}.`,
      basis: "derived here",
    },
  ]);
  const mass: Worked = {
    rule: `Area of the blank${blanks.length > 1 ? "s, all pieces together," : ""} × thickness × density of ${material.name}.`,
    numbers: massSum(
      { areaMm2: area, thicknessMm: part.thickness, massKg, densityKgM3: material.densityKgM3 },
      say,
    ),
    basis: material.sources.density,
  };
  const count = blanks.length;
  return [...plates, [count > 1 ? `Mass of one, ${count} pieces` : "Mass of one", mass]];
}

/** In the units of the drawing; in inches with what the material's density is for them. */
function massSum(
  {
    areaMm2,
    thicknessMm,
    massKg,
    densityKgM3,
  }: {
    readonly areaMm2: number;
    readonly thicknessMm: number;
    readonly massKg: number;
    readonly densityKgM3: number;
  },
  say: Numbers,
): string {
  if (say.unit === "mm")
    return `${plain(areaMm2 / MM2_PER_M2, 4)} m² × ${plain(thicknessMm, 3)} mm × ${densityKgM3} kg/m³ / 1000 = ${say.mass(massKg)}`;
  const perInch3 = (densityKgM3 * MM_PER_INCH ** 3) / MM3_PER_M3 / KG_PER_POUND;
  return `${plain(areaMm2 / MM_PER_INCH ** 2, 1)} in² (${say.area(areaMm2)}) × ${plain(thicknessMm / MM_PER_INCH, 4)} in × ${plain(perInch3, 5)} lb/in³ = ${say.mass(massKg)}; the density is ${densityKgM3} kg/m³`;
}

import type { Shaped } from "../../report/report.ts";
import type { Material } from "../../shapes/material.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import { plain } from "../../drawing/format.ts";
import { degrees, numbersIn, type Numbers } from "./numbers.ts";

/** How a figure was worked out: the rule, this part's numbers in it, and where the rule comes from. */
export interface Worked {
  readonly rule: string;
  readonly numbers: string;
  readonly basis: string;
}

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
  const girth: Worked = {
    rule: "Once round the end on the surface that is laid out: the support of its edge, summed over the whole turn (Cauchy).",
    numbers: `Rims ${say.length(shape.rims.a)} and ${say.length(shape.rims.b)}; a round end of that girth is Ø${say.length(shape.rims.b / PI)}.`,
    basis: "derived here",
  };
  const line = (mm: number): Worked => ({
    rule: "True length = √(plan length² + height²): a line of the wall seen square, between points of the two ends whose tangents are parallel.",
    numbers: `${say.bare(mm)}² − ${say.bare(shape.heightMm)}² leaves the square of its plan length.`,
    basis: "longfield-1921",
  });
  return [
    ["Girth, large end", girth],
    ["Girth, small end", girth],
    ["Girth, rectangular end", girth],
    ["Girth, round end", girth],
    ["Line length", line(shortest)],
    ["Shortest line", line(shortest)],
    ["Longest line", line(longest)],
  ];
}

function coneFigures({ shape }: Shaped, cone: NonNullable<Shaped["cone"]>, say: Numbers): [string, Worked][] {
  const [large, small] = [shape.rims.a / PI, shape.rims.b / PI];
  const half = degrees(cone.halfAngleDeg, 3);
  const radius = (name: string, end: string, diameter: number): [string, Worked] => [
    name,
    {
      rule: `Half the ${end} end’s middle diameter over the sine of the half angle: all lines of the wall run to one point, and laid flat they keep their length.`,
      numbers: `${say.bare(diameter)} / (2 × sin ${half})`,
      basis: "net-of-a-frustum",
    },
  ];
  return [
    radius("Outer radius", "large", large),
    ...(small > 0 ? [radius("Inner radius", "small", small)] : []),
    [
      "Angle of the pattern",
      {
        rule: "360° × the sine of the half angle: the outer arc is as long as the large end is round.",
        numbers: `360° × sin ${half}`,
        basis: "net-of-a-frustum",
      },
    ],
  ];
}

function plateFigures(
  { part, blanks, massKg }: Shaped,
  material: Material,
  say: Numbers,
): [string, Worked][] {
  const area = blanks.reduce((sum, blank) => sum + blank.areaMm2, 0);
  const thick =
    say.unit === "mm" ? `${plain(part.thickness, 3)} mm` : `${plain(part.thickness / MM_PER_INCH, 4)} in`;
  const plate: Worked = {
    rule: "The upright rectangle that just holds the blank as it is drawn; and of all rectangles at any angle the one of least area.",
    numbers: blanks[0]
      ? `The outline reaches from 0 to ${say.length(blanks[0].asDrawn.xMm)} across and to ${say.length(blanks[0].asDrawn.yMm)} up.`
      : "",
    basis: "derived here",
  };
  const mass: Worked = {
    rule: `Area of the blank × thickness × density of ${material.name}.`,
    numbers: `${say.area(area)} × ${thick} × ${material.densityKgM3} kg/m³ = ${say.mass(massKg)}`,
    basis: material.sources.density,
  };
  const count = blanks.length;
  return [
    [count > 1 ? `Plate as drawn, each of ${count}` : "Plate as drawn", plate],
    [count > 1 ? `Mass of one, ${count} pieces` : "Mass of one", mass],
  ];
}

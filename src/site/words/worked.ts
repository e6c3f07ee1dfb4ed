import type { Shaped } from "../../report/report.ts";
import type { Material } from "../../shapes/material.ts";
import { plain } from "../../drawing/format.ts";
import { otherLeg } from "../../geometry/vector.ts";
import { degrees, numbersIn, type Numbers } from "./numbers.ts";
import { plateNeeds } from "./plateNeed.ts";

/** How a figure was worked out: the rule, this part's numbers in it, and where the rule comes from. */
export interface Worked {
  readonly rule: string;
  readonly numbers: string;
  readonly basis: string;
}

const MM2_PER_M2 = 1e6;
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
  const girth = (mm: number, round: boolean): Worked => ({
    rule: `The length of the wall’s own edge once round this end, on the surface that is laid out${neutralWords(shaped)}: all its small pieces added up. Where the wall leans, half the thickness does not lie level, so that it is not exactly π × (diameter ± thickness).`,
    numbers: `${say.length(mm)}${round ? `; a circle of that girth is Ø${say.length(mm / PI)}` : ""}.`,
    basis: "derived here",
  });
  const line = (mm: number): Worked => ({
    rule: "True length = √(plan length² + height²): a line of the wall seen square, between points of the two ends whose tangents are parallel.",
    numbers: `√(${say.bare(otherLeg(mm, shape.heightMm))}² + ${say.bare(shape.heightMm)}²) = ${say.length(mm)}`,
    basis: "longfield-1921",
  });
  return [
    ["Girth, large end", girth(shape.rims.a, true)],
    ["Girth, small end", girth(shape.rims.b, true)],
    ["Girth, rectangular end", girth(shape.rims.a, false)],
    ["Girth, round end", girth(shape.rims.b, true)],
    ["Line length", line(shortest)],
    ["Shortest line", line(shortest)],
    ["Longest line", line(longest)],
  ];
}

/** On which surface between the faces the wall is laid out. */
const neutralWords = ({ part }: Shaped): string =>
  part.neutral === undefined || part.neutral === 0.5
    ? ", the middle of the wall"
    : `, ${plain(part.neutral, 3)} of the thickness from the inside face`;

function coneFigures({ shape }: Shaped, cone: NonNullable<Shaped["cone"]>, say: Numbers): [string, Worked][] {
  const [large, small] = [shape.rims.a / PI, shape.rims.b / PI];
  const half = degrees(cone.halfAngleDeg, 3);
  const radius = (
    name: string,
    end: string,
    { diameter, mm }: { diameter: number; mm: number },
  ): [string, Worked] => [
    name,
    {
      rule: `Half the ${end} end’s middle diameter over the sine of the half angle: all lines of the wall run to one point, and laid flat they keep their length.`,
      numbers: `${say.bare(diameter)} / (2 × sin ${half}) = ${say.length(mm)}`,
      basis: "net-of-a-frustum",
    },
  ];
  return [
    radius("Outer radius", "large", { diameter: large, mm: cone.outerRadiusMm ?? 0 }),
    ...(small > 0 ? [radius("Inner radius", "small", { diameter: small, mm: cone.innerRadiusMm ?? 0 })] : []),
    [
      "Angle of the pattern",
      {
        rule: "360° × the sine of the half angle: the outer arc is as long as the large end is round.",
        numbers: `360° × sin ${half} = ${degrees(cone.sectorDeg, 3)}`,
        basis: "net-of-a-frustum",
      },
    ],
  ];
}

function plateFigures(shaped: Shaped, material: Material, say: Numbers): [string, Worked][] {
  const { part, blanks, massKg } = shaped;
  const area = blanks.reduce((sum, blank) => sum + blank.areaMm2, 0);
  const plates = plateNeeds(shaped, say).map(({ name, xMm, yMm, anyOf }): [string, Worked] => [
    name,
    {
      rule: anyOf
        ? "The upright rectangle that just holds whichever blank is laid on it as it is drawn: the widest across by the highest up."
        : "The upright rectangle that just holds the blank as it is drawn; and of all rectangles at any angle the one of least area.",
      numbers: `${anyOf ? "The outlines reach" : "The outline reaches"} from 0 to ${say.length(xMm)} across and from 0 to ${say.length(yMm)} up: ${say.length(xMm)} × ${say.length(yMm)}.`,
      basis: "derived here",
    },
  ]);
  const mass: Worked = {
    rule: `Area of the blank × thickness × density of ${material.name}.`,
    numbers: `${plain(area / MM2_PER_M2, 4)} m² × ${plain(part.thickness, 3)} mm × ${material.densityKgM3} kg/m³ / 1000 = ${plain(massKg, 2)} kg${say.unit === "mm" ? "" : `, that is ${say.mass(massKg)}`}`,
    basis: material.sources.density,
  };
  const count = blanks.length;
  return [...plates, [count > 1 ? `Mass of one, ${count} pieces` : "Mass of one", mass]];
}

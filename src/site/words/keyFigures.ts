import type { Blank, Shaped } from "../../report/report.ts";
import { degrees, MM, numbersIn, turnWord, type Numbers } from "./numbers.ts";
import { END_NAMES } from "./shapes.ts";

/** One of the figures that stand large at the head of a part. */
export interface KeyFigure {
  readonly name: string;
  readonly value: string;
  /** In the other unit, where that helps. */
  readonly second?: string | null;
}

const length = (say: Numbers, name: string, mm: number): KeyFigure => ({
  name,
  value: say.unit === "in" ? `${say.bare(mm)} in` : say.length(mm),
  second: inMillimetres(say, mm),
});

/** Inches stand with their fraction and with millimetres. */
const inMillimetres = (say: Numbers, mm: number): string | null =>
  say.unit === "in" ? `${say.length(mm).replace(/^[^(]*/, "")} ${MM.length(mm)}`.trim() : null;

/** What the pattern is struck or laid out with, for each kind of shape. */
function layout({ part, cone, shape }: Shaped, say: Numbers): KeyFigure[] {
  if (cone && cone.outerRadiusMm !== null) {
    const inner = cone.innerRadiusMm ?? 0;
    return [
      length(say, "Outer radius", cone.outerRadiusMm),
      inner > 0 ? length(say, "Inner radius", inner) : { name: "Inner radius", value: "none: a point" },
      { name: "Angle of the pattern", value: degrees(cone.sectorDeg, 3) },
    ];
  }
  const ends = END_NAMES[part.shape];
  const { shortest, longest } = shape.elementMm;
  return [
    length(say, `Girth, ${ends.a}`, shape.rims.a),
    ...(shape.rims.b > 0 ? [length(say, `Girth, ${ends.b}`, shape.rims.b)] : []),
    ...(say.length(shortest) === say.length(longest)
      ? [length(say, "Line length", shortest)]
      : [length(say, "Shortest line", shortest), length(say, "Longest line", longest)]),
  ];
}

/** Turned on the plate a blank may want less of it; worth telling from a fiftieth of its area on. */
const WORTH_TURNING = 0.98;

/** The smallest plate that the blank goes on when it is turned: "or 900 × 412 turned 31°"; null where that saves little. */
function turnedPlate({ box, asDrawn }: Blank, say: Numbers): string | null {
  if (box.lengthMm * box.widthMm > WORTH_TURNING * asDrawn.xMm * asDrawn.yMm) return null;
  return `or ${say.bare(box.lengthMm)} × ${say.bare(box.widthMm)}, turned ${degrees(Math.abs(box.turnDeg), 0)} ${turnWord(box.turnDeg)}`;
}

/** The row of key figures: radii and angle (or girths and lines), plate, mass. */
export function keyFigures(report: Shaped): KeyFigure[] {
  const say = numbersIn(report.part.units);
  const [blank] = report.blanks;
  const pieces = report.blanks.length;
  const box = blank && {
    name: pieces > 1 ? `Plate as drawn, each of ${pieces}` : "Plate as drawn",
    value: `${say.bare(blank.asDrawn.xMm)} × ${say.bare(blank.asDrawn.yMm)} ${say.unit}`,
    second: turnedPlate(blank, say),
  };
  return [
    ...layout(report, say),
    ...(box ? [box] : []),
    {
      name: pieces > 1 ? `Mass of one, ${pieces} pieces` : "Mass of one",
      value: say.mass(report.massKg),
      second: say.unit === "in" ? MM.mass(report.massKg) : null,
    },
  ];
}

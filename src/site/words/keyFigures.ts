import { cutRadii } from "../../report/cutRadii.ts";
import type { Shaped } from "../../report/report.ts";
import { degrees, MM, numbersIn, type Numbers } from "./numbers.ts";
import { plateNeeds } from "./plateNeed.ts";
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
function layout(shaped: Shaped, say: Numbers): KeyFigure[] {
  const { part, cone, shape } = shaped;
  const radii = cutRadii(shaped);
  if (cone && radii) {
    return [
      length(say, "Outer radius", radii.outerMm),
      radii.innerMm > 0
        ? length(say, "Inner radius", radii.innerMm)
        : { name: "Inner radius", value: "none: a point" },
      { name: "Angle of the pattern", value: degrees(cone.sectorDeg) },
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

/** The row of key figures: radii and angle (or girths and lines), plate, mass. */
export function keyFigures(report: Shaped): KeyFigure[] {
  const say = numbersIn(report.part.units);
  const pieces = report.blanks.length;
  return [
    ...layout(report, say),
    ...plateNeeds(report, say).map(({ name, size, turned }) => ({
      name,
      value: `${size} ${say.unit}`,
      second: turned,
    })),
    {
      name: pieces > 1 ? `Mass of one, ${pieces} pieces` : "Mass of one",
      value: say.mass(report.massKg),
      second: say.unit === "in" ? MM.mass(report.massKg) : null,
    },
  ];
}

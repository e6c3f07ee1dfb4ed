import { nearestFraction } from "../../geometry/inches.ts";
import {
  angleText,
  areaText,
  columnLength,
  forceText,
  lengthNumber,
  lengthText,
  massText,
  MM_PER_INCH,
  plain,
  volumeText,
  type Units,
} from "../../drawing/format.ts";
import { together } from "../../drawing/together.ts";

export { thickness } from "../../drawing/thickness.ts";

/** How the numbers of one part read in the text of its page: in its own units, each kept on one line with its unit. */
export interface Numbers {
  readonly unit: Units;
  /** Without its unit. */
  bare(mm: number): string;
  /** For a column of a table. */
  column(mm: number): string;
  /** What a tape in inches reads, to the nearest 1/32 and finer for small sizes; null in millimetres, where no rule comes near enough, and where it says no more than the decimals. */
  onTape(mm: number): string | null;
  /** For a column, and in inches what a tape reads beside it. */
  taped(mm: number): string;
  length(mm: number): string;
  mass(kg: number): string;
  /** Kilonewtons, or short tons (2,000 lbf). */
  force(kN: number): string;
  area(mm2: number): string;
  volume(mm3: number): string;
}

function onTape(mm: number, unit: Units): string | null {
  const fraction = unit === "in" && mm !== 0 ? nearestFraction(mm) : null;
  return fraction === lengthNumber(mm, unit) ? null : fraction;
}

export const numbersIn = (unit: Units): Numbers => ({
  unit,
  bare: (mm) => lengthNumber(mm, unit),
  column: (mm) => columnLength(mm, unit),
  onTape: (mm) => onTape(mm, unit),
  taped(mm) {
    const fraction = onTape(mm, unit);
    return together(`${columnLength(mm, unit)}${fraction === null ? "" : ` (${fraction})`}`);
  },
  length: (mm) => together(lengthText(mm, unit)),
  mass: (kg) => together(massText(kg, unit)),
  force: (kN) => together(forceText(kN, unit)),
  area: (mm2) => together(areaText(mm2, unit)),
  volume: (mm3) => together(volumeText(mm3, unit)),
});

export const MM: Numbers = numbersIn("mm");

export const degrees = angleText;

/** Which way a pattern is turned by an angle, counter-clockwise being positive. */
export const turnWord = (angle: number): string => (angle > 0 ? "counter-clockwise" : "clockwise");

/** A share as a percentage. */
export const percent = (share: number, places = 0): string => together(`${plain(100 * share, places)} %`);

/** A length that nobody could scribe: never told more closely than 0.01 mm, which is what is promised. */
export function tiny(mm: number, unit: Units): string {
  if (mm >= 0.1) return numbersIn(unit).length(mm);
  const most = Math.ceil(Math.max(mm, 1e-9) * 100) / 100;
  return together(unit === "mm" ? `${most} mm` : `${plain(most / MM_PER_INCH, 4)} in`);
}

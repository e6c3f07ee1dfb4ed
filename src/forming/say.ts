import { degrees } from "../geometry/angle.ts";
import { KG_PER_POUND, KN_PER_SHORT_TON, MM_PER_INCH, MPA_PER_KSI, type Units } from "../geometry/units.ts";

/** How numbers read in a sentence of advice. Lengths come in as mm, angles as radians. */
export interface Say {
  length(mm: number): string;
  angle(rad: number): string;
  percent(share: number): string;
  mass(kg: number): string;
  /** Kilonewtons, or short tons (2,000 lbf). */
  force(kN: number): string;
  /** Force for each metre of a bend, or each foot. */
  forceAlong(kNPerM: number): string;
  strength(mpa: number): string;
}

/** No more digits than a tape, a scriber or a balance can use. */
function rounded(value: number, decimals: number): string {
  const text = String(Number(value.toFixed(decimals)));
  return text === "-0" ? "0" : text;
}

/** A plain number with at most this many decimals. */
export const number = rounded;

/** Below these a length is a thickness or a clearance, and is told more closely. */
const SMALL_MM = 20;
const SMALL_IN = 1;
const MM_PER_FOOT = 12 * MM_PER_INCH;
const MM_PER_METRE = 1000;

/** Words in the units of the reader: mm to a tenth, inches to a hundredth; small ones ten times as close. */
export function sayIn(units: Units): Say {
  return {
    length(mm) {
      if (units === "mm") return `${rounded(mm, Math.abs(mm) < SMALL_MM ? 2 : 1)} mm`;
      const inches = mm / MM_PER_INCH;
      return `${rounded(inches, Math.abs(inches) < SMALL_IN ? 3 : 2)} in`;
    },
    angle: (rad) => `${rounded(degrees(rad), 1)}°`,
    mass(kg) {
      const value = units === "mm" ? kg : kg / KG_PER_POUND;
      return `${rounded(value, value < 10 ? 1 : 0)} ${units === "mm" ? "kg" : "lb"}`;
    },
    force: (kN) =>
      units === "mm" ? `${rounded(kN, 0)} kN` : `${rounded(kN / KN_PER_SHORT_TON, 1)} short tons`,
    forceAlong: (kNPerM) =>
      units === "mm"
        ? `${rounded(kNPerM, 0)} kN for each metre`
        : `${rounded((kNPerM * MM_PER_FOOT) / MM_PER_METRE / KN_PER_SHORT_TON, 1)} short tons for each foot`,
    strength: (mpa) => (units === "mm" ? `${rounded(mpa, 0)} MPa` : `${rounded(mpa / MPA_PER_KSI, 1)} ksi`),
    percent: (share) => `${rounded(100 * share, share < 0.1 ? 1 : 0)} %`,
  };
}

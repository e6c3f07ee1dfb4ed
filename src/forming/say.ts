/** How numbers read in a sentence of advice. Lengths come in as mm, angles as radians. */
export interface Say {
  length(mm: number): string;
  angle(rad: number): string;
  percent(share: number): string;
  mass(kg: number): string;
  /** Kilonewtons, or short tons (2,000 lbf). */
  force(kN: number): string;
  strength(mpa: number): string;
}

const MM_PER_IN = 25.4;
const KG_PER_LB = 0.45359237;
/** 1,000 lbf per square inch. */
const MPA_PER_KSI = 6.894757293168;
/** 2,000 lbf, exact by the definitions of the pound and of standard gravity. */
const KN_PER_SHORT_TON = 8.896443230521;

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

/** Words in the units of the reader: mm to a tenth, inches to a hundredth; small ones ten times as close. */
export function sayIn(units: "mm" | "in"): Say {
  return {
    length(mm) {
      if (units === "mm") return `${rounded(mm, Math.abs(mm) < SMALL_MM ? 2 : 1)} mm`;
      const inches = mm / MM_PER_IN;
      return `${rounded(inches, Math.abs(inches) < SMALL_IN ? 3 : 2)} in`;
    },
    angle: (rad) => `${rounded((rad * 180) / Math.PI, 1)}°`,
    mass(kg) {
      const value = units === "mm" ? kg : kg / KG_PER_LB;
      return `${rounded(value, value < 10 ? 1 : 0)} ${units === "mm" ? "kg" : "lb"}`;
    },
    force: (kN) =>
      units === "mm" ? `${rounded(kN, 0)} kN` : `${rounded(kN / KN_PER_SHORT_TON, 1)} short tons`,
    strength: (mpa) => (units === "mm" ? `${rounded(mpa, 0)} MPa` : `${rounded(mpa / MPA_PER_KSI, 1)} ksi`),
    percent: (share) => `${rounded(100 * share, share < 0.1 ? 1 : 0)} %`,
  };
}

/** How numbers read in a sentence of advice. Lengths come in as mm, angles as radians. */
export interface Say {
  length(mm: number): string;
  angle(rad: number): string;
  percent(share: number): string;
}

const MM_PER_IN = 25.4;

/** No more digits than a tape, a scriber or a balance can use. */
function rounded(value: number, decimals: number): string {
  const text = String(Number(value.toFixed(decimals)));
  return text === "-0" ? "0" : text;
}

/** A plain number with at most this many decimals. */
export const number = rounded;

/** Words in the units of the reader: mm to a tenth, inches to a hundredth (to a thousandth below one inch). */
export function sayIn(units: "mm" | "in"): Say {
  return {
    length(mm) {
      if (units === "mm") return `${rounded(mm, 1)} mm`;
      const inches = mm / MM_PER_IN;
      return `${rounded(inches, Math.abs(inches) < 1 ? 3 : 2)} in`;
    },
    angle: (rad) => `${rounded((rad * 180) / Math.PI, 1)}°`,
    percent: (share) => `${rounded(100 * share, share < 0.1 ? 1 : 0)} %`,
  };
}

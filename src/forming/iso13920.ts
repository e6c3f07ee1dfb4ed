export type LinearClass = "A" | "B" | "C" | "D";

/** Upper end of each range of nominal sizes; beyond the last the last column holds. [mm] */
const UP_TO = [30, 120, 400, 1000, 2000, 4000, 8000, 12_000, 16_000, 20_000, Infinity] as const;
/** The standard begins here. [mm] */
const FROM_MM = 2;

/** Permitted deviation of linear dimensions, plus and minus. [mm] */
const LINEAR: Readonly<Record<LinearClass, readonly number[]>> = {
  A: [1, 1, 1, 2, 3, 4, 5, 6, 7, 8, 9],
  B: [1, 2, 2, 3, 4, 6, 8, 10, 12, 14, 16],
  C: [1, 3, 4, 6, 8, 11, 14, 18, 21, 24, 27],
  D: [1, 4, 7, 9, 12, 16, 21, 27, 32, 36, 40],
};

/**
 * Permitted deviation of a length of a welded construction, plus and minus.
 *
 * @param nominalMm [mm]
 * @returns [mm]; null below 2 mm, where the standard has none
 * @see sources.yaml#iso-13920, read in a reproduction
 * @example linearToleranceMm("B", 560) // → 3
 * @example linearToleranceMm("C", 30) // → 1
 */
export function linearToleranceMm(tolerance: LinearClass, nominalMm: number): number | null {
  if (nominalMm < FROM_MM) return null;
  return LINEAR[tolerance][UP_TO.findIndex((to) => nominalMm <= to)] ?? null;
}

/** Upper end of each range of the shorter leg of an angle; beyond the last the last column holds. [mm] */
const LEG_UP_TO = [400, 1000, Infinity] as const;

/** Permitted deviation of angular dimensions, plus and minus. [minutes] */
const ANGULAR: Readonly<Record<LinearClass, readonly number[]>> = {
  A: [20, 15, 10],
  B: [45, 30, 20],
  C: [60, 45, 30],
  D: [90, 75, 60],
};
const MINUTES_PER_DEGREE = 60;

/**
 * Permitted deviation of an angle of a welded construction, plus and minus. [°]
 *
 * @param legMm length of its shorter leg [mm]
 * @see sources.yaml#iso-13920, read in a reproduction
 * @example angularToleranceDeg("B", 500) // → 0.5
 * @example angularToleranceDeg("C", 400) // → 1
 */
export function angularToleranceDeg(tolerance: LinearClass, legMm: number): number {
  const minutes = ANGULAR[tolerance][LEG_UP_TO.findIndex((to) => legMm <= to)] as number;
  return minutes / MINUTES_PER_DEGREE;
}

/**
 * The range of nominal sizes that share a limit with this one.
 *
 * @param nominalMm [mm]
 * @returns over … up to; the last has no end [mm]
 * @see sources.yaml#iso-13920, read in a reproduction
 * @example linearRangeMm(560) // → { overMm: 400, upToMm: 1000 }
 */
export function linearRangeMm(nominalMm: number): { readonly overMm: number; readonly upToMm: number } {
  const at = UP_TO.findIndex((to) => nominalMm <= to);
  return { overMm: UP_TO[at - 1] ?? FROM_MM, upToMm: UP_TO[at] ?? Infinity };
}

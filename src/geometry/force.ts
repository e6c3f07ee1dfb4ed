import { KN_PER_SHORT_TON, type Units } from "./units.ts";

/** Below this a kilonewton has its tenth told. [kN] */
const SMALL_KN = 10;

/**
 * A force as it is read off a gauge: whole kilonewtons, small ones to a tenth; short tons to a tenth. One rounding, so that
 * the same force reads the same in a sentence, in a table and beside a check.
 *
 * @returns [kN or short tons]
 * @example forceIn(252.7, "mm") // 253
 * @example forceIn(252.7, "in") // 28.4
 */
export function forceIn(kN: number, units: Units): number {
  const tenths = (value: number) => Math.round(value * 10) / 10;
  if (units === "in") return tenths(kN / KN_PER_SHORT_TON);
  return Math.abs(kN) < SMALL_KN ? tenths(kN) : Math.round(kN);
}

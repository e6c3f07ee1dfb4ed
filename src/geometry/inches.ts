import { MM_PER_INCH } from "./units.ts";

/**
 * Inches to the nearest part of an inch: 29-5/16, 3/8, 12.
 *
 * @param denominator 16 or 32, or another power of two
 * @example inchFraction(744.5375, 16) // "29-5/16"
 */
export function inchFraction(mm: number, denominator = 16): string {
  const parts = Math.round((Math.abs(mm) / MM_PER_INCH) * denominator);
  const sign = mm < 0 && parts > 0 ? "-" : "";
  const whole = Math.floor(parts / denominator);
  let [above, below] = [parts % denominator, denominator];
  while (above > 0 && above % 2 === 0) [above, below] = [above / 2, below / 2];
  if (above === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}${above}/${below}` : `${sign}${whole}-${above}/${below}`;
}

/** No rule has finer parts. */
const FINEST = 64;

/** Inches are told to a thousandth. [in] */
const HALF_THOUSANDTH_IN = 0.0005;

/** Is a length a whole number of parts of an inch, as nearly as three decimals tell? */
function isFraction(mm: number, denominator: number): boolean {
  const parts = (mm / MM_PER_INCH) * denominator;
  return Math.abs(parts - Math.round(parts)) < denominator * HALF_THOUSANDTH_IN;
}

/** A thickness as the trade calls it, 3/16; null where it is no such fraction, as of a sheet gauge. */
export const exactFraction = (mm: number): string | null =>
  isFraction(mm, FINEST) ? inchFraction(mm, FINEST) : null;

/**
 * How finely a rule is divided: thirty-seconds on every paper, so that one length has one fraction wherever it stands; a finer
 * one is taken only where the coarser says something else than the decimals.
 */
export const COARSEST_RULE = 32;
const RULES = [COARSEST_RULE, FINEST];
/** A fraction further off than this share of the length misleads, as on thin sheet. */
const MISLEADS = 0.02;

/**
 * A length on a rule in inches: to the nearest thirty-second, finer for small sizes; null where no rule comes near enough, as
 * for thin sheet.
 */
export function nearestFraction(mm: number): string | null {
  const near = RULES.find((denominator) => {
    const onRule = (Math.round((mm / MM_PER_INCH) * denominator) / denominator) * MM_PER_INCH;
    return Math.abs(onRule - mm) <= MISLEADS * Math.abs(mm);
  });
  return near === undefined ? null : inchFraction(mm, near);
}

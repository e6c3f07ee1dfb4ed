import { degrees } from "../geometry/angle.ts";
import { forceIn } from "../geometry/force.ts";
import { nearestFraction } from "../geometry/inches.ts";
import { KG_PER_POUND, KN_PER_SHORT_TON, MM_PER_INCH, MPA_PER_KSI, type Units } from "../geometry/units.ts";

/** How numbers read in a sentence of advice. Lengths come in as mm, angles as radians. */
export interface Say {
  readonly units: Units;
  /** Those of the shop file. */
  readonly shopUnits: Units;
  length(mm: number): string;
  /** A die, a bed, a throat: as the shop file has it, for so it is marked, with the part's units beside where they are others. */
  shops(mm: number): string;
  /** The same without its unit. */
  bare(mm: number): string;
  /** What a tape or a template tells: inches with the nearest fraction, where a rule comes near enough. */
  tape(mm: number): string;
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
  const scale = 10 ** decimals;
  const whole = Math.round(value * scale);
  // Near a tie the product's own rounding would decide: there the exact way of `toFixed`, which takes five times as long.
  const isPlain = Math.abs(value * scale - whole) < PLAIN && Math.abs(whole) < MOST_PLAIN;
  const text = String(isPlain ? whole / scale : Number(value.toFixed(decimals)));
  return text === "-0" ? "0" : text;
}

/** A product of so many units is off by far less than what is left to a tie. */
const [PLAIN, MOST_PLAIN] = [0.499, 1e9];

/** A plain number with at most this many decimals. */
export const number = rounded;

/** Below this a length is a thickness or a clearance, and is told more closely. */
const SMALL_MM = 20;
/** As in tables and on drawings: what is told in a sentence is found there again. */
const INCH_PLACES = 3;
const MM_PER_FOOT = 12 * MM_PER_INCH;
const MM_PER_METRE = 1000;

/** Without the unit. */
const bareIn = (mm: number, units: Units): string =>
  units === "mm" ? rounded(mm, Math.abs(mm) < SMALL_MM ? 2 : 1) : rounded(mm / MM_PER_INCH, INCH_PLACES);

/**
 * Words in the units of the reader: mm to a tenth, small ones to a hundredth; inches to a thousandth.
 *
 * @param shopUnits those of the shop file, where there is one
 */
export function sayIn(units: Units, shopUnits: Units = units): Say {
  const bare = (mm: number) => bareIn(mm, units);
  const length = (mm: number) => `${bare(mm)} ${units}`;
  return {
    units,
    shopUnits,
    length,
    bare,
    shops: (mm) =>
      units === shopUnits ? length(mm) : `${bareIn(mm, shopUnits)} ${shopUnits} (${length(mm)})`,
    tape(mm) {
      if (units === "mm") return `${rounded(mm, 1)} mm`;
      const fraction = nearestFraction(mm);
      const decimal = length(mm);
      return fraction === null || decimal === `${fraction} in` ? decimal : `${decimal} (${fraction})`;
    },
    angle: (rad) => `${rounded(degrees(rad), 1)}°`,
    mass(kg) {
      const value = units === "mm" ? kg : kg / KG_PER_POUND;
      return `${rounded(value, value < 10 ? 1 : 0)} ${units === "mm" ? "kg" : "lb"}`;
    },
    force: (kN) => `${forceIn(kN, units)} ${units === "mm" ? "kN" : "short tons"}`,
    forceAlong: (kNPerM) =>
      units === "mm"
        ? `${rounded(kNPerM, 0)} kN for each metre`
        : `${rounded((kNPerM * MM_PER_FOOT) / MM_PER_METRE / KN_PER_SHORT_TON, 1)} short tons for each foot`,
    strength: (mpa) => (units === "mm" ? `${rounded(mpa, 0)} MPa` : `${rounded(mpa / MPA_PER_KSI, 1)} ksi`),
    percent: (share) => `${rounded(100 * share, share < 0.1 ? 1 : 0)} %`,
  };
}

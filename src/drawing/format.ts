import { KG_PER_POUND, KN_PER_SHORT_TON, MM_PER_INCH, MPA_PER_KSI, type Units } from "../geometry/units.ts";

export { MM_PER_INCH, type Units };

/** A number to so many places, without a minus before nought; a plain hyphen, because not every font has the other. */
export function fixed(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? text.replace("-", "") : text;
}

/** The same without noughts at the end: 900, 412.5. */
export function plain(value: number, places: number): string {
  const text = fixed(value, places);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

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

/** Is a length a whole number of parts of an inch, as nearly as three decimals tell? */
function isFraction(mm: number, denominator: number): boolean {
  const parts = (mm / MM_PER_INCH) * denominator;
  return Math.abs(parts - Math.round(parts)) < denominator * 0.0005;
}

/** How finely a rule is divided: a finer one is taken only where the coarser says something else than the decimals. */
const RULES = [16, 32, 64];
/** A fraction further off than this share of the length misleads, as on thin sheet. */
const MISLEADS = 0.02;

/**
 * A length on a rule in inches: sixteenths, thirty-seconds where those say it exactly, finer for small sizes; null where no
 * rule comes near enough, as for thin sheet.
 */
export function nearestFraction(mm: number): string | null {
  if (!isFraction(mm, 16) && isFraction(mm, 32)) return inchFraction(mm, 32);
  const near = RULES.find((denominator) => {
    const onRule = (Math.round((mm / MM_PER_INCH) * denominator) / denominator) * MM_PER_INCH;
    return Math.abs(onRule - mm) <= MISLEADS * Math.abs(mm);
  });
  return near === undefined ? null : inchFraction(mm, near);
}

/** A length without its unit, to a tenth of a millimetre or a thousandth of an inch: 900, 412.5; 35.433. */
export const lengthNumber = (mm: number, units: Units): string =>
  units === "mm" ? plain(mm, 1) : plain(mm / MM_PER_INCH, 3);

/** A length on a drawing: 412.5, or inches with the nearest fraction: 16.24 (16-1/4); the sheet names the unit once. */
export function dimension(mm: number, units: Units): string {
  if (units === "mm") return plain(mm, 1);
  const decimal = lengthNumber(mm, units);
  const fraction = nearestFraction(mm);
  return fraction === null || decimal === fraction ? decimal : `${decimal} (${fraction})`;
}

/** A length in a sentence or among the key figures: 412.5 mm, 16.24 in (16-1/4). */
export function lengthText(mm: number, units: Units): string {
  if (units === "mm") return `${plain(mm, 1)} mm`;
  const fraction = nearestFraction(mm);
  const decimal = lengthNumber(mm, units);
  return fraction === null || decimal === fraction ? `${decimal} in` : `${decimal} in (${fraction})`;
}

/** A length in a column, with all its places so that the points stand under each other: 900.0; 35.433. */
export const columnLength = (mm: number, units: Units): string =>
  units === "mm" ? fixed(mm, 1) : fixed(mm / MM_PER_INCH, 3);

/** What the unit of `dimension` is called on a sheet. */
export const unitName = (units: Units): string => (units === "mm" ? "millimetres" : "inches");

/** [degrees] */
export const angleText = (deg: number, places = 2): string => `${plain(deg, places)}°`;

/** Plate is lifted by it: three figures are enough, never less than a tenth. */
export function massText(kg: number, units: Units): string {
  const value = units === "mm" ? kg : kg / KG_PER_POUND;
  return `${plain(value, value < 100 ? 1 : 0)} ${units === "mm" ? "kg" : "lb"}`;
}

/** [kN] */
export const forceText = (kN: number, units: Units): string =>
  units === "mm" ? `${plain(kN, kN < 10 ? 2 : 1)} kN` : `${plain(kN / KN_PER_SHORT_TON, 1)} short tons`;

/** The same in a column, rounded up. */
export const forceColumn = (kN: number, units: Units): string =>
  units === "mm" ? String(Math.ceil(kN)) : fixed(Math.ceil((10 * kN) / KN_PER_SHORT_TON) / 10, 1);

/** [MPa] */
export const strengthText = (mpa: number, units: Units): string =>
  units === "mm" ? `${plain(mpa, 0)} MPa` : `${plain(mpa / MPA_PER_KSI, 1)} ksi`;

/** Three decimals of a square metre are a sheet of writing paper's twentieth. */
export const areaText = (mm2: number, units: Units): string =>
  units === "mm" ? `${plain(mm2 / 1e6, 3)} m²` : `${plain(mm2 / (12 * MM_PER_INCH) ** 2, 2)} ft²`;

export function volumeText(mm3: number, units: Units): string {
  if (units === "in") return `${plain(mm3 / (12 * MM_PER_INCH) ** 3, 3)} ft³`;
  return mm3 < 1e9 ? `${plain(mm3 / 1e6, 1)} litres` : `${plain(mm3 / 1e9, 3)} m³`;
}

import { forceIn } from "../geometry/force.ts";
import { COARSEST_RULE, inchFraction, nearestFraction } from "../geometry/inches.ts";
import { KG_PER_POUND, MM_PER_INCH, MPA_PER_KSI, type Units } from "../geometry/units.ts";

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

/** A distance that is measured to see whether a whole came out true: however short, to a thirty-second. */
export function checkDistance(mm: number, units: Units): string {
  if (units === "mm") return dimension(mm, units);
  const [decimal, fraction] = [lengthNumber(mm, units), inchFraction(mm, CHECKED)];
  return decimal === fraction ? decimal : `${decimal} (${fraction})`;
}
/** Parts of an inch that such a distance is told in. */
export const CHECKED = COARSEST_RULE;

/** The unit of a drawing's sizes: what stands in brackets beside them, or below, is as fine as this. */
export const drawnUnit = (units: Units): string =>
  units === "mm" ? unitName(units) : `${unitName(units)} (nearest 1/${COARSEST_RULE})`;

/** The unit of `checkDistance`, and how fine its fractions are. */
export const checkUnit = (units: Units): string =>
  units === "mm" ? unitName(units) : `${unitName(units)}, fractions to the nearest 1/${CHECKED}`;

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
  `${forceIn(kN, units)} ${units === "mm" ? "kN" : "short tons"}`;

/** The same in a column, short tons with their tenth. */
export const forceColumn = (kN: number, units: Units): string =>
  units === "mm" ? String(forceIn(kN, units)) : fixed(forceIn(kN, units), 1);

/** [MPa] */
export const strengthText = (mpa: number, units: Units): string =>
  units === "mm" ? `${plain(mpa, 0)} MPa` : `${plain(mpa / MPA_PER_KSI, 1)} ksi`;

/** Paint and lining are bought by a hundredth of a square metre; of less than a tenth three decimals still tell something. */
const measured = (value: number): string => plain(value, Math.abs(value) < 0.1 ? 3 : 2);

export const areaText = (mm2: number, units: Units): string =>
  units === "mm" ? `${measured(mm2 / 1e6)} m²` : `${measured(mm2 / (12 * MM_PER_INCH) ** 2)} ft²`;

export function volumeText(mm3: number, units: Units): string {
  if (units === "in") return `${measured(mm3 / (12 * MM_PER_INCH) ** 3)} ft³`;
  return mm3 < 1e9 ? `${plain(mm3 / 1e6, 1)} litres` : `${measured(mm3 / 1e9)} m³`;
}

import { add, decimalRatio, inchesToMm, mixed, plain, type Ratio } from "./ratio.ts";
import { read, shown, unreadable, type Reading } from "./reading.ts";
import { tidy } from "./typography.ts";
import type { Units } from "./units.ts";

/** What to do about a comma: it is the decimal sign to some and stands between thousands to others. */
export const NO_COMMA = "use a point for decimals, and nothing between thousands";

const INCH = String.raw`(?:"|in(?:ch(?:es)?)?\.?)`;
const FOOT = String.raw`(?:'|(?:foot|feet|ft)\.?)`;
/** 12, 12.5, .5, 5/8, 12-3/8, 12 3/8 */
const NUMBER = String.raw`(?:\d+(?:\s*-\s*|\s+)\d+/\d+|\d+/\d+|\d+\.?\d*|\.\d+)`;
const FEET_AND_INCHES = new RegExp(
  String.raw`^(${NUMBER})\s*${FOOT}(?:\s*-?\s*(${NUMBER})\s*${INCH}?)?$`,
  "i",
);
const INCHES = new RegExp(String.raw`^(${NUMBER})\s*${INCH}$`, "i");
const MILLIMETRES = new RegExp(String.raw`^(${NUMBER})\s*mm\.?$`, "i");
const BARE = new RegExp(`^(${NUMBER})$`);

/**
 * Reads a length as a shop writes it. [mm]
 *
 * Plain numbers are in `units`; a mark or a word (12 mm, 3 in, 3", 3' 4-1/2") says otherwise. Fractions without a mark
 * are inches and are refused where the file is in millimetres, because a mistake there would be 25-fold.
 *
 * @param units undefined where the file does not say: then nothing is refused for its units
 */
export function readLength(text: string, units: Units | undefined): Reading<number> {
  const tidied = tidy(text);
  if (tidied === undefined) return notALength(text, units);
  const sign = /^[-+]/.exec(tidied)?.[0];
  const body = sign ? tidied.slice(1).trimStart() : tidied;

  const feet = FEET_AND_INCHES.exec(body);
  if (feet) return signed(sign, feetAndInches(text, feet[1] ?? "", feet[2]));
  const inches = INCHES.exec(body);
  if (inches) return signed(sign, number(text, inches[1] ?? "", inchesToMm));
  const mm = MILLIMETRES.exec(body);
  if (mm) return signed(sign, number(text, mm[1] ?? "", plain));
  const bare = BARE.exec(body)?.[1];
  if (bare === undefined) return refused(text, body, units);
  const value = number(text, bare, units === "in" ? inchesToMm : plain);
  if (value.kind === "read" && units === "mm" && bare.includes("/")) {
    return unreadable(
      `${shown(text)} is a fraction, and this file is in millimetres`,
      `write ${shown(`${sign ?? ""}${bare.replace(/\s*-\s*|\s+/, "-")}`)} in for inches, or the millimetres as a decimal number`,
    );
  }
  return signed(sign, value);
}

function signed(sign: string | undefined, reading: Reading<number>): Reading<number> {
  // Nought has no sign: -0 would travel on into the report.
  return sign === "-" && reading.kind === "read" && reading.value !== 0 ? read(-reading.value) : reading;
}

function number(text: string, written: string, toMm: (ratio: Ratio) => number): Reading<number> {
  const ratio = ratioOf(text, written);
  return ratio.kind === "read" ? finite(text, toMm(ratio.value)) : ratio;
}

function finite(text: string, mm: number): Reading<number> {
  return Number.isFinite(mm)
    ? read(mm)
    : unreadable(`${shown(text)} is far too large`, "check the number of digits");
}

function ratioOf(text: string, written: string): Reading<Ratio> {
  if (!written.includes("/")) {
    const ratio = decimalRatio(written);
    return ratio ? read(ratio) : unreadable(`${shown(text)} is not a length`, "give a number");
  }
  const [, whole = "", over = "", under = ""] = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/.exec(written) ?? [];
  const fraction = { over: Number(over), under: Number(under) };
  if (fraction.under === 0) return unreadable(`${shown(text)} divides by 0`, "write the fraction as in 5/8");
  if (whole !== "" && fraction.over >= fraction.under) {
    return unreadable(
      `${shown(text)} has a fraction of one or more beside a whole number`,
      "carry it over, as in 5-1/8 for 4-9/8",
    );
  }
  return read(mixed(Number(whole), fraction));
}

function feetAndInches(text: string, feet: string, inches: string | undefined): Reading<number> {
  const high = ratioOf(text, feet);
  const low = ratioOf(text, inches ?? "0");
  if (high.kind === "unreadable") return high;
  if (low.kind === "unreadable") return low;
  // 1'200 is a thousand to some; nobody writes 1 ft 200 in.
  if (plain(low.value) >= 12) {
    return unreadable(
      `${shown(text)} has twelve inches or more beside feet`,
      "carry them over, as in 2' 3\" for 1' 15\"",
    );
  }
  return finite(text, inchesToMm(add({ over: high.value.over * 12, under: high.value.under }, low.value)));
}

/** Why a text that is no length is none: the mistakes people make, then all others. */
function refused(text: string, body: string, units: Units | undefined): Reading<never> {
  const seen = shown(text);
  if (body === "") return unreadable("there is no number here", howTo(units));
  if (/\d[\d\s.]*,\s*\d|^,\d/.test(body)) {
    return unreadable(`${seen} has a comma`, NO_COMMA);
  }
  if (/\d\.\d+\.\d/.test(body))
    return unreadable(`${seen} has two points`, "use one point, before the decimals");
  if (/\/\s*\d+\s*\//.test(body))
    return unreadable(`${seen} has two fraction bars`, "write one fraction, as in 12-5/8");
  if (/\d\s*\/\s*[-+]?\d*\.|\.\d*\s*\//.test(body)) {
    return unreadable(`${seen} has a point inside a fraction`, "write either a fraction or a decimal number");
  }
  if (/^[\d.]+e[-+]?\d+/i.test(body))
    return unreadable(`${seen} is a power of ten`, "write the number out, as in 1000");
  if (new RegExp(`${INCH}.*${FOOT}`, "i").test(body)) {
    return unreadable(`${seen} has inches before feet`, `write the feet first, as in 2' 3"`);
  }
  const other = /^[\d\s./-]+?\s*(cm|m|dm|km|thou|mil|mils|yd|yards?|metres?|meters?)\.?$/i.exec(body)?.[1];
  if (other) return unreadable(`${seen} is in ${other}, which is not a unit here`, "give it in mm or in");
  if (/\b\d*\s*-?(?:ga(?:uge|ge)?)\b/i.test(body)) {
    return unreadable(`${seen} is a gauge, which is for thicknesses only`, howTo(units));
  }
  if (new RegExp(String.raw`^${NUMBER}(?:\s+${NUMBER})+$`).test(body)) {
    return unreadable(
      `${seen} is more than one number`,
      "write one number without spaces, or a fraction as in 12-3/8",
    );
  }
  return notALength(text, units);
}

const notALength = (text: string, units: Units | undefined) =>
  unreadable(`${shown(text)} is not a length`, howTo(units));

const howTo = (units: Units | undefined) =>
  units === "in" ? `give a number, as in 12.375, 12-3/8 or 3' 4-1/2"` : "give a number, as in 12.5";

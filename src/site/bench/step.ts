import type { Limits } from "../../input/introspect.ts";
import type { Quantity } from "../../shapes/fields.ts";
import { readLength } from "../../input/length.ts";
import { tidy } from "../../input/typography.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import type { Units } from "../../input/units.ts";

/** One gauge of a metal, and how thick it is. [in] */
export interface GaugeStep {
  readonly gauge: string;
  readonly inches: number;
}

/** What one touch of + or −, or of an arrow key, does: a size by 5 mm or 1/8 in, a plate by 1 mm or 1/16 in, a gauge to the next, an angle by 1°, a count by 1. */
const STEPS: Readonly<Record<"length" | "thickness" | "small", Readonly<Record<Units, number>>>> = {
  length: { mm: 5, in: 1 / 8 },
  thickness: { mm: 1, in: 1 / 16 },
  small: { mm: 0.5, in: 1 / 32 },
};
/** Lengths of which 5 mm would be the whole, by the last key of their field: what goes in steps of a plate, and what in smaller ones. */
const STEP_OF: Readonly<Record<string, keyof typeof STEPS>> = {
  gap: "small",
  facetError: "small",
  spacing: "thickness",
  edge: "thickness",
};
/** A size that nobody says more of. */
const FROM_NOUGHT: Limits = { min: { value: 0, inclusive: true } };
/** A sixty-fourth of an inch is as fine as a fraction is read off a rule. */
const FINEST = 64;
const INCHES_PER_FOOT = 12;
/** A gauge as it may be written: "10 ga", "10-gauge", "ga 10". */
const GAUGE = /^(\s*ga(?:uge|ge)?\.?\s*)?(\d{1,7})(\s*-?\s*ga(?:uge|ge)?\.?\s*)?$/i;
/** Enough decimals for what was typed and too few for what a sum of halves leaves behind. */
const DECIMALS = 4;

/**
 * A typed number moved by some steps, written as it was written before; undefined where it is none.
 * @param gauges those of the metal: a gauge goes to the next of them
 * @param key last one of the field, which may go in steps of its own
 * @param limits of the field: what a step would lead out of stays as it is
 * @param times steps, negative downwards
 */
export function stepped(
  text: string,
  {
    quantity,
    units,
    key = "",
    gauges = [],
    limits,
  }: {
    readonly quantity: Quantity | "count";
    readonly units: Units;
    readonly key?: string;
    readonly gauges?: readonly GaugeStep[];
    readonly limits?: Limits | undefined;
  },
  times: number,
): string | undefined {
  if (quantity !== "length" && quantity !== "thickness") {
    const value = Number(text);
    if (text.trim() === "" || !Number.isFinite(value)) return undefined;
    return isBeyond(limits ?? {}, value + times, times) ? undefined : plain(value + times);
  }
  if (quantity === "thickness" && /ga/i.test(text)) return nextGauge(text, gauges, times);
  const reading = readLength(text, units);
  if (reading.kind !== "read") return undefined;
  const written = tidy(text) ?? text;
  const inches = /["'/]|in|f(?:oo|ee)?t/i.test(written) || (units === "in" && !/mm/i.test(written));
  const own = inches ? "in" : "mm";
  const size = inches ? reading.value / MM_PER_INCH : reading.value;
  const next = size + times * STEPS[STEP_OF[key] ?? quantity][own];
  if (isBeyond(limits ?? (size < 0 ? {} : FROM_NOUGHT), inches ? next * MM_PER_INCH : next, times))
    return undefined;
  return withMarksOf(text, likeWritten(written, next, inches));
}

/** Does a step lead out of what the field takes? One that leads back towards it never does. [mm, degrees or a count] */
const isBeyond = ({ min, max }: Limits, value: number, times: number): boolean =>
  times < 0
    ? min !== undefined && (min.inclusive ? value < min.value : value <= min.value)
    : max !== undefined && (max.inclusive ? value > max.value : value >= max.value);

/** What stands behind a size: its unit, a mark or a word, with the space before it. */
const UNIT = /\s*(?:"|in(?:ch(?:es)?)?\.?|mm\.?)$/i;
/** Feet, what stands between them and inches, and whether any inches follow: 3'-6, 3' 6, 3 ft. */
const FEET = /\d(\s*(?:'|(?:foot|feet|ft)\.?))(\s*-\s*|\s*)(\S?)/i;

/** A size in the writing of another: feet stay feet, a unit stays a unit, decimals stay decimals. [in or mm] */
function likeWritten(written: string, size: number, inches: boolean): string {
  const sign = size < 0 ? "-" : "";
  const join = /\d \d+\//.test(written) ? " " : "-";
  const number = (value: number, nought = ""): string =>
    inches && !/\.\d/.test(written) ? inSixtyFourths(value, { join, nought }) : plain(value);
  const [, foot, between = "", inch] = FEET.exec(written) ?? [];
  const [unit = ""] = UNIT.exec(written) ?? [];
  if (foot === undefined) return `${sign}${number(Math.abs(size))}${unit}`;
  const feet = Math.floor(Math.abs(size) / INCHES_PER_FOOT + 10 ** -DECIMALS);
  const rest = number(Math.max(0, Math.abs(size) - feet * INCHES_PER_FOOT), `0${join}`);
  if (inch !== "") return `${sign}${feet}${foot}${between}${rest}${unit}`;
  return rest === "0" ? `${sign}${feet}${foot}` : `${sign}${feet}${foot}-${rest}"`;
}

/** Marks of feet and inches as they were typed. */
function withMarksOf(text: string, written: string): string {
  const [foot = "'"] = /[\u2019\u2032]/.exec(text) ?? [];
  const [inch = '"'] = /[\u201d\u2033]/.exec(text) ?? [];
  return written.replaceAll("'", foot).replaceAll('"', inch);
}

/** The gauge so many places up in thickness, or the last; undefined at the end of the table and for a number that is not in it. */
function nextGauge(text: string, gauges: readonly GaugeStep[], times: number): string | undefined {
  const [, before = "", number, after = ""] = GAUGE.exec(text) ?? [];
  const thicker = gauges.toSorted((a, b) => a.inches - b.inches);
  const at = thicker.findIndex(({ gauge }) => gauge === number);
  const to = Math.min(Math.max(at + times, 0), thicker.length - 1);
  const next = at < 0 || to === at ? undefined : thicker[to];
  return next && `${before}${next.gauge}${after}`;
}

const plain = (value: number): string => String(Number(value.toFixed(DECIMALS)));

/** 12-3/8, or a decimal where no fraction of a rule is met; `nought` stands before a fraction alone. */
function inSixtyFourths(
  value: number,
  { join, nought }: { readonly join: string; readonly nought: string },
): string {
  const parts = Math.round(value * FINEST);
  if (Math.abs(parts / FINEST - value) > 10 ** -DECIMALS) return plain(value);
  const whole = Math.floor(parts / FINEST);
  let [over, under] = [parts % FINEST, FINEST];
  if (over === 0) return String(whole);
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return `${whole === 0 ? nought : `${whole}${join}`}${over}/${under}`;
}

import type { Quantity } from "../../shapes/fields.ts";
import { readLength } from "../../input/length.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import type { Units } from "../../input/units.ts";

/** One gauge of a metal, and how thick it is. [in] */
export interface GaugeStep {
  readonly gauge: string;
  readonly inches: number;
}

/** What one touch of + or − does: a size by 5 mm or 1/8 in, a plate by 1 mm or 1/16 in, a gauge to the next, an angle by 1°, a count by 1. */
const STEPS: Readonly<Record<"length" | "thickness", Readonly<Record<Units, number>>>> = {
  length: { mm: 5, in: 1 / 8 },
  thickness: { mm: 1, in: 1 / 16 },
};
/** A sixty-fourth of an inch is as fine as a fraction is read off a rule. */
const FINEST = 64;
/** A gauge as it may be written: "10 ga", "10-gauge", "ga 10". */
const GAUGE = /^(\s*ga(?:uge|ge)?\.?\s*)?(\d{1,7})(\s*-?\s*ga(?:uge|ge)?\.?\s*)?$/i;
/** Enough decimals for what was typed and too few for what a sum of halves leaves behind. */
const DECIMALS = 4;

/**
 * A typed number moved by some steps, written as it was written before; undefined where it is none.
 * @param gauges those of the metal: a gauge goes to the next of them
 * @param times steps, negative downwards
 */
export function stepped(
  text: string,
  {
    quantity,
    units,
    gauges = [],
  }: { readonly quantity: Quantity | "count"; readonly units: Units; readonly gauges?: readonly GaugeStep[] },
  times: number,
): string | undefined {
  if (quantity !== "length" && quantity !== "thickness") {
    const value = Number(text);
    return text.trim() === "" || !Number.isFinite(value) ? undefined : plain(value + times);
  }
  if (quantity === "thickness" && /ga/i.test(text)) return nextGauge(text, gauges, times);
  const reading = readLength(text, units);
  if (reading.kind !== "read") return undefined;
  const own = /in|"|'|ft|\//.test(text) || (units === "in" && !/mm/.test(text)) ? "in" : "mm";
  const size = own === "in" ? reading.value / MM_PER_INCH : reading.value;
  const next = size + times * STEPS[quantity][own];
  if (next < 0 && size >= 0) return undefined;
  const unit = own === units ? "" : ` ${own}`;
  const fraction = own === "in" && !/\d\.\d/.test(text);
  return `${fraction ? inSixtyFourths(next) : plain(next)}${unit}`;
}

/** The gauge so many places up in thickness; undefined at the end of the table and for a number that is not in it. */
function nextGauge(text: string, gauges: readonly GaugeStep[], times: number): string | undefined {
  const [, before = "", number, after = ""] = GAUGE.exec(text) ?? [];
  const thicker = gauges.toSorted((a, b) => a.inches - b.inches);
  const at = thicker.findIndex(({ gauge }) => gauge === number);
  const next = at < 0 ? undefined : thicker[at + times];
  return next && `${before}${next.gauge}${after}`;
}

const plain = (value: number): string => String(Number(value.toFixed(DECIMALS)));

/** 12-3/8, or a decimal where no fraction of a rule is met. */
function inSixtyFourths(value: number): string {
  const parts = Math.round(Math.abs(value) * FINEST);
  if (Math.abs(parts / FINEST - Math.abs(value)) > 10 ** -DECIMALS) return plain(value);
  const sign = value < 0 ? "-" : "";
  const whole = Math.floor(parts / FINEST);
  let [over, under] = [parts % FINEST, FINEST];
  if (over === 0) return `${sign}${whole}`;
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return `${sign}${whole === 0 ? "" : `${whole}-`}${over}/${under}`;
}

import * as z from "zod/mini";
import { GaugeFamily } from "../shapes/material.ts";
import { decimalRatio, inchesToMm } from "./ratio.ts";
import { read, shown, unreadable, type Reading } from "./reading.ts";
import { tidy } from "./typography.ts";

/** One number of a gauge table. */
const GaugeRow = z.strictObject({
  /** A number, or a row of noughts. */
  gauge: z.string().check(z.regex(/^\d{1,7}$/)),
  /** As trade tables print it. */
  inches: z.number().check(z.positive(), z.maximum(1)),
  /** "read": seen in print. "rule": by the family's rule from figures that were read. "memory": rule or figure recalled. */
  provenance: z.enum(["read", "rule", "memory"]),
});
type GaugeRow = z.infer<typeof GaugeRow>;

export const GaugeTable = z.strictObject({
  name: z.string(),
  /** How the thicknesses come about, in words. */
  rule: z.string(),
  /** Ids in the list of sources. */
  sources: z.array(z.string()).check(z.minLength(1)),
  rows: z.array(GaugeRow).check(z.minLength(1)),
});
export type GaugeTable = z.infer<typeof GaugeTable>;

/** The same number is another thickness in another metal: one table for each family. */
export const Gauges = z.record(GaugeFamily, GaugeTable);
export type Gauges = z.infer<typeof Gauges>;

const WORD = String.raw`ga(?:uge|ge)?\.?`;
const GAUGE = new RegExp(String.raw`^(?:(\d{1,7})\s*-?\s*${WORD}|${WORD}\s*(\d{1,7}))$`, "i");

/** The number in "10 ga", "10ga", "10-gauge", "ga 10"; undefined where the text is no gauge. */
export function gaugeNumber(text: string): string | undefined {
  const match = GAUGE.exec(tidy(text) ?? "");
  return match?.[1] ?? match?.[2];
}

/** Thickness of a gauge in one family of metals. [mm] */
export function gaugeThickness(gauges: Gauges, family: GaugeFamily, gauge: string): Reading<number> {
  const { rows, name } = gauges[family];
  const row = rows.find((one) => one.gauge === gauge);
  if (!row)
    return unreadable(`there is no ${shown(gauge)} gauge in ${name}`, `the gauges there are ${listed(rows)}`);
  const ratio = decimalRatio(String(row.inches));
  if (!ratio) throw new RangeError(`gauge table ${family}: ${row.inches}`);
  return read(inchesToMm(ratio));
}

/** "3 to 30" where none is missing in between, else one by one. */
function listed(rows: readonly GaugeRow[]): string {
  const numbers = rows.map((row) => row.gauge);
  const unbroken = numbers.every((gauge, i) => i === 0 || Number(gauge) === Number(numbers[i - 1]) + 1);
  return unbroken && numbers.length > 2
    ? `${numbers[0] ?? ""} to ${numbers.at(-1) ?? ""}`
    : numbers.join(", ");
}

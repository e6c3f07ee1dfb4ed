import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { MM_PER_INCH } from "../geometry/units.ts";
import type { GaugeFamily } from "../shapes/material.ts";
import type { Gauges } from "./gauge.ts";

/** The gauge that this thickness is in one family of metals, to the last digit of its table: "10 ga"; null where it is none. */
export function gaugeOf(gauges: Gauges, family: GaugeFamily, thicknessMm: number): string | null {
  const row = gauges[family].rows.find(
    ({ inches }) => Math.abs(inches * MM_PER_INCH - thicknessMm) <= SAME_POINT_MM,
  );
  return row ? `${row.gauge} ga` : null;
}

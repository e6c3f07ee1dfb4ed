import { nearestFraction } from "../geometry/inches.ts";
import { dimension, MM_PER_INCH, plain, type Units } from "./format.ts";
import { together } from "./together.ts";

/** Gauges are thousandths of an inch apart. */
const INCH_PLACES = 4;

/**
 * Plate thickness; gauges are thousandths of an inch apart, so that inches get four places and mm stand beside.
 * Where the thickness is a sheet gauge of its metal, that stands behind it.
 */
export function thickness(
  mm: number,
  unit: Units,
  gauge: string | null,
): { readonly value: string; readonly beside?: string } {
  const metric = `${plain(mm, 2)} mm`;
  const own = unit === "mm" ? metric : `${plain(mm / MM_PER_INCH, INCH_PLACES)} in`;
  const value = together(gauge === null ? own : `${own} (${gauge})`);
  return unit === "mm" ? { value } : { value, beside: together(metric) };
}

/**
 * The same on a drawing, which names its unit once: 3; 0.1345 (10 ga); 0.25 (1/4). Where it is a gauge nobody looks for a
 * fraction.
 */
export function drawnThickness(mm: number, units: Units, gauge: string | null): string {
  const own = units === "mm" ? dimension(mm, units) : plain(mm / MM_PER_INCH, INCH_PLACES);
  const name = gauge ?? (units === "mm" ? null : nearestFraction(mm));
  return name === null || name === own ? own : `${own} (${name})`;
}

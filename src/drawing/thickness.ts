import { MM_PER_INCH, plain, type Units } from "./format.ts";
import { together } from "./together.ts";

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
  const own = unit === "mm" ? metric : `${plain(mm / MM_PER_INCH, 4)} in`;
  const value = together(gauge === null ? own : `${own} (${gauge})`);
  return unit === "mm" ? { value } : { value, beside: together(metric) };
}

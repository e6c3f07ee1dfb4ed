import { fixed, MM_PER_INCH, type Units } from "../../drawing/format.ts";
import { KG_PER_POUND } from "../../geometry/units.ts";
import type { BinderPart } from "../binder/binder.ts";
import { thickness } from "../words/numbers.ts";
import { totals } from "./totals.ts";

const FOOT_MM = 12 * MM_PER_INCH;

/** Plate by material and thickness as words, whole columns in one unit, so that the figures stand under each other. */
export function totalRows(parts: readonly BinderPart[], units: Units) {
  const inch = units === "in";
  const rows = totals(parts);
  const sum = (of: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((all, row) => all + of(row), 0);
  const words = (row: { parts: number; blanks: number; areaMm2: number; massKg: number }) => ({
    parts: String(row.parts),
    blanks: String(row.blanks),
    area: fixed(row.areaMm2 / (inch ? FOOT_MM ** 2 : 1e6), 2),
    mass: fixed(inch ? row.massKg / KG_PER_POUND : row.massKg, 1),
  });
  return {
    units: { area: inch ? "ft²" : "m²", mass: inch ? "lb" : "kg" },
    rows: rows.map((row) => ({
      material: row.material,
      thickness: thickness(row.thicknessMm, row.units, row.gauge).value,
      ...words(row),
    })),
    all: words({
      parts: sum(({ parts: count }) => count),
      blanks: sum(({ blanks }) => blanks),
      areaMm2: sum(({ areaMm2 }) => areaMm2),
      massKg: sum(({ massKg }) => massKg),
    }),
  };
}

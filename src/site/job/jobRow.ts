import type { BinderPart } from "../binder/binder.ts";
import { numbersIn, thickness } from "../words/numbers.ts";
import { plateNeeds } from "../words/plateNeed.ts";
import { SHAPE_NAMES } from "../words/shapes.ts";

/** A part as one row of the job's list, in its own units. */
export function jobRow({ report: { part, blanks, massKg }, material, gauge }: BinderPart) {
  const say = numbersIn(part.units);
  const quantity = part.quantity ?? 1;
  const plates = plateNeeds({ blanks }, say).map(({ size, anyOf }) => (anyOf ? `up to ${size}` : size));
  return {
    what: `${SHAPE_NAMES[part.shape]} · ${part.name}`,
    quantity: String(quantity),
    material: material.name,
    thickness: thickness(part.thickness, part.units, gauge).value,
    plate: plates.length > 0 ? `${[...new Set(plates)].join(" and ")}\u00a0${say.unit}` : "",
    blanks: String(blanks.length * quantity),
    massOfOne: say.mass(massKg),
    massOfAll: say.mass(massKg * quantity),
  };
}

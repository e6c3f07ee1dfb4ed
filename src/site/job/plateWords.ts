import type { Left, Stock } from "../../nesting/model.ts";
import { blankName } from "../../output/plateSheet.ts";
import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { MM_PER_INCH, type Units } from "../../geometry/units.ts";
import { numbersIn } from "../words/numbers.ts";
import type { JobPlate, PlateGroup } from "../../job/plates.ts";

/** Kinds of blanks on a plate, in the order of their numbers: "1 dust-cyclone-cone, 2 pieces". */
export function blanksInWords({ sheet }: JobPlate): string {
  const counts = new Map<number, { name: string; count: number }>();
  for (const one of sheet.blanks) {
    const known = counts.get(one.number);
    counts.set(one.number, { name: blankName(one), count: (known?.count ?? 0) + 1 });
  }
  return [...counts]
    .toSorted(([a], [b]) => a - b)
    .map(([number, { name, count }]) => `${number} ${name}${count > 1 ? ` (${count})` : ""}`)
    .join(", ");
}

type Sides = readonly [number, number];

const sizeIn = (units: Units, [long, high]: Sides): string => {
  const say = numbersIn(units);
  return `${say.bare(long)} × ${say.bare(high)}\u00a0${say.unit}`;
};
const size = ({ units }: Pick<PlateGroup, "units">, sides: Sides): string => sizeIn(units, sides);

/** Plate is ordered by whole inches or by centimetres: a size of whole ones in both directions was meant so. [mm] */
const ORDERED_BY: Readonly<Record<Units, number>> = { mm: 10, in: MM_PER_INCH };
const isWhole = (mm: number, step: number): boolean =>
  Math.abs(mm - step * Math.round(mm / step)) <= SAME_POINT_MM;

/**
 * A plate's size in the shop's units: in the others too where parts on its kind of plate are drawn in them, or where the
 * plate is sold by them. Whoever fetches a plate of 120 × 60 in finds it by no other number.
 */
export function sizeOf(
  group: Pick<PlateGroup, "units" | "plates">,
  { lengthMm, widthMm }: Pick<Stock, "lengthMm" | "widthMm">,
): string {
  const sides: Sides = [lengthMm, widthMm];
  const own = size(group, sides);
  const other = group.units === "mm" ? "in" : "mm";
  const whole = (units: Units) => sides.every((mm) => isWhole(mm, ORDERED_BY[units]));
  const isDrawn = group.plates.some(({ sheet }) =>
    sheet.blanks.some(({ report }) => report.part.units === other),
  );
  return isDrawn || (whole(other) && !whole(group.units)) ? `${own} (${sizeIn(other, sides)})` : own;
}

/** Why a blank goes on no plate, and what to do about it. */
export function leftInWords(group: PlateGroup, left: Left): string {
  const name = `${left.part}${left.piece > 1 ? ` piece ${left.piece}` : ""}`;
  const lot = `${name}, ${left.count === 1 ? "1 blank" : `${left.count} blanks`}`;
  const plate = group.toOrder.get(left.part);
  if (!plate) throw new RangeError(`no plate to order for ${left.part}`);
  const order = `order ${group.name} plate of at least ${sizeIn(plate.units, [plate.lengthMm, plate.widthMm])}`;
  const sizes = group.stock.map((one) => sizeOf(group, one)).join(" and ");
  if (group.stock.length === 0)
    return `${lot}: the shop file lists no plate of ${group.name}; ${order}, and list it under stock.`;
  if (left.grainOnly)
    return `${lot}: goes on ${sizes} only if it is turned, which the grain of the plate forbids; ${order} without a grain, or split the part in more pieces.`;
  return `${lot}: too large for ${sizes} with ${numbersIn(group.units).length(group.cutting.edgeMm)} left along the edges, at any angle; ${order}, or split the part in more pieces.`;
}

/** Sizes of plate with how many of each, the larger number first. */
export function plateCounts(group: PlateGroup): { readonly stock: Stock; readonly count: number }[] {
  const counts = new Map<string, { stock: Stock; count: number }>();
  for (const { stock, sheet } of group.plates) {
    const key = sizeOf(group, stock);
    counts.set(key, { stock, count: (counts.get(key)?.count ?? 0) + sheet.copies });
  }
  return [...counts.values()].toSorted((a, b) => b.count - a.count);
}

/** What is left of a plate to be kept. */
export function freeInWords(group: PlateGroup, { free }: JobPlate): string {
  if (!free) return "nothing worth keeping";
  const step = group.units === "mm" ? 1 : 2.54;
  return size(group, [step * Math.floor(free.xMm / step), step * Math.floor(free.yMm / step)]);
}

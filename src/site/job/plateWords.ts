import type { Left, Stock } from "../../nesting/model.ts";
import { blankName } from "../../output/plateSheet.ts";
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

const size = (group: Pick<PlateGroup, "units">, [long, high]: readonly [number, number]): string => {
  const say = numbersIn(group.units);
  return `${say.bare(long)} × ${say.bare(high)}\u00a0${say.unit}`;
};
export const sizeOf = (
  group: Pick<PlateGroup, "units">,
  { lengthMm, widthMm }: Pick<Stock, "lengthMm" | "widthMm">,
): string => size(group, [lengthMm, widthMm]);

/** Why a blank goes on no plate, and what to do about it. */
export function leftInWords(group: PlateGroup, left: Left): string {
  const name = `${left.part}${left.piece > 1 ? ` piece ${left.piece}` : ""}`;
  const lot = `${name}, ${left.count === 1 ? "1 blank" : `${left.count} blanks`}`;
  const plate = group.toOrder.get(left.part);
  if (!plate) throw new RangeError(`no plate to order for ${left.part}`);
  const order = `order ${group.name} plate of at least ${sizeOf(plate, plate)}`;
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

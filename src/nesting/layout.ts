import { AT_LIMIT_REL } from "../geometry/tolerance.ts";
import { Fill, type Liking, type Put } from "./fill.ts";
import type { NoFits, Work } from "./noFit.ts";
import type { Kind, Variant } from "./variant.ts";

/** One blank that is to be laid. */
export interface Wanted {
  readonly item: number;
  /** The turn that it takes if it finds a place in it on the plate at hand. */
  readonly wish?: Variant;
}

/** How a laying is to be made: everything that a search may change. */
export interface Recipe {
  /** Blanks in the order in which they are laid. */
  readonly order: readonly Wanted[];
  /** For each item the turns that it may take. */
  readonly turns: readonly (readonly Variant[])[];
  readonly liking: Liking;
}

/** Plates laid alike. */
export interface Filled {
  readonly puts: readonly Put[];
  readonly count: number;
}

/** One plate size with what is laid on it. */
export interface Room {
  readonly xMm: number;
  readonly yMm: number;
}

/** With more forms than this not every one of them is tried in every gap. */
export const MANY = 12;
/** Then, once a blank found no place on a plate, only blanks smaller by this are still tried there. [-] */
const SMALLER = 0.8;

/**
 * Lays blanks in their order, each in its best liked place and turn on the first plate that takes it, plate after plate.
 * A plate that could be laid once more from what is left is laid as often as it goes.
 */
export function layInOrder(
  recipe: Recipe,
  { room, kinds, noFits, work }: { room: Room; kinds: readonly Kind[]; noFits: NoFits; work: Work },
): Filled[] {
  const plates: Filled[] = [];
  let order = recipe.order;
  while (order.length > 0) {
    const fill = new Fill(room, { liking: recipe.liking, noFits, work });
    const rest: Wanted[] = [];
    const full = new Set<number>();
    let [freeMm2, largestMm2] = [room.xMm * room.yMm, Infinity];
    for (const one of order) {
      const { item, wish } = one;
      const { areaMm2 } = kinds[item] as Kind;
      // What found no place on this plate finds none later, as it only gets fuller.
      const hopeless = full.has(item) || areaMm2 > freeMm2 * (1 + AT_LIMIT_REL) || areaMm2 > largestMm2;
      const turns = recipe.turns[item] ?? [];
      if (!hopeless && ((wish && putDown(fill, [wish])) || putDown(fill, turns))) freeMm2 -= areaMm2;
      else {
        rest.push(one);
        if (hopeless) continue;
        full.add(item);
        if (kinds.length > MANY) largestMm2 = SMALLER * areaMm2;
      }
    }
    if (fill.puts.length === 0)
      throw new RangeError(
        `no plate takes item ${order[0]?.item} of ${kinds.length}, on ${room.xMm} × ${room.yMm}`,
      );
    const { count, left } = again(fill.puts, rest);
    plates.push({ puts: fill.puts, count });
    order = left;
  }
  return plates;
}

function putDown(fill: Fill, turns: readonly Variant[]): boolean {
  let best: { variant: Variant; x: number; y: number; cost: number } | undefined;
  for (const variant of turns) {
    const place = fill.best(variant, best?.cost ?? Infinity);
    if (place) best = { variant, x: place.x, y: place.y, cost: place.cost };
  }
  if (!best) return false;
  fill.put(best.variant, [best.x, best.y]);
  return true;
}

/** How often the same plate goes, the first time included, and what is left then. */
export function again<One extends Wanted>(
  puts: readonly Put[],
  rest: readonly One[],
): { count: number; left: readonly One[] } {
  const on = tally(puts.map(({ variant }) => variant.item));
  const there = tally(rest.map(({ item }) => item));
  let more = Infinity;
  for (const [item, count] of on) more = Math.min(more, Math.floor((there.get(item) ?? 0) / count));
  if (more === 0) return { count: 1, left: rest };
  const taken = new Map([...on].map(([item, count]) => [item, count * more] as const));
  const left = rest.filter(({ item }) => {
    const still = taken.get(item) ?? 0;
    if (still === 0) return true;
    taken.set(item, still - 1);
    return false;
  });
  return { count: 1 + more, left };
}

function tally(items: readonly number[]): Map<number, number> {
  const counts = new Map<number, number>();
  for (const item of items) counts.set(item, (counts.get(item) ?? 0) + 1);
  return counts;
}

/** How far right the blanks of a plate reach. [mm] */
export const reachOf = (puts: readonly Put[]): number =>
  puts.reduce((most, { variant, at }) => Math.max(most, at[0] + variant.right), 0);

/** Length of all plates, of the emptiest only what is used: the fewest plates win, then the longest strip left. [mm] */
export function lengthOf(plates: readonly Filled[], room: Room): number {
  let [sum, longestStrip] = [0, 0];
  for (const { puts, count } of plates) {
    sum += count * room.xMm;
    longestStrip = Math.max(longestStrip, room.xMm - reachOf(puts));
  }
  return sum - longestStrip;
}

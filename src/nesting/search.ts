import type { Liking } from "./fill.ts";
import { type Filled, layInOrder, lengthOf, type Recipe, type Room } from "./layout.ts";
import { noFits, type Work } from "./noFit.ts";
import { type Random, randomFrom } from "./random.ts";
import type { Kind, Variant } from "./variant.ts";

/** Units of work for an effort of 1: a few tenths of a second on a common machine. */
const WORK = 30_000_000;
/** A half turn apart belong together: blanks lie head to foot. [degrees] */
const HALF = 180;
const LIKINGS: readonly Liking[] = [
  { by: "right", height: 0.001 },
  { by: "right", height: 0.25 },
  { by: "left", height: 0.001 },
  { by: "middle", height: 0.05 },
  { by: "right", height: 1 },
];
/** A change that costs nothing is kept, so that the search does not stand still. */

/**
 * The best laying of some blanks on one plate size that a seeded search finds: first orders by size with one pair of
 * opposite turns at a time and with all, then small random changes to the best so far. It ends after so much work, counted
 * and not timed, so that the same files give the same plates.
 *
 * @param kinds every one goes on the plate in one turn at least, or has a count of nought
 */
export function search(
  kinds: readonly Kind[],
  room: Room,
  { effort, seed }: { effort: number; seed: number },
): Filled[] {
  const work: Work = { done: 0 };
  const table = noFits(kinds, work);
  const lay = (recipe: Recipe) => {
    const plates = layInOrder(recipe, { room, kinds, noFits: table, work });
    return { recipe, plates, length: lengthOf(plates, room) };
  };
  const [first, ...others] = beginnings(kinds);
  if (!first) return [];
  let best = lay(first);
  const random = randomFrom(seed);
  for (const recipe of others) {
    if (work.done > effort * WORK) return best.plates;
    const next = lay(recipe);
    if (next.length < best.length) best = next;
  }
  let now = best;
  while (work.done < effort * WORK) {
    const before = work.done;
    const next = lay(changed(now.recipe, kinds, random));
    if (next.length <= now.length) now = next;
    if (now.length < best.length) best = now;
    // A search that has nothing to do must end too.
    if (work.done === before) work.done += effort * WORK * IDLE;
  }
  return best.plates;
}
const IDLE = 0.001;

/** Largest first, by area and by length; all turns at once, and each pair of opposite turns for itself. */
function beginnings(kinds: readonly Kind[]): Recipe[] {
  const there = kinds.filter(({ count }) => count > 0);
  const extent = ({ variants }: Kind) =>
    Math.min(...variants.map(({ left, right, bottom, top }) => Math.max(right - left, top - bottom)));
  const orderBy = (measure: (kind: Kind) => number): number[] =>
    there
      .toSorted((a, b) => measure(b) - measure(a))
      .flatMap(({ item, count }) => Array.from({ length: count }, () => item));
  const orders = [orderBy(({ areaMm2 }) => areaMm2), ...(there.length > 1 ? [orderBy(extent)] : [])];
  const most = Math.max(0, ...there.map(({ variants }) => variants.length));
  const all = kinds.map(({ variants }) => variants);
  const pairs = Array.from({ length: most }, (_, i) => kinds.map((kind) => opposite(kind, i)));
  const turns = [all, ...pairs];
  return LIKINGS.flatMap((liking) =>
    turns.flatMap((turn) => orders.map((order) => ({ order, turns: turn, liking }))),
  );
}

/** One of an item's turns and the turn opposite to it. */
function opposite({ variants }: Kind, i: number): readonly Variant[] {
  const one = variants[i % Math.max(1, variants.length)];
  return variants.filter(({ turnDeg }) => {
    const apart = Math.abs(turnDeg - (one?.turnDeg ?? 0)) % HALF;
    return Math.min(apart, HALF - apart) < 1;
  });
}

/** One small change: two blanks change places, one comes first, an item gets other turns, or places are liked otherwise. */
function changed(recipe: Recipe, kinds: readonly Kind[], random: Random): Recipe {
  const below = (count: number) => Math.floor(random() * count);
  const pick = below(4);
  const { order } = recipe;
  const [i, j] = [below(order.length), below(order.length)];
  const [p, q] = [order[i] as number, order[j] as number];
  if (pick === 0 && p !== q) return { ...recipe, order: order.with(i, q).with(j, p) };
  if (pick === 1 && p !== order[0]) return { ...recipe, order: [p, ...order.toSpliced(i, 1)] };
  if (pick === 2) return { ...recipe, liking: LIKINGS[below(LIKINGS.length)] as Liking };
  const kind = kinds[p] as Kind;
  const own =
    below(3) === 0
      ? kind.variants
      : [
          ...new Set([
            ...opposite(kind, below(kind.variants.length)),
            ...(below(2) === 0 ? (recipe.turns[p] ?? []) : []),
          ]),
        ];
  return { ...recipe, turns: recipe.turns.with(p, own) };
}

import type { Liking } from "./fill.ts";
import { type Filled, layInOrder, lengthOf, MANY, type Recipe, type Room, type Wanted } from "./layout.ts";
import { noFits, type Work } from "./noFit.ts";
import { type Random, randomFrom } from "./random.ts";
import type { Kind, Variant } from "./variant.ts";

/** Units of work for an effort of 1, for each form and two more: a tenth of a second on a common machine. */
const WORK = 10_000_000;
const MORE_FORMS = 2;
/** A half turn apart belong together: blanks lie head to foot. [degrees] */
const HALF = 180;
const LIKINGS: readonly Liking[] = [
  { by: "right", height: 0.001 },
  { by: "right", height: 0.25 },
  { by: "left", height: 0.001 },
  { by: "middle", height: 0.05 },
  { by: "right", height: 1 },
];

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
  const forms = kinds.filter(({ count }) => count > 0).length;
  const most = effort * WORK * (forms + MORE_FORMS);
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
    if (work.done > most) return best.plates;
    const next = lay(recipe);
    if (next.length < best.length) best = next;
  }
  let now = best;
  for (let tries = 0; work.done < most; tries++) {
    const before = work.done;
    const next = lay(changed(now.recipe, kinds, random));
    // A little worse is taken too, less and less, so that the search does not stay where it began. It goes by the tries
    // and not by the effort: a longer search goes the same way, only further.
    const spare = (room.xMm * SPARE) / (1 + tries / COOLING);
    if (next.length <= now.length + spare * random()) now = next;
    if (now.length < best.length) best = now;
    // From where it has got to without finding anything, it goes back to the best.
    if (now.length > best.length && random() < BACK) now = best;
    // A search that has nothing to do must end too.
    if (work.done === before) work.done += most * IDLE;
  }
  return best.plates;
}
/** What a change may cost at first, as a share of the plate's length. [-] */
const SPARE = 0.03;
/** After so many tries it may cost half as much. */
const COOLING = 200;
/** How likely it is that the search goes back to the best. [-] */
const BACK = 0.02;
const IDLE = 0.001;

/** Largest first, by area and by length; all turns at once, and each pair of opposite turns for itself. */
function beginnings(kinds: readonly Kind[]): Recipe[] {
  const there = kinds.filter(({ count }) => count > 0);
  const extent = ({ variants }: Kind) =>
    Math.min(...variants.map(({ left, right, bottom, top }) => Math.max(right - left, top - bottom)));
  const orderBy = (measure: (kind: Kind) => number): Wanted[] =>
    there
      .toSorted((a, b) => measure(b) - measure(a))
      .flatMap(({ item, count }) => Array.from({ length: count }, () => ({ item })));
  const orders = [orderBy(({ areaMm2 }) => areaMm2), ...(there.length > 1 ? [orderBy(extent)] : [])];
  const count = Math.max(0, ...there.map(({ variants }) => variants.length));
  const all = kinds.map(({ variants }) => variants);
  const pairs = Array.from({ length: count }, (_, i) => kinds.map((kind) => opposite(kind, i)));
  // Many forms have few turns each, and want them all.
  const turns = there.length > MANY ? [all, ...pairs] : [...pairs, all];
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

/** One small change: two blanks change places, one comes first or wishes a turn, an item gets other turns, or places are liked otherwise. */
function changed(recipe: Recipe, kinds: readonly Kind[], random: Random): Recipe {
  const below = (count: number) => Math.floor(random() * count);
  const { order } = recipe;
  const [i, j] = [below(order.length), below(order.length)];
  const [p, q] = [order[i] as Wanted, order[j] as Wanted];
  const kind = kinds[p.item] as Kind;
  const anyTurn = kind.variants[below(kind.variants.length)];
  switch (below(6)) {
    case 0:
      return { ...recipe, order: order.with(i, q).with(j, p) };
    case 1:
      return { ...recipe, order: [p, ...order.toSpliced(i, 1)] };
    case 2:
      return { ...recipe, liking: LIKINGS[below(LIKINGS.length)] as Liking };
    case 3:
    case 4: {
      const wishes = below(4) > 0 && anyTurn !== undefined;
      return { ...recipe, order: order.with(i, { item: p.item, ...(wishes && { wish: anyTurn }) }) };
    }
    default: {
      const before = below(2) === 0 ? (recipe.turns[p.item] ?? []) : [];
      const own =
        below(3) === 0
          ? kind.variants
          : [...new Set([...opposite(kind, below(kind.variants.length)), ...before])];
      return { ...recipe, turns: recipe.turns.with(p.item, own) };
    }
  }
}

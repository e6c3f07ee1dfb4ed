import { LAY_TOUCH_MM } from "../geometry/tolerance.ts";
import type { Put } from "./fill.ts";
import { again, type Filled, lengthOf, type Room } from "./layout.ts";
import type { Kind, Variant } from "./variant.ts";

/** A rectangle of room, from its lower left corner. [mm] */
interface Area {
  readonly x: number;
  readonly y: number;
  readonly long: number;
  readonly high: number;
}

/** Which free area suits a rectangle best: the lowest number. */
type Suits = (area: Area, size: { long: number; high: number }) => readonly [number, number];
const SUITS: readonly Suits[] = [
  // The area that is left the narrowest, and the one furthest left.
  (area, { long, high }) => [
    Math.min(area.long - long, area.high - high),
    Math.max(area.long - long, area.high - high),
  ],
  (area, { long }) => [area.x + long, area.y],
];
const ORDERS: readonly ((box: Variant) => number)[] = [
  (box) => longOf(box) * highOf(box),
  (box) => Math.max(longOf(box), highOf(box)),
  (box) => Math.min(longOf(box), highOf(box)),
];
const longOf = ({ left, right }: Variant): number => right - left;
const highOf = ({ bottom, top }: Variant): number => top - bottom;

/**
 * The same blanks laid by the rectangles round them, which is what true shapes are measured against. Each blank lies as its
 * smallest rectangle does, long way along or across; free room is kept as the largest rectangles that fit in it.
 *
 * @see J. Jylänki, "A thousand ways to pack the bin" (2010), maximal rectangles, from memory
 */
export function layRectangles(kinds: readonly Kind[], room: Room, spacingMm: number): Filled[] {
  const boxes = kinds.map(({ variants }) => smallest(variants));
  let best: Filled[] | undefined;
  for (const order of ORDERS)
    for (const suits of SUITS) {
      const plates = inOrder(kinds, boxes, { room, spacingMm, order, suits });
      if (!best || lengthOf(plates, room) < lengthOf(best, room)) best = plates;
    }
  return best ?? [];
}

/** The turns in which a blank's rectangle is smallest; of opposite ones one will do. */
function smallest(variants: readonly Variant[]): Variant[] {
  const area = (one: Variant) => longOf(one) * highOf(one);
  const least = Math.min(...variants.map(area));
  const alike = variants.filter((one) => area(one) <= least * SAME);
  const seen = new Set<string>();
  return alike.filter((one) => {
    const key = `${Math.round(longOf(one))} ${Math.round(highOf(one))}`;
    return !seen.has(key) && seen.add(key);
  });
}
/** Rectangles that differ by less are one rectangle, turned. [-] */
const SAME = 1.0001;

function inOrder(
  kinds: readonly Kind[],
  boxes: readonly (readonly Variant[])[],
  how: { room: Room; spacingMm: number; order: (box: Variant) => number; suits: Suits },
): Filled[] {
  const size = (item: number) => {
    const [box] = boxes[item] ?? [];
    return box ? how.order(box) : 0;
  };
  let order = kinds
    .flatMap(({ item, count }) => Array.from({ length: count }, () => item))
    .toSorted((a, b) => size(b) - size(a) || a - b);
  const plates: Filled[] = [];
  while (order.length > 0) {
    const { puts, rest } = onePlate(order, boxes, how);
    if (puts.length === 0) throw new RangeError(`no plate takes the rectangle of item ${order[0]}`);
    const { count, left } = again(
      puts,
      rest.map((item) => ({ item })),
    );
    plates.push({ puts, count });
    order = left.map(({ item }) => item);
  }
  return plates;
}

function onePlate(
  order: readonly number[],
  boxes: readonly (readonly Variant[])[],
  { room, spacingMm, suits }: { room: Room; spacingMm: number; suits: Suits },
): { puts: Put[]; rest: number[] } {
  // Each rectangle takes its spacing to the right and above with it, and so does the plate.
  const spare = spacingMm + LAY_TOUCH_MM / 2;
  let free: Area[] = [{ x: 0, y: 0, long: room.xMm + spare, high: room.yMm + spare }];
  const puts: Put[] = [];
  const rest: number[] = [];
  const full = new Set<number>();
  for (const item of order) {
    let best: { at: Area; box: Variant; cost: readonly [number, number] } | undefined;
    for (const box of full.has(item) ? [] : (boxes[item] ?? [])) {
      const size = { long: longOf(box) + spacingMm, high: highOf(box) + spacingMm };
      for (const area of free) {
        if (size.long > area.long || size.high > area.high) continue;
        const cost = suits(area, size);
        if (!best || cost[0] < best.cost[0] || (cost[0] === best.cost[0] && cost[1] < best.cost[1]))
          best = { at: { x: area.x, y: area.y, ...size }, box, cost };
      }
    }
    if (!best) {
      full.add(item);
      rest.push(item);
      continue;
    }
    const { at, box } = best;
    puts.push({ variant: box, at: [at.x - box.left, at.y - box.bottom] });
    free = without(free, at);
  }
  return { puts, rest };
}

/** The largest rectangles of what is free once one is taken. */
function without(free: readonly Area[], taken: Area): Area[] {
  const parts = free.flatMap((area): Area[] => {
    const [right, top] = [area.x + area.long, area.y + area.high];
    const [takenRight, takenTop] = [taken.x + taken.long, taken.y + taken.high];
    if (taken.x >= right || takenRight <= area.x || taken.y >= top || takenTop <= area.y) return [area];
    return [
      { ...area, long: taken.x - area.x },
      { ...area, x: takenRight, long: right - takenRight },
      { ...area, high: taken.y - area.y },
      { ...area, y: takenTop, high: top - takenTop },
    ].filter(({ long, high }) => long > 0 && high > 0);
  });
  const holds = (outer: Area, inner: Area) =>
    outer.x <= inner.x &&
    outer.y <= inner.y &&
    outer.x + outer.long >= inner.x + inner.long &&
    outer.y + outer.high >= inner.y + inner.high;
  return parts.filter(
    (one, i) => !parts.some((other, j) => i !== j && holds(other, one) && (!holds(one, other) || j < i)),
  );
}

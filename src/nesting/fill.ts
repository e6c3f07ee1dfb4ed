import { LAY_TOUCH_MM } from "../geometry/tolerance.ts";
import type { Vec2 } from "../geometry/vector.ts";
import { isInside, type NoFit, type NoFits, shifted, type Work } from "./noFit.ts";
import type { Variant } from "./variant.ts";

/** A variant put down with its own origin at a place of the room between the margins. [mm] */
export interface Put {
  readonly variant: Variant;
  readonly at: Vec2;
}

/** What makes a place better than another: how far right it reaches or begins, and how much its height counts. */
export interface Liking {
  readonly by: "right" | "middle" | "left";
  readonly height: number;
}

/** Where the origin of a variant may come to lie on a plate as it is filled: corners of what is left free for it. */
interface Places {
  /** So many of the blanks put down have been heeded. */
  heeded: number;
  readonly low: Vec2;
  readonly high: Vec2;
  free: Vec2[];
  readonly noFits: NoFit[];
}

const HAIR = LAY_TOUCH_MM / 2;

/**
 * A plate as it is filled. For every variant the corners of its free room are kept: corners of the plate, corners of
 * no-fit polygons and where their sides cross each other or the plate's edge. Of these the best liked is taken, so that
 * each blank touches what lies there already (bottom-left filling).
 */
export class Fill {
  readonly puts: Put[] = [];
  private readonly room: { readonly xMm: number; readonly yMm: number };
  private readonly noFits: NoFits;
  private readonly work: Work;
  private readonly places = new Map<Variant, Places>();

  constructor(room: { readonly xMm: number; readonly yMm: number }, noFits: NoFits, work: Work) {
    this.room = room;
    this.noFits = noFits;
    this.work = work;
  }

  put(variant: Variant, at: Vec2): void {
    this.puts.push({ variant, at });
  }

  /** The best liked place for a variant with what it costs; undefined where there is none. */
  best(variant: Variant, liking: Liking): { at: Vec2; cost: number } | undefined {
    let best: { at: Vec2; cost: number } | undefined;
    for (const at of this.freeFor(variant)) {
      const cost = costOf(variant, at, liking);
      if (!best || cost < best.cost || (cost === best.cost && at[1] < best.at[1])) best = { at, cost };
    }
    return best;
  }

  private freeFor(variant: Variant): readonly Vec2[] {
    const places = this.places.get(variant) ?? this.begin(variant);
    for (; places.heeded < this.puts.length; places.heeded++)
      this.heed(places, variant, this.puts[places.heeded] as Put);
    return places.free;
  }

  private begin(variant: Variant): Places {
    const low: Vec2 = [-variant.left, -variant.bottom];
    // A blank as large as the room by a hair's breadth lies in one place.
    const high: Vec2 = [
      Math.max(low[0], this.room.xMm - variant.right),
      Math.max(low[1], this.room.yMm - variant.top),
    ];
    const free: Vec2[] = [low, [low[0], high[1]], [high[0], low[1]], high];
    const places: Places = { heeded: 0, low, high, free, noFits: [] };
    this.places.set(variant, places);
    return places;
  }

  /** Takes away the places that a blank covers, and adds those at its own no-fit polygon. */
  private heed(places: Places, variant: Variant, put: Put): void {
    const { low, high, noFits } = places;
    const noFit = shifted(this.noFits(put.variant, variant), put.at[0], put.at[1]);
    places.free = places.free.filter(([x, y]) => !isInside(noFit, x, y));
    this.work.done += places.free.length * (noFit.sides.length >> 3);
    const near = noFits.filter((one) => touching(one, noFit));
    const found = cornersOf(noFit, { low, high, near, work: this.work });
    noFits.push(noFit);
    for (const at of found) {
      this.work.done += noFit.sides.length >> 2;
      if (!noFits.some((one) => isInside(one, at[0], at[1]))) places.free.push(at);
    }
  }
}

function costOf({ left, right, bottom, top }: Variant, [x, y]: Vec2, { by, height }: Liking): number {
  const across = by === "right" ? x + right : by === "left" ? x + left : x + (left + right) / 2;
  const up = by === "left" ? y + bottom : y + top;
  return across + height * up;
}

const touching = (p: NoFit, q: NoFit): boolean =>
  p.left <= q.right && q.left <= p.right && p.bottom <= q.top && q.bottom <= p.top;

/** Corners of a no-fit polygon within the room, and where its sides cross the room's edges and those of others. */
function cornersOf(
  noFit: NoFit,
  { low, high, near, work }: { low: Vec2; high: Vec2; near: readonly NoFit[]; work: Work },
): Vec2[] {
  const found: Vec2[] = [];
  const add = (x: number, y: number): void => {
    if (x < low[0] - HAIR || x > high[0] + HAIR || y < low[1] - HAIR || y > high[1] + HAIR) return;
    found.push([Math.min(high[0], Math.max(low[0], x)), Math.min(high[1], Math.max(low[1], y))]);
  };
  const { sides } = noFit;
  for (let i = 0; i < sides.length; i += 4) {
    const [x1, y1] = [sides[i] as number, sides[i + 1] as number];
    const [x2, y2] = [sides[i + 2] as number, sides[i + 3] as number];
    if (Math.max(x1, x2) < low[0] - HAIR || Math.min(x1, x2) > high[0] + HAIR) continue;
    if (Math.max(y1, y2) < low[1] - HAIR || Math.min(y1, y2) > high[1] + HAIR) continue;
    add(x1, y1);
    for (const edge of [low[0], high[0]])
      if (x1 < edge !== x2 < edge) add(edge, y1 + ((edge - x1) / (x2 - x1)) * (y2 - y1));
    for (const edge of [low[1], high[1]])
      if (y1 < edge !== y2 < edge) add(x1 + ((edge - y1) / (y2 - y1)) * (x2 - x1), edge);
    for (const other of near) crossings(x1, y1, x2, y2, other, add, work);
  }
  return found;
}

function crossings(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  { sides, left, right, bottom, top }: NoFit,
  add: (x: number, y: number) => void,
  work: Work,
): void {
  const [west, east] = x1 < x2 ? [x1, x2] : [x2, x1];
  const [south, north] = y1 < y2 ? [y1, y2] : [y2, y1];
  if (east < left || west > right || north < bottom || south > top) return;
  work.done += sides.length >> 2;
  const [ux, uy] = [x2 - x1, y2 - y1];
  for (let i = 0; i < sides.length; i += 4) {
    const [x3, y3] = [sides[i] as number, sides[i + 1] as number];
    const [x4, y4] = [sides[i + 2] as number, sides[i + 3] as number];
    if ((x3 < west && x4 < west) || (x3 > east && x4 > east)) continue;
    if ((y3 < south && y4 < south) || (y3 > north && y4 > north)) continue;
    const [vx, vy] = [x4 - x3, y4 - y3];
    const d = ux * vy - uy * vx;
    // Sides in one direction: their ends are corners anyway.
    if (d === 0) continue;
    const t = ((x3 - x1) * vy - (y3 - y1) * vx) / d;
    const s = ((x3 - x1) * uy - (y3 - y1) * ux) / d;
    if (t >= 0 && t <= 1 && s >= 0 && s <= 1) add(x1 + t * ux, y1 + t * uy);
  }
}

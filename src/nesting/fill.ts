import { LAY_TOUCH_MM } from "../geometry/tolerance.ts";
import type { Vec2 } from "../geometry/vector.ts";
import { cornersOf, type LaidNoFit } from "./corners.ts";
import { isInside, type NoFits, type Work } from "./noFit.ts";
import { type Place, PlaceQueue } from "./placeQueue.ts";
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

/** Where the origin of a variant may come to lie on a plate as it is filled. */
interface Places {
  /** What it must keep clear of, one for each blank that is heeded. */
  readonly laid: LaidNoFit[];
  readonly low: Vec2;
  readonly high: Vec2;
  /** Corners of what may be free, the best liked first; whether one is free is asked when it comes first. */
  readonly queue: PlaceQueue;
}

const HAIR = LAY_TOUCH_MM / 2;

/**
 * A plate as it is filled. For every variant the corners of its free room are kept: corners of the plate, corners of
 * no-fit polygons and where their sides cross each other or the plate's edge. Of these the best liked is taken, so that
 * each blank touches what lies there already (bottom-left filling).
 */
export class Fill {
  readonly puts: Put[] = [];
  private readonly places = new Map<Variant, Places>();
  private readonly room: { readonly xMm: number; readonly yMm: number };
  private readonly liking: Liking;
  private readonly noFits: NoFits;
  private readonly work: Work;

  constructor(
    room: { readonly xMm: number; readonly yMm: number },
    { liking, noFits, work }: { liking: Liking; noFits: NoFits; work: Work },
  ) {
    this.room = room;
    this.liking = liking;
    this.noFits = noFits;
    this.work = work;
  }

  put(variant: Variant, at: Vec2): void {
    this.puts.push({ variant, at });
  }

  /** The best liked place for a variant, if it is liked better than `most`. */
  best(variant: Variant, most: number): Place | undefined {
    const places = this.places.get(variant) ?? this.begin(variant);
    for (const put of this.puts.slice(places.laid.length)) this.heed(places, variant, put);
    const { queue, laid } = places;
    for (let place = queue.first(); place; place = queue.first()) {
      if (place.cost >= most) return undefined;
      if (this.isFree(place, laid)) return place;
      queue.dropFirst();
    }
    return undefined;
  }

  /** Does a place keep clear of everything? What it has been asked about before is not asked again. */
  private isFree(place: Place, laid: readonly LaidNoFit[]): boolean {
    for (; place.heeded < laid.length; place.heeded++) {
      const { noFit, at } = laid[place.heeded] as LaidNoFit;
      this.work.done += noFit.border.length >> 2;
      if (isInside(noFit, place.x - at[0], place.y - at[1])) return false;
    }
    return true;
  }

  private begin(variant: Variant): Places {
    const low: Vec2 = [-variant.left, -variant.bottom];
    // A blank as large as the room by a hair's breadth lies in one place.
    const high: Vec2 = [
      Math.max(low[0], this.room.xMm - variant.right),
      Math.max(low[1], this.room.yMm - variant.top),
    ];
    const places: Places = { laid: [], low, high, queue: new PlaceQueue() };
    for (const x of [low[0], high[0]]) for (const y of [low[1], high[1]]) this.offer(places, variant, x, y);
    this.places.set(variant, places);
    return places;
  }

  private offer({ queue, low, high }: Places, variant: Variant, x: number, y: number): void {
    if (x < low[0] - HAIR || x > high[0] + HAIR || y < low[1] - HAIR || y > high[1] + HAIR) return;
    const [px, py] = [Math.min(high[0], Math.max(low[0], x)), Math.min(high[1], Math.max(low[1], y))];
    queue.add({ x: px, y: py, cost: costOf(variant, px, py, this.liking), heeded: 0 });
  }

  /** Adds the places at the no-fit polygon of one more blank. */
  private heed(places: Places, variant: Variant, put: Put): void {
    const one: LaidNoFit = { noFit: this.noFits(put.variant, variant), at: put.at };
    cornersOf(one, places, (x, y) => this.offer(places, variant, x, y), this.work);
    places.laid.push(one);
  }
}

function costOf({ left, right, bottom, top }: Variant, x: number, y: number, { by, height }: Liking): number {
  const across = by === "right" ? x + right : by === "left" ? x + left : x + (left + right) / 2;
  return across + height * (by === "left" ? y + bottom : y + top);
}

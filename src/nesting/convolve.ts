import type { GridPoint, Ring } from "./ring.ts";

/**
 * The convolution of two outlines: closed walks that go round every place of their Minkowski sum {a + b} and round no
 * other. A side of one outline is carried along at each corner of the other whose turn passes the side's direction;
 * at a hollow corner it is walked backwards. About as many steps as both have sides, where adding all pairs of sides
 * would take their product.
 *
 * Winding numbers about the walks count the places where the one outline and the other, reflected, meet; so what has a
 * number other than nought is the sum.
 *
 * @param a counter-clockwise, as `b`; whole numbers, so that directions compare exactly
 * @see L. Guibas, L. Ramshaw, J. Stolfi, "A kinetic framework for computational geometry", FOCS 1983, from memory
 */
export function convolve(a: Ring, b: Ring): Convolution {
  const walks = new Walks(a, b);
  // Where sides are parallel, those of a count as turned a hair clockwise: each pair is met once.
  carry(a, b, { includes: "last" }, (i, j, forward) => walks.step([i, j], [(i + 1) % a.length, j], forward));
  carry(b, a, { includes: "first" }, (j, i, forward) => walks.step([i, j], [i, (j + 1) % b.length], forward));
  return { walks: walks.closed(), forward: walks.forward };
}

export interface Convolution {
  readonly walks: readonly Ring[];
  /** The steps at bulging corners, each as its two ends: the border of the sum is made of these alone. */
  readonly forward: readonly Ring[];
}

type Step = (side: number, corner: number, forward: boolean) => void;

/** Each side of one outline with each corner of the other whose turn passes its direction. */
function carry(sides: Ring, corners: Ring, { includes }: { includes: "first" | "last" }, step: Step): void {
  const directions = sides.map((p, i) => minus(sides[(i + 1) % sides.length] as GridPoint, p));
  const around = corners.map((p, j) => minus(corners[(j + 1) % corners.length] as GridPoint, p));
  for (let j = 0; j < corners.length; j++) {
    const [before, after] = [around.at(j - 1) as GridPoint, around[j] as GridPoint];
    const turn = cross(before, after);
    if (turn === 0) continue;
    // A hollow corner turns back from `before` to `after`: the same span, walked the other way.
    const [from, to] = turn > 0 ? [before, after] : [after, before];
    // The hair's breadth by which parallel sides are told apart stays where it is, whichever way the corner turns.
    for (let i = 0; i < sides.length; i++) {
      const d = directions[i] as GridPoint;
      const [left, right] = [cross(from, d), cross(d, to)];
      if (left < 0 || right < 0) continue;
      if (left === 0 && (includes !== "first" || dot(from, d) < 0)) continue;
      if (right === 0 && (includes !== "last" || dot(to, d) < 0)) continue;
      step(i, j, turn > 0);
    }
  }
}

const minus = (p: GridPoint, q: GridPoint): GridPoint => ({ x: p.x - q.x, y: p.y - q.y });
const cross = (p: GridPoint, q: GridPoint): number => p.x * q.y - p.y * q.x;
const dot = (p: GridPoint, q: GridPoint): number => p.x * q.x + p.y * q.y;

/** Steps between pairs of corners, strung together into closed walks: every pair is left as often as it is reached. */
class Walks {
  readonly forward: Ring[] = [];
  private readonly ways = new Map<number, number[]>();
  private readonly a: Ring;
  private readonly b: Ring;

  constructor(a: Ring, b: Ring) {
    this.a = a;
    this.b = b;
  }

  step(from: readonly [number, number], to: readonly [number, number], forward: boolean): void {
    const [start, end] = forward ? [from, to] : [to, from];
    const key = start[0] * this.b.length + start[1];
    const way = end[0] * this.b.length + end[1];
    if (forward) this.forward.push([this.place(key), this.place(way)]);
    const ways = this.ways.get(key);
    if (ways) ways.push(way);
    else this.ways.set(key, [way]);
  }

  closed(): Ring[] {
    const walks: Ring[] = [];
    for (const [start, ways] of this.ways) {
      while (ways.length > 0) {
        const walk: GridPoint[] = [];
        let at = start;
        for (;;) {
          const next = this.ways.get(at)?.pop();
          if (next === undefined) throw new RangeError(`a walk that does not close, at pair ${at}`);
          walk.push(this.place(at));
          at = next;
          if (at === start) break;
        }
        walks.push(walk);
      }
    }
    return walks;
  }

  private place(key: number): GridPoint {
    const j = key % this.b.length;
    const [p, q] = [this.a[(key - j) / this.b.length] as GridPoint, this.b[j] as GridPoint];
    return { x: p.x + q.x, y: p.y + q.y };
  }
}

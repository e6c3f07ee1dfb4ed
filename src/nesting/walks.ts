import { LAY_GRID_MM } from "../geometry/tolerance.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Ring } from "./ring.ts";

/** Straight sides in a flat row: x₁, y₁, x₂, y₂ of the first, of the second, … [mm] */
export type Sides = Float64Array;

/** Closed walks, their steps sorted into upright strips so that only those are looked at that may pass above a place. */
export interface Walks {
  readonly sides: Sides;
  readonly left: number;
  readonly stripMm: number;
  /** Where the steps of each strip begin in the list of steps. */
  readonly starts: Int32Array;
  readonly steps: Int32Array;
}

/** As many strips as half the steps, so that each holds a few. */
const STEPS_PER_STRIP = 2;

export function walksOf(sides: Sides): Walks {
  let [left, right] = [Infinity, -Infinity];
  for (let i = 0; i < sides.length; i += 2) {
    const x = sides[i] as number;
    if (x < left) left = x;
    if (x > right) right = x;
  }
  const count = Math.max(1, Math.ceil(sides.length / 4 / STEPS_PER_STRIP));
  const stripMm = Math.max(right - left, LAY_GRID_MM) / count;
  const strips: number[][] = Array.from({ length: count }, () => []);
  const strip = (x: number) => Math.min(count - 1, Math.max(0, Math.floor((x - left) / stripMm)));
  for (let i = 0; i < sides.length; i += 4) {
    const [p, q] = [strip(sides[i] as number), strip(sides[i + 2] as number)];
    for (let k = Math.min(p, q); k <= Math.max(p, q); k++) strips[k]?.push(i);
  }
  const starts = new Int32Array(count + 1);
  strips.forEach((one, k) => (starts[k + 1] = (starts[k] as number) + one.length));
  return { sides, left, stripMm, starts, steps: Int32Array.from(strips.flat()) };
}

/** All steps of closed walks on the grid, in the order in which they are walked. */
export function sidesOf(walks: readonly Ring[]): Sides {
  const sides = new Float64Array(4 * walks.reduce((sum, walk) => sum + walk.length, 0));
  let at = 0;
  for (const walk of walks)
    walk.forEach((p, i) => {
      const q = walk[(i + 1) % walk.length] ?? p;
      for (const value of [p.x, p.y, q.x, q.y]) sides[at++] = value * LAY_GRID_MM;
    });
  return sides;
}

/** Single steps, each from its first end to its second. */
export function segmentsOf(pairs: readonly Ring[]): Sides {
  const sides = new Float64Array(4 * pairs.length);
  pairs.forEach(([p, q], i) => {
    if (p && q)
      sides.set(
        [p.x, p.y, q.x, q.y].map((value) => value * LAY_GRID_MM),
        4 * i,
      );
  });
  return sides;
}

/** The sides of one outline. */
export function outlineSides(outline: readonly Vec2[]): Sides {
  const sides = new Float64Array(4 * outline.length);
  outline.forEach((p, i) => {
    const q = outline[(i + 1) % outline.length] as Vec2;
    sides.set([p[0], p[1], q[0], q[1]], 4 * i);
  });
  return sides;
}

/** How often closed walks go round a place, counter-clockwise: steps that pass above it, each by its way. */
export function windingOf({ sides, left, stripMm, starts, steps }: Walks, x: number, y: number): number {
  const count = starts.length - 1;
  const strip = Math.floor((x - left) / stripMm);
  // Rounding may put what lies at the very edge beyond it.
  if (strip < -1 || strip > count) return 0;
  const at = strip < 0 ? 0 : strip >= count ? count - 1 : strip;
  const end = starts[at + 1] as number;
  let winding = 0;
  for (let k = starts[at] as number; k < end; k++) {
    const i = steps[k] as number;
    const x1 = sides[i] as number;
    const x2 = sides[i + 2] as number;
    const isBack = x1 > x;
    if (isBack === x2 > x) continue;
    const y1 = sides[i + 1] as number;
    const y2 = sides[i + 3] as number;
    if (y1 <= y && y2 <= y) continue;
    if ((y1 > y && y2 > y) || y1 + ((x - x1) / (x2 - x1)) * (y2 - y1) > y) winding += isBack ? 1 : -1;
  }
  return winding;
}

import { LAY_GRID_MM, LAY_TOUCH_MM } from "../geometry/tolerance.ts";
import { convolve } from "./convolve.ts";
import { gridRing, merged, type Ring, ringMm, turnOf } from "./ring.ts";
import type { Kind, Variant } from "./variant.ts";

/**
 * Where the origin of one blank must not come to lie beside another: inside these sides the two are nearer to each other
 * than the spacing, on them they are just as far apart. Sides as x₁, y₁, x₂, y₂, one after the other, in a flat row. [mm]
 */
export interface NoFit {
  readonly sides: Float64Array;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Counts what is done, so that a search ends at the same place on every machine. */
export interface Work {
  done: number;
}

/** What making one no-fit polygon weighs in units of work: comparing so many pairs of sides takes as long. */
const MAKING = 10_000;

export type NoFits = (fixed: Variant, moving: Variant) => NoFit;

/**
 * No-fit polygons of all pairs, each made when it is first asked for: the Minkowski sum of the one blank and the other
 * reflected. A pair turned together has the same polygon, turned.
 */
export function noFits(kinds: readonly Kind[], work: Work): NoFits {
  const outlines = new Map<string, readonly Ring[]>();
  const made = new Map<Variant, Map<Variant, NoFit>>();
  const pair = (a: Variant, b: Variant): readonly Ring[] => {
    const turn = (b.turnDeg - a.turnDeg + 360) % 360;
    const key = `${a.item} ${b.item} ${turn.toFixed(6)}`;
    const known = outlines.get(key);
    if (known) return known;
    work.done += MAKING;
    const fixed = (kinds[a.item] as Kind).ring;
    const moving = gridRing(ringMm((kinds[b.item] as Kind).ring), turn).map(({ x, y }) => ({ x: -x, y: -y }));
    const sum = merged(convolve(fixed, moving));
    outlines.set(key, sum);
    return sum;
  };
  return (fixed, moving) => {
    const row = made.get(fixed) ?? new Map<Variant, NoFit>();
    made.set(fixed, row);
    const known = row.get(moving);
    if (known) return known;
    const noFit = sidesOf(pair(fixed, moving), fixed.turnDeg);
    row.set(moving, noFit);
    return noFit;
  };
}

function sidesOf(rings: readonly Ring[], turnDeg: number): NoFit {
  const [c, s] = turnOf(turnDeg);
  const sides = new Float64Array(4 * rings.reduce((sum, ring) => sum + ring.length, 0));
  let at = 0;
  for (const ring of rings)
    for (let i = 0; i < ring.length; i++)
      for (const { x, y } of [ring[i], ring[(i + 1) % ring.length]] as [Ring[number], Ring[number]]) {
        sides[at++] = (c * x - s * y) * LAY_GRID_MM;
        sides[at++] = (s * x + c * y) * LAY_GRID_MM;
      }
  return boxed(sides);
}

function boxed(sides: Float64Array): NoFit {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < sides.length; i += 2) {
    const [x, y] = [sides[i] as number, sides[i + 1] as number];
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < bottom) bottom = y;
    if (y > top) top = y;
  }
  return { sides, left, right, bottom, top };
}

/** On a side is not inside, and a hair beyond it neither: blanks may just touch. */
const HAIR = LAY_TOUCH_MM / 2;

/** Does a place lie inside, by more than a hair? Counts the sides above it. No pairs are taken apart: this runs millions of times. */
export function isInside({ sides, left, right, bottom, top }: NoFit, x: number, y: number): boolean {
  if (x <= left + HAIR || x >= right - HAIR || y <= bottom + HAIR || y >= top - HAIR) return false;
  let inside = false;
  for (let i = 0; i < sides.length; i += 4) {
    const x1 = sides[i] as number;
    const x2 = sides[i + 2] as number;
    const west = x1 < x2 ? x1 : x2;
    const east = x1 < x2 ? x2 : x1;
    if (x < west - HAIR || x > east + HAIR) continue;
    const y1 = sides[i + 1] as number;
    const y2 = sides[i + 3] as number;
    if (x1 > x !== x2 > x && y1 + ((x - x1) / (x2 - x1)) * (y2 - y1) > y) inside = !inside;
    if (y < (y1 < y2 ? y1 : y2) - HAIR || y > (y1 < y2 ? y2 : y1) + HAIR) continue;
    const ux = x2 - x1;
    const uy = y2 - y1;
    const off = ux * (y - y1) - uy * (x - x1);
    if (off * off <= HAIR * HAIR * (ux * ux + uy * uy)) return false;
  }
  return inside;
}

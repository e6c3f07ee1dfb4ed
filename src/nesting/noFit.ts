import { turnOf } from "../geometry/placed.ts";
import { LAY_TOUCH_MM } from "../geometry/tolerance.ts";
import { borderOf } from "./border.ts";
import { convolve } from "./convolve.ts";
import { gridRing, type Ring, ringMm } from "./ring.ts";
import type { Kind, Variant } from "./variant.ts";
import { segmentsOf, type Sides, sidesOf, type Walks, walksOf, windingOf } from "./walks.ts";

/**
 * Where the origin of one blank must not come to lie beside another: inside the border the two are nearer to each other
 * than the spacing, on it they are just as far apart. [mm]
 */
export interface NoFit {
  /** Closed walks that go round every such place. */
  readonly walks: Walks;
  readonly border: Sides;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The same as sides alone. */
interface Outlines {
  readonly walks: Sides;
  readonly border: Sides;
}

/** Counts what is done, so that a search ends at the same place on every machine. */
export interface Work {
  done: number;
}

/** What making one no-fit polygon weighs in units of work: comparing so many pairs of sides takes as long. */
const MAKING = 100_000;

export type NoFits = (fixed: Variant, moving: Variant) => NoFit;

/**
 * No-fit polygons of all pairs, each made when it is first asked for: the Minkowski sum of the one blank and the other
 * reflected. A pair turned together has the same polygon, turned.
 */
export function noFits(kinds: readonly Kind[], work: Work): NoFits {
  const pairs = new Map<string, Outlines>();
  const made = new Map<Variant, Map<Variant, NoFit>>();
  const pair = (a: Variant, b: Variant): Outlines => {
    const turn = (b.turnDeg - a.turnDeg + 360) % 360;
    const key = `${a.item} ${b.item} ${turn.toFixed(6)}`;
    const known = pairs.get(key);
    if (known) return known;
    work.done += MAKING;
    const fixed = (kinds[a.item] as Kind).ring;
    const moving = gridRing(ringMm((kinds[b.item] as Kind).ring), turn).map(({ x, y }) => ({ x: -x, y: -y }));
    const one = outlinesOf(fixed, moving);
    pairs.set(key, one);
    return one;
  };
  return (fixed, moving) => {
    const row = made.get(fixed) ?? new Map<Variant, NoFit>();
    made.set(fixed, row);
    const known = row.get(moving);
    if (known) return known;
    const { walks, border } = pair(fixed, moving);
    const noFit = boxed(turned(walks, fixed.turnDeg), turned(border, fixed.turnDeg));
    row.set(moving, noFit);
    return noFit;
  };
}

/** The Minkowski sum of two outlines. */
export function outlinesOf(a: Ring, b: Ring): Outlines {
  const { walks, forward } = convolve(a, b);
  const sides = sidesOf(walks);
  return { walks: sides, border: borderOf(segmentsOf(forward), walksOf(sides)) };
}

function turned(sides: Sides, turnDeg: number): Sides {
  if (turnDeg === 0) return sides;
  const [c, s] = turnOf(turnDeg);
  const out = new Float64Array(sides.length);
  for (let i = 0; i < sides.length; i += 2) {
    const [x, y] = [sides[i] as number, sides[i + 1] as number];
    out[i] = c * x - s * y;
    out[i + 1] = s * x + c * y;
  }
  return out;
}

function boxed(walks: Sides, border: Sides): NoFit {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < border.length; i += 2) {
    const [x, y] = [border[i] as number, border[i + 1] as number];
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < bottom) bottom = y;
    if (y > top) top = y;
  }
  return { walks: walksOf(walks), border, left, right, bottom, top };
}

/** On the border is not inside, and a hair beyond it neither: blanks may just touch. */
const HAIR = LAY_TOUCH_MM / 2;

/** Does a place lie inside, by more than a hair? */
export function isInside({ walks, border, left, right, bottom, top }: NoFit, x: number, y: number): boolean {
  if (x <= left + HAIR || x >= right - HAIR || y <= bottom + HAIR || y >= top - HAIR) return false;
  return windingOf(walks, x, y) !== 0 && !isOn(border, x, y);
}

/** Does a place lie on one of some sides, within a hair? No pairs are taken apart: this runs millions of times. */
function isOn(sides: Sides, x: number, y: number): boolean {
  for (let i = 0; i < sides.length; i += 4) {
    const x1 = sides[i] as number;
    const x2 = sides[i + 2] as number;
    if (x < (x1 < x2 ? x1 : x2) - HAIR || x > (x1 < x2 ? x2 : x1) + HAIR) continue;
    const y1 = sides[i + 1] as number;
    const y2 = sides[i + 3] as number;
    if (y < (y1 < y2 ? y1 : y2) - HAIR || y > (y1 < y2 ? y2 : y1) + HAIR) continue;
    const ux = x2 - x1;
    const uy = y2 - y1;
    const off = ux * (y - y1) - uy * (x - x1);
    if (off * off <= HAIR * HAIR * (ux * ux + uy * uy)) return true;
  }
  return false;
}

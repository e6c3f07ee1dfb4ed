import { degrees } from "../geometry/angle.ts";
import { distance3 } from "../geometry/vector.ts";
import type { BlankOrder, FlatBlank } from "../geometry/blank.ts";
import { turning } from "../geometry/measure.ts";
import type { Skin } from "../geometry/skin.ts";
import { isFlat, type Station } from "../geometry/station.ts";
import { SAME_ANGLE } from "../geometry/tolerance.ts";

/** An element of the layout by hand: its station, and where that stands in the development. */
export interface HandElement {
  readonly index: number;
  readonly station: Station;
  /** Is it one of the blank's two seams? */
  readonly seam: boolean;
}

/** Seam 1, the elements of the layout by hand, the borders of flats, seam 2: in that order. */
export function handElements(order: BlankOrder, blank: FlatBlank): HandElement[] {
  const { stations } = blank.development;
  const last = blank.net.a.length - 1;
  // Both lie in the order of their angles: each knot is passed once.
  const knots = order.knots.toSorted((p, q) => p - q);
  let next = 0;
  const wanted = ({ theta }: Station): boolean => {
    while ((knots[next] ?? Infinity) < theta - SAME_ANGLE) next += 1;
    return Math.abs((knots[next] ?? Infinity) - theta) <= SAME_ANGLE;
  };
  const out: HandElement[] = [];
  for (let index = 0; index <= last; index++) {
    const station = stations[index] as Station;
    const [before, after] = [stations[index - 1], stations[index + 1]];
    const border = (before && isFlat(before, station)) || (after && index < last && isFlat(station, after));
    const seam = index === 0 || index === last;
    if (seam || border || wanted(station)) out.push({ index, station, seam });
  }
  return out;
}

export interface ElementRange {
  readonly shortest: number;
  readonly longest: number;
}

/** Shortest and longest element of the developed skin, all round. [mm] */
export function elementRange(laid: readonly { readonly flat: FlatBlank }[]): ElementRange {
  let [shortest, longest] = [Infinity, -Infinity];
  for (const { flat } of laid)
    for (const { a, b } of flat.development.stations) {
      const length = distance3(a, b);
      shortest = Math.min(shortest, length);
      longest = Math.max(longest, length);
    }
  return { shortest, longest };
}

/** The pattern's lines and the marking table ask for the same bends: the turning is integrated once. */
const bends = new WeakMap<readonly HandElement[], readonly number[]>();

/**
 * What the plate turns at each element: the turning between the middles of the zones on either side of it, so that
 * over all lines of a corner it sums to the corner's turning. Half of the first and last zone belong to the seam. [degrees]
 */
export function bendsDeg(skin: Skin, elements: readonly HandElement[]): readonly number[] {
  const known = bends.get(elements);
  if (known) return known;
  const half = (p: HandElement | undefined, q: HandElement | undefined, upper: boolean): number => {
    if (!p || !q || isFlat(p.station, q.station)) return 0;
    const [from, to] = [p.station.theta, q.station.theta];
    const middle = (from + to) / 2;
    return turning(skin, upper ? { from: middle, to } : { from, to: middle });
  };
  const found = elements.map((element, i) =>
    degrees(half(elements[i - 1], element, true) + half(element, elements[i + 1], false)),
  );
  bends.set(elements, found);
  return found;
}

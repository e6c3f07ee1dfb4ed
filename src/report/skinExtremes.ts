import { TURN } from "../geometry/angle.ts";
import { allRound } from "../geometry/measure.ts";
import type { Skin } from "../geometry/skin.ts";
import { squareRadii } from "../geometry/squareRadius.ts";
import type { Station } from "../geometry/station.ts";

/** One figure for each end. [mm] */
interface BothEnds {
  readonly large: number;
  readonly small: number;
}

/** Directions across an end that are tried: to each degree. A width is the same from both of its sides. */
const WIDTHS = allRound().filter((theta) => theta < TURN / 2);

/**
 * Least distance between parallel tangents of each rim, end A large: what still passes through it; 0 without a skin. [mm]
 *
 * @param isAlike the skin is the same all round, as a right cone's is: one direction says it
 */
export function leastWidths(skin: Skin | null, isAlike: boolean): BothEnds {
  if (!skin) return { large: 0, small: 0 };
  const { a, b } = skin;
  let [large, small] = [Infinity, Infinity];
  for (const theta of isAlike ? [0] : WIDTHS) {
    // Both ends at one angle, then both at the other: a parallel skin works out its ends together.
    const [here, hereB] = [a.support(theta, 1).h, b.support(theta, 1).h];
    large = Math.min(large, here + a.support(theta + TURN / 2, 1).h);
    small = Math.min(small, hereB + b.support(theta + TURN / 2, 1).h);
  }
  return { large, small };
}

/** Tightest radius square to an element at each end, of all stations, of which one is enough where the skin is the same all round. [mm] */
export function tightestSquares(skin: Skin, stations: readonly Station[], isAlike: boolean): BothEnds {
  let [large, small] = [Infinity, Infinity];
  for (const { theta } of isAlike ? stations.slice(0, 1) : stations) {
    const radii = squareRadii(skin, theta, 1);
    large = Math.min(large, radii.a);
    small = Math.min(small, radii.b);
  }
  return { large, small };
}

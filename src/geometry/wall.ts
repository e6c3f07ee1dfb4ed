import type { Rim } from "./rim.ts";

const SHARE = { inside: 0, middle: 0.5, outside: 1 } as const;

/**
 * Distance along the outward normal from the surface a size is measured on to another surface of the wall.
 *
 * @param share the surface wanted: 0 the inside face, 1 the outside face, the neutral share between
 * @returns [mm], negative towards the inside
 * @example toShare({ measured: "outside", thicknessMm: 12, share: 0.5 }) // → -6.0
 */
export function toShare(wall: {
  readonly measured: keyof typeof SHARE;
  readonly thicknessMm: number;
  readonly share: number;
}): number {
  return (wall.share - SHARE[wall.measured]) * wall.thicknessMm;
}

/** Where on a rim the radius of curvature is least, of those angles tried. */
export function tightest(
  rim: Rim,
  thetas: readonly number[],
): { readonly theta: number; readonly rho: number } {
  let best = { theta: 0, rho: Infinity };
  for (const theta of thetas) {
    const { rho } = rim.support(theta, 1);
    if (rho < best.rho) best = { theta, rho };
  }
  return best;
}

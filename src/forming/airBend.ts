/** Constant of the force formula for a V die, and the highest that is in use: books and shops differ by a fifth. [-] */
export const V_DIE = 1.33;
export const V_DIE_HIGHEST = 1.6;

export interface AirBend {
  readonly tensileMPa: number;
  readonly lineMm: number;
  readonly thicknessMm: number;
  readonly dieMm: number;
  readonly constant?: number;
}

/**
 * Greatest force of one air bend over a V die: F = K·TS·w·t²/V, K = 1.33.
 *
 * @param bend tensile strength [MPa], line w, thickness t, die opening V [mm]
 * @returns [N]
 * @see groover-memory; the constants in use run from 1.33 to 1.6
 * @example airBendForceN({ tensileMPa: 450, lineMm: 44.5, thicknessMm: 3.2, dieMm: 25 }) // → 10908.979
 */
export function airBendForceN({ tensileMPa, lineMm, thicknessMm, dieMm, constant = V_DIE }: AirBend): number {
  return (constant * tensileMPa * lineMm * thicknessMm * thicknessMm) / dieMm;
}

/**
 * The way back: the longest line that this force bends. [mm]
 *
 * @example longestAirBendMm({ tensileMPa: 450, thicknessMm: 3.2, dieMm: 25, forceN: 10908.979 }) // → 44.500
 */
export function longestAirBendMm(bend: Omit<AirBend, "lineMm"> & { readonly forceN: number }): number {
  return bend.forceN / airBendForceN({ ...bend, lineMm: 1 });
}

/**
 * How far a straight roll, set for both ends of a cone, overbends the middle: the raise needed runs as 1/distance from
 * the apex, the roll is straight, and half-way between the ends it stands M = (q + 1)²/(4q) times too high.
 *
 * @param ratio q = large rim / small rim; from 1
 * @returns M, from 1
 * @see derived here
 * @example middleOverbend(2) // → 1.125
 * @example middleOverbend(3) // → 1.333333
 */
export function middleOverbend(ratio: number): number {
  return (ratio + 1) ** 2 / (4 * ratio);
}

export interface TiltAsked {
  /** Raise that each end needs by itself. [mm] */
  readonly raiseMm: { readonly large: number; readonly small: number };
  /** Large rim over small rim. */
  readonly ratio: number;
  readonly slantMm: number;
  /** From the end of the roll face that the stop stands at to the small edge. */
  readonly stopMm: number;
  readonly rollFaceMm: number;
  /** From the ends of the roll face to the bearings: at the stop's end, and at the other. */
  readonly bearingsMm: readonly [number, number];
}

export interface Tilt {
  /** Where to start at each end, the overbend of the middle taken off. [mm] */
  readonly largeMm: number;
  readonly smallMm: number;
  /** What half the slant needs, and the start gives. [mm] */
  readonly middleMm: number;
  readonly tiltRad: number;
  /** The same line carried to the bearings. [mm] */
  readonly bearingMm: { readonly small: number; readonly large: number };
}

/**
 * Tilt of the bending roll for the first pass, the small edge on the stop at the drop end: both end raises divided by M,
 * so that the middle is right and both ends are a little open, and the straight line through them carried to the bearings.
 * A start for a trial: the small end is not gripped and usually needs more.
 *
 * @see derived here
 */
export function rollTilt({ raiseMm, ratio, slantMm, stopMm, rollFaceMm, bearingsMm }: TiltAsked): Tilt {
  const over = middleOverbend(ratio);
  const [largeMm, smallMm] = [raiseMm.large / over, raiseMm.small / over];
  const slope = (smallMm - largeMm) / slantMm;
  const at = (fromDropEndMm: number) => smallMm - slope * (fromDropEndMm - stopMm);
  return {
    largeMm,
    smallMm,
    middleMm: (largeMm + smallMm) / 2,
    tiltRad: Math.atan(slope),
    bearingMm: { small: at(-bearingsMm[0]), large: at(rollFaceMm + bearingsMm[1]) },
  };
}

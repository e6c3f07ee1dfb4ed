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
  /** Raise that each end and half the slant need by themselves; the middle null where the roll cannot bend it. [mm] */
  readonly raiseMm: { readonly large: number; readonly middle: number | null; readonly small: number };
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
  /** How many times too high the line through both needs stands there. */
  readonly overbend: number;
  readonly tiltRad: number;
  /** The same line carried to the bearings. [mm] */
  readonly bearingMm: { readonly small: number; readonly large: number };
}

/** By what the middle needs; by the apex distances alone where that is not known. */
function overbendOf({ raiseMm: { large, middle, small }, ratio }: TiltAsked): number {
  if (middle === null || middle <= 0) return middleOverbend(ratio);
  return Math.max(1, (large + small) / (2 * middle));
}

/**
 * Tilt of the bending roll for the first pass, the small edge on the stop at the drop end: both end raises divided by how
 * far a straight roll set for them overbends the middle, so that half the slant gets what it needs, by which a skin that
 * stays developable goes from end to end, and the straight line through them carried to the bearings. Since the lever and
 * the springback are not in proportion to the bend, that is less than by the apex distances. A start for a trial: the small
 * end is not gripped and usually needs more.
 *
 * @see derived here
 */
export function rollTilt(asked: TiltAsked): Tilt {
  const { raiseMm, slantMm, stopMm, rollFaceMm, bearingsMm } = asked;
  const over = overbendOf(asked);
  const [largeMm, smallMm] = [raiseMm.large / over, raiseMm.small / over];
  const slope = (smallMm - largeMm) / slantMm;
  const at = (fromDropEndMm: number) => smallMm - slope * (fromDropEndMm - stopMm);
  return {
    largeMm,
    smallMm,
    middleMm: (largeMm + smallMm) / 2,
    overbend: over,
    tiltRad: Math.atan(slope),
    bearingMm: { small: at(-bearingsMm[0]), large: at(rollFaceMm + bearingsMm[1]) },
  };
}

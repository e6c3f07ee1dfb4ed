/** One end of a blank that is bent alike but for a straight lead at one of its seam edges. */
interface LedEnd {
  /** Middle radius in the plane of the rim, where it is bent. [mm] */
  readonly levelMm: number;
  /** Turn that the blank would sweep, bent alike all along. [rad] */
  readonly sweepRad: number;
  /** Sine of the half angle of the cone that it is part of so far. [-] */
  readonly sine: number;
  readonly leadMm: number;
}

/** Where a lead ends, from the element at which it leaves the bend: along the tangent, nearer to the axis, and deeper. [mm] */
interface LeadTip {
  readonly alongMm: number;
  readonly inMm: number;
  readonly deeperMm: number;
}

/**
 * A lead of this length lies in the plane that touches the cone along the element where the bend ends. In the flat blank it
 * takes the angle ψ = lead × sin a / r; so its rim lies (r / sin a) sin ψ along the tangent, r (1 − cos ψ) nearer to the
 * axis, and r (1 − cos ψ) cot a deeper.
 *
 * @see derived here
 */
export function leadTip({ levelMm, sine }: Pick<LedEnd, "levelMm" | "sine">, leadMm: number): LeadTip {
  const half = (leadMm * sine) / levelMm / 2;
  // (r / sin a) 2 sin(ψ/2), which a pipe has too.
  const chordMm = half === 0 ? leadMm : (leadMm * Math.sin(half)) / half;
  const backMm = chordMm * Math.sin(half);
  return {
    alongMm: chordMm * Math.cos(half),
    inMm: backMm * sine,
    deeperMm: backMm * Math.sqrt(1 - sine * sine),
  };
}

/** Turn of the part that is bent. [rad] */
export const bentSweepRad = ({ levelMm, sweepRad, leadMm }: Omit<LedEnd, "sine">): number =>
  Math.max(0, sweepRad - leadMm / levelMm);

/**
 * Straight across between the seam edges of such a blank, from corners that lie so far nearer to the axis than its middle;
 * below 0 by how far the lead has passed the other edge.
 *
 * @returns [mm]
 * @see derived here, from {@link leadTip}
 * @example acrossLedMm({ levelMm: 500, sweepRad: Math.PI, sine: 0, leadMm: 0 }, 0) // → 1000
 */
export function acrossLedMm(end: LedEnd, nearerMm: number): number {
  const bentRad = bentSweepRad(end);
  const tip = leadTip(end, (end.sweepRad - bentRad) * end.levelMm);
  const cornerMm = end.levelMm - nearerMm;
  const outMm = cornerMm - tip.inMm;
  const [cos, sin] = [Math.cos(bentRad), Math.sin(bentRad)];
  const [x, y] = [outMm * cos - tip.alongMm * sin - cornerMm, outMm * sin + tip.alongMm * cos];
  const isPast = bentRad + Math.atan2(tip.alongMm, outMm) > 2 * Math.PI;
  return isPast ? -y : Math.hypot(x, y, tip.deeperMm);
}

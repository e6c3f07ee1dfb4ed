/** Yield and least tensile strength of structural plate: S235, A36, S275, S355. [MPa] */
const STEELS = [
  [235, 360],
  [250, 400],
  [275, 410],
  [355, 470],
] as const;

/**
 * Least tensile strength of the structural plate that has this yield strength: by straight lines between the grades,
 * in proportion below the softest, at an equal distance above the hardest. [MPa]
 *
 * A maker rates a roll for a yield strength alone and has carbon plate in mind; this gives the rating its other half,
 * so that plate of the rated grade itself is neither raised nor lowered.
 *
 * @param yieldMPa rated yield strength [MPa]; above 0
 * @returns [MPa]
 * @see en-10025-2, astm-a36 for the grades; the lines between them are derived here
 * @example nominalTensileMPa(355) // → 470
 * @example nominalTensileMPa(315) // → 440
 */
export function nominalTensileMPa(yieldMPa: number): number {
  const [soft] = STEELS;
  if (yieldMPa <= soft[0]) return (yieldMPa * soft[1]) / soft[0];
  for (const [i, [high, tensile]] of STEELS.entries()) {
    const below = STEELS[i - 1];
    if (below && yieldMPa <= high)
      return below[1] + ((yieldMPa - below[0]) * (tensile - below[1])) / (high - below[0]);
  }
  const hard = STEELS[3];
  return hard[1] + yieldMPa - hard[0];
}

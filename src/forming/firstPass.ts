import { length2 } from "../geometry/vector.ts";

/** Steep cones: how far closed the first pass ends, from and to, and what it must never pass. Common practice. [-] */
const STEEP = { from: 0.65, to: 0.8, cap: 0.85 };
/** The same as shares of the final bend, for wide cones. Derived here. [-] */
const SHARE = { from: 0.6, to: 0.75, cap: 0.8 };

/**
 * Closure at which a right cone has this share of its final bend: k(σ) = √(sin²α + σ² cos²α).
 *
 * @param bend half angle [rad] from 0 to a right angle; share σ from 0 (flat) to 1 (closed)
 * @returns share of the turn, from sin α to 1
 * @see derived here
 * @example closureOfShare({ halfAngleRad: Math.PI / 6, share: 0 }) // → 0.5
 * @example closureOfShare({ halfAngleRad: Math.PI / 6, share: 1 }) // → 1
 */
export function closureOfShare({ halfAngleRad, share }: { halfAngleRad: number; share: number }): number {
  // The closed cone is a whole turn, whatever the rounding of sin² + cos² says.
  if (share === 1) return 1;
  return length2([Math.sin(halfAngleRad), share * Math.cos(halfAngleRad)]);
}

/**
 * Share of the final bend at this closure: σ = √(k² − sin²α)/cos α; null where the flat blank is already as far closed.
 *
 * @see derived here
 * @example shareOfClosure({ halfAngleRad: Math.PI / 6, closed: 0.65 }) // → 0.479583
 */
export function shareOfClosure({
  halfAngleRad,
  closed,
}: {
  halfAngleRad: number;
  closed: number;
}): number | null {
  const flat = Math.sin(halfAngleRad);
  if (closed <= flat) return null;
  return closed === 1 ? 1 : Math.sqrt((closed - flat) * (closed + flat)) / Math.cos(halfAngleRad);
}

/** Where the first of two passes ends: the window in closure, and the closure it must never pass. */
export interface FirstPass {
  readonly from: number;
  readonly to: number;
  readonly cap: number;
}

/**
 * Window and cap of the first pass, carried from steep cones to wide ones by the share of the bend.
 *
 * @see common practice, no source, for 65 to 80 % and never above 85 %; the shares for wide cones are derived here
 * @example firstPass(Math.PI / 6).from // → 0.721110
 */
export function firstPass(halfAngleRad: number): FirstPass {
  const wide = (share: number) => closureOfShare({ halfAngleRad, share });
  return {
    from: Math.max(STEEP.from, wide(SHARE.from)),
    to: Math.max(STEEP.to, wide(SHARE.to)),
    cap: Math.max(STEEP.cap, wide(SHARE.cap)),
  };
}

/**
 * The same window and cap as shares of the final bend: for skins that are curved unevenly, where no closure can be told,
 * by the half angle of the right cone of the same rims and mean slant.
 *
 * @see derived here
 * @example firstPassShares(Math.PI / 6).to // → 0.750000
 * @example firstPassShares(0).to // → 0.800000
 */
export function firstPassShares(halfAngleRad: number): FirstPass {
  const window = firstPass(halfAngleRad);
  // The window never begins at the flat blank, so a closure in it always has a share.
  const share = (closed: number) => shareOfClosure({ halfAngleRad, closed }) ?? 0;
  return { from: share(window.from), to: share(window.to), cap: share(window.cap) };
}

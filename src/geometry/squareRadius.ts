import type { Side } from "./rim.ts";
import type { Lean, Skin } from "./skin.ts";

/**
 * Radius of the skin square to an element, at a rim of radius ρ.
 *
 *   R = ρ cos β / (cos² β + β′²)
 *
 * For a right cone this is r/cos α. Derived from the turning of the tangent plane per width square to the element.
 * @param rho radius of the rim itself there [mm]
 * @returns [mm]
 */
export function squareRadius(rho: number, lean: Lean): number {
  const level = Math.cos(lean.beta);
  return (rho * level) / (level ** 2 + lean.dBeta ** 2);
}

/** The same at both ends, each end asked but once: where every station of a skin is looked at. [mm] */
export function squareRadii(
  skin: Skin,
  theta: number,
  side: Side,
): { readonly a: number; readonly b: number } {
  const a = skin.a.support(theta, side);
  const b = skin.b.support(theta, side);
  const slope = (a.h - b.h) / skin.heightMm;
  const cosSquared = 1 / (1 + slope * slope);
  const dBeta = ((a.dh - b.dh) * cosSquared) / skin.heightMm;
  const share = Math.sqrt(cosSquared) / (cosSquared + dBeta * dBeta);
  return { a: a.rho * share, b: b.rho * share };
}

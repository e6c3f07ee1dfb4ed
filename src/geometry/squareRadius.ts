import type { Side } from "./rim.ts";
import { leanSquared, type Skin } from "./skin.ts";

/**
 * Radius of the skin square to an element at both ends, at rims of radius ρ.
 *
 *   R = ρ cos β / (cos² β + β′²)
 *
 * For a right cone this is r/cos α. Derived from the turning of the tangent plane per width square to the element.
 * Each end is asked but once: every station of a skin is looked at.
 * @returns [mm]
 */
export function squareRadii(
  skin: Skin,
  theta: number,
  side: Side,
): { readonly a: number; readonly b: number } {
  const a = skin.a.support(theta, side);
  const b = skin.b.support(theta, side);
  const { cosSquared, dBeta } = leanSquared(skin, a, b);
  const share = Math.sqrt(cosSquared) / (cosSquared + dBeta * dBeta);
  return { a: a.rho * share, b: b.rho * share };
}

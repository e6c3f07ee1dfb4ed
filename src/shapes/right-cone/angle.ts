import { ROOT_REL } from "../../geometry/tolerance.ts";

/** A slant that is shorter than the taper as drawn only describes a cone with a half angle below this. [rad] */
const STEEPEST_SHORT_SLANT = (80 * Math.PI) / 180;

/** The middle surface of a right cone, from what the drawing gives. */
export interface ConeSizes {
  /** Half the difference of the end diameters as drawn. [mm] */
  readonly taper: number;
  /** Difference of the distances from drawn to middle surface, large end less small end. [mm] */
  readonly delta: number;
  /** Plate thickness that the overall height includes: nought with level edges. [mm] */
  readonly heightLoss: number;
}

/**
 * Smallest root of a function that is negative at nought, or undefined where it has none below a quarter turn.
 */
function firstRoot(f: (x: number) => number): number | undefined {
  const steps = 2000;
  const at = (i: number) => (i / steps) * (Math.PI / 2);
  for (let i = 1; i <= steps; i++) {
    if (f(at(i)) < 0) continue;
    let [low, high] = [at(i - 1), at(i)];
    while (high - low > ROOT_REL * high) {
      const middle = (low + high) / 2;
      if (middle <= low || middle >= high) break;
      if (f(middle) < 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  }
  return undefined;
}

/**
 * Half angle for a slant along the middle surface: the taper of the middle surface is L sin α.
 * With level edges a surface moves by d/cos α in its end plane, with square ones by d cos α.
 */
export function angleForSlant(
  sizes: ConeSizes,
  slant: number,
  edges: "level" | "square",
): number | undefined {
  const { taper, delta } = sizes;
  if (edges === "square") {
    const reach = Math.hypot(slant, delta); // L sin α − δ cos α = Δ
    return taper > reach ? undefined : Math.asin(taper / reach) + Math.atan2(delta, slant);
  }
  if (delta === 0) return taper < slant ? Math.asin(taper / slant) : undefined;
  const angle = firstRoot((x) => slant * Math.sin(x) * Math.cos(x) - taper * Math.cos(x) - delta);
  // Near level a thin wall moves its end by hundreds of times its thickness: a second root that no drawing means.
  return angle !== undefined && slant <= taper && angle > STEEPEST_SHORT_SLANT ? undefined : angle;
}

/**
 * Half angle for an overall height with square edges: the middle height is H − t sin α and the taper of the middle
 * surface Δ + δ cos α, so (H − t sin α) sin α = (Δ + δ cos α) cos α.
 */
export function angleForSquareHeight(sizes: ConeSizes, height: number): number | undefined {
  const { taper, delta, heightLoss } = sizes;
  if (heightLoss >= height) return undefined;
  return firstRoot(
    (x) => (height - heightLoss * Math.sin(x)) * Math.sin(x) - (taper + delta * Math.cos(x)) * Math.cos(x),
  );
}

/** Half angle for a height between end planes with level edges: H sin β − D cos β = δ. */
export function angleForLevelHeight(sizes: ConeSizes, height: number): number | undefined {
  const root = Math.hypot(height, sizes.taper);
  if (Math.abs(sizes.delta) >= root) return undefined;
  return Math.atan2(sizes.taper, height) + Math.asin(sizes.delta / root);
}

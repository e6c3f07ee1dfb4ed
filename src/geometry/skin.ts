import type { Rim, Side, Support } from "./rim.ts";
import type { Vec3 } from "./vector.ts";

/**
 * The developable skin between two convex ends in level planes: along each straight element it is touched by one
 * plane that touches both ends, so the element joins the two points that share an outward normal angle.
 */
export interface Skin {
  readonly a: Rim;
  readonly b: Rim;
  /** Level of end A. [mm] */
  readonly baseMm: number;
  /** From end A up to end B. [mm], more than nought */
  readonly heightMm: number;
}

/** How the common tangent plane leans at one normal angle. */
export interface Lean {
  /** From upright, positive where the wall comes in towards end B. [rad] */
  readonly beta: number;
  /** Its change with the normal angle. [rad/rad] */
  readonly dBeta: number;
}

/** tan β = (h_A − h_B)/H, whatever the shape. */
export function leanAt(skin: Skin, theta: number, side: Side): Lean {
  const a = skin.a.support(theta, side);
  const b = skin.b.support(theta, side);
  const beta = Math.atan2(a.h - b.h, skin.heightMm);
  const dBeta = ((a.dh - b.dh) * Math.cos(beta) ** 2) / skin.heightMm;
  return { beta, dBeta };
}

/** Outward normal of the tangent plane at normal angle θ in plan and lean β. Unit length. */
export function planeNormal(theta: number, beta: number): Vec3 {
  const level = Math.cos(beta);
  return [level * Math.cos(theta), level * Math.sin(theta), Math.sin(beta)];
}

/** cos² β and β′ from the supports of both ends: no angle, and so nothing slow. */
export function leanSquared(
  { heightMm }: Skin,
  a: Support,
  b: Support,
): { readonly cosSquared: number; readonly dBeta: number } {
  const slope = (a.h - b.h) / heightMm;
  const cosSquared = 1 / (1 + slope * slope);
  return { cosSquared, dBeta: ((a.dh - b.dh) * cosSquared) / heightMm };
}

/**
 * How fast the tangent plane turns with the normal angle: speed of the normal on the unit sphere, √(cos² β + β′²). Asked
 * for thousands of times where bends are shared out, so it takes no angle and back again. [rad/rad]
 */
export function turningRate(skin: Skin, theta: number, side: Side): number {
  const { cosSquared, dBeta } = leanSquared(skin, skin.a.support(theta, side), skin.b.support(theta, side));
  return Math.sqrt(cosSquared + dBeta * dBeta);
}

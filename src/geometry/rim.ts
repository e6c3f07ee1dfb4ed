import { TURN, wrap } from "./angle.ts";
import { SAME_ANGLE } from "./tolerance.ts";
import { direction, type Vec2 } from "./vector.ts";

/** Which limit is meant at a break: just before it, or just after it. */
export type Side = -1 | 1;

/** The support function of a convex end at one outward normal angle. */
export interface Support {
  /** Distance from the origin to the tangent. [mm] */
  readonly h: number;
  /** h′: how far along the tangent the point of touch lies, counter-clockwise. [mm] */
  readonly dh: number;
  /** Radius of curvature of the rim, h + h″. [mm] */
  readonly rho: number;
}

/**
 * A convex end in its plane, described by its tangents: for each outward normal angle θ the support h(θ).
 * The point that has this tangent is h n + h′ n⊥. Where h′ jumps there is a straight side.
 */
export interface Rim {
  /** Normal angles of the straight sides and of changes of arc, rising, in 0 … 2π. [rad] */
  readonly breaks: readonly number[];
  support(theta: number, side: Side): Support;
  /** The point of touch; a corner is returned exactly as it was given. */
  point(theta: number, side: Side): Vec2;
}

/** An arc of a rim: it begins at normal angle `from` and runs to where the next begins. A corner has radius nought. */
interface Arc {
  readonly from: number;
  readonly centre: Vec2;
  readonly radius: number;
}

/** The arc that holds at θ; at a break the one before or after it. */
function arcAt(arcs: readonly Arc[], theta: number, side: Side): Arc {
  const last = arcs.length - 1;
  if (last === 0) return arcs[0] as Arc;
  const at = wrap(theta);
  let index = last; // before the first break the last arc still runs
  for (let i = 0; i <= last; i++) {
    const from = (arcs[i] as Arc).from;
    const apart = Math.min(Math.abs(at - from), TURN - Math.abs(at - from));
    if (apart < SAME_ANGLE) return arcs[side > 0 ? i : i === 0 ? last : i - 1] as Arc;
    if (from < at) index = i;
  }
  return arcs[index] as Arc;
}

/**
 * A convex rim made of arcs and, between arcs whose ends do not meet, straight sides.
 *
 *   h = c·n + r,   h′ = c·n⊥,   ρ = r
 *
 * @param arcs rising by `from` within 0 … 2π [rad]; centres and radii [mm]
 */
function arcRim(arcs: readonly Arc[]): Rim {
  return {
    breaks: arcs.length > 1 ? arcs.map((arc) => arc.from) : [],
    support(theta, side) {
      const { centre, radius } = arcAt(arcs, theta, side);
      const [x, y] = [Math.cos(theta), Math.sin(theta)];
      return { h: centre[0] * x + centre[1] * y + radius, dh: centre[1] * x - centre[0] * y, rho: radius };
    },
    point(theta, side) {
      const { centre, radius } = arcAt(arcs, theta, side);
      if (radius === 0) return centre;
      const n = direction(theta);
      return [centre[0] + radius * n[0], centre[1] + radius * n[1]];
    },
  };
}

/** @param radius [mm], nought or more */
export const circleRim = (centre: Vec2, radius: number): Rim => arcRim([{ from: 0, centre, radius }]);

/** The end of a full cone. */
export const pointRim = (at: Vec2): Rim => circleRim(at, 0);

/** A rectangle, length along x, width along y. [mm] */
export function rectangleRim(length: number, width: number, centre: Vec2 = [0, 0]): Rim {
  const [x, y] = [length / 2, width / 2];
  const [cx, cy] = centre;
  const corners: readonly Vec2[] = [
    [cx + x, cy + y],
    [cx - x, cy + y],
    [cx - x, cy - y],
    [cx + x, cy - y],
  ];
  return arcRim(
    corners.map((corner, quarter) => ({ from: (quarter * TURN) / 4, centre: corner, radius: 0 })),
  );
}

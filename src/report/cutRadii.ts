import type { Shaped } from "./report.ts";

/** The arcs that a right cone's blank is cut along. [mm] */
export interface CutRadii {
  readonly outerMm: number;
  /** Nought for a cone to a point. */
  readonly innerMm: number;
  /** What lies outside the finished edge at each end, to be dressed off. */
  readonly trimMm: number;
}

/**
 * The radii that a right cone's blank is struck with: those of the finished edges, and what is added at each end where edges
 * are cut square and dressed.
 *
 * @returns undefined for a pipe and for other shapes
 */
export function cutRadii({
  part,
  cone,
  shape,
}: Pick<Shaped, "part" | "cone" | "shape">): CutRadii | undefined {
  if (!cone || cone.outerRadiusMm === null || cone.innerRadiusMm === null) return undefined;
  // The wall leans alike all round.
  const trimMm = part.trimAllowance === true ? shape.edgeLossMm.greatest : 0;
  return {
    outerMm: cone.outerRadiusMm + trimMm,
    innerMm: Math.max(0, cone.innerRadiusMm - trimMm),
    trimMm,
  };
}

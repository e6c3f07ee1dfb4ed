import { radians } from "../../geometry/angle.ts";
import { circleRim, pointRim, type Rim } from "../../geometry/rim.ts";
import type { Skin } from "../../geometry/skin.ts";
import { toShare } from "../../geometry/wall.ts";
import type { Measured } from "../fields.ts";
import { type Face, MIDDLE } from "../layout.ts";
import { angleForLevelHeight, angleForSlant, angleForSquareHeight, type ConeSizes } from "./angle.ts";
import type { RightCone } from "./schema.ts";

const SHARES: Readonly<Record<Face, number>> = { inside: 0, middle: 0.5, outside: 1 };

/** The drawing's numbers in the shape the formulas need. */
export interface Drawn {
  readonly part: RightCone;
  readonly edges: "level" | "square";
  readonly t: number;
  readonly neutral: number;
  readonly large: { readonly radius: number; readonly measured: Measured };
  /** Null where the cone ends in a point. */
  readonly small: { readonly radius: number; readonly measured: Measured } | null;
  /** Distance of the middle surface from each measured one. */
  readonly moved: { readonly large: number; readonly small: number };
}

export function drawn(part: RightCone): Drawn {
  const t = part.thickness;
  const neutral = part.neutral ?? MIDDLE;
  const large = { radius: part.largeEnd.diameter / 2, measured: part.largeEnd.measured };
  const isPoint = part.smallEnd.diameter === 0;
  const measured = part.smallEnd.measured ?? part.largeEnd.measured;
  const to = (face: Measured) => toShare({ measured: face, thicknessMm: t, share: neutral });
  return {
    part,
    edges: part.edges ?? "level",
    t,
    neutral,
    large,
    small: isPoint ? null : { radius: part.smallEnd.diameter / 2, measured },
    // The point lies on the surface that the large end is measured on, so it moves with that surface.
    moved: { large: to(large.measured), small: isPoint ? to(large.measured) : to(measured) },
  };
}

/** Half angle of the wall, by whichever size the drawing gives. [rad] */
export function halfAngleOf(d: Drawn): number | undefined {
  const { part, t } = d;
  const point = d.small === null;
  const sizes: ConeSizes = {
    taper: d.large.radius - (d.small?.radius ?? 0),
    // A slant is given along the middle of the wall, wherever the neutral surface lies.
    delta: point
      ? toShare({ measured: d.large.measured, thicknessMm: t, share: 0.5 })
      : d.moved.large - d.moved.small,
    // To a point the height ends at the tip of the measured surface, not at the far corner of an edge.
    heightLoss: point ? SHARES[d.large.measured] * t : t,
  };
  if (part.halfAngle !== undefined) return radians(part.halfAngle);
  if (part.slant !== undefined) return angleForSlant(sizes, part.slant, d.edges);
  const height = part.height as number;
  if (d.edges === "square") return angleForSquareHeight(point ? { ...sizes, delta: 0 } : sizes, height);
  return angleForLevelHeight(point ? { ...sizes, delta: 0 } : sizes, height);
}

/** How far a face moves in its end plane for a distance along the wall's normal. */
const inPlane = (d: Drawn, alpha: number, along: number): number =>
  d.edges === "square" ? along * Math.cos(alpha) : along / Math.cos(alpha);

/** Radius of a face at one end. [mm] */
export function faceRadius(d: Drawn, alpha: number, end: "large" | "small", share: number): number {
  const drawnEnd = d[end];
  if (!drawnEnd) return 0;
  return (
    drawnEnd.radius + inPlane(d, alpha, toShare({ measured: drawnEnd.measured, thicknessMm: d.t, share }))
  );
}

/** Level distance between the ends of every face, which for a frustum is one and the same. [mm] */
export function faceHeight(d: Drawn, alpha: number): number {
  const { part } = d;
  const middle = (end: "large" | "small") => faceRadius(d, alpha, end, d.neutral);
  if (part.slant !== undefined) return part.slant * Math.cos(alpha);
  if (part.halfAngle !== undefined) return (middle("large") - middle("small")) / Math.tan(alpha);
  return (part.height as number) - (d.edges === "square" ? d.t * Math.sin(alpha) : 0);
}

/** One face of the cone as a skin, or null where the wall leaves none. */
export function faceSkin(d: Drawn, alpha: number, share: number): Skin | null {
  const large = faceRadius(d, alpha, "large", share);
  if (large <= 0) return null;
  const baseMm = d.edges === "square" ? share * d.t * Math.sin(alpha) : 0;
  const small: Rim = d.small ? circleRim([0, 0], faceRadius(d, alpha, "small", share)) : pointRim([0, 0]);
  const heightMm = d.small ? faceHeight(d, alpha) : large / Math.tan(alpha);
  return { a: circleRim([0, 0], large), b: small, baseMm, heightMm };
}

/** What square edges add to the level distance between the ends of one face. [mm] */
export function squareHeight(d: Drawn, alpha: number): number {
  if (d.edges === "level") return 0;
  const share = d.small ? 1 : SHARES[d.large.measured];
  return share * d.t * Math.sin(alpha);
}

import { radians, TURN } from "../geometry/angle.ts";
import type { Skin } from "../geometry/skin.ts";
import type { Span } from "../geometry/station.ts";
import type { Refusal } from "./refusal.ts";

export type Face = "inside" | "middle" | "outside";

/** What a right cone has and no other shape: its closed form. Middle surface, [mm] and [rad]. */
export interface ConeForm {
  readonly halfAngleRad: number;
  readonly slantMm: number;
  /** Null for a pipe, whose pattern is a rectangle. */
  readonly outerRadiusMm: number | null;
  readonly innerRadiusMm: number | null;
  readonly sectorRad: number;
}

/** A part turned into the surface that is laid out: all that the geometry core needs. */
export interface Layout {
  readonly kind: "layout";
  /** The surface that keeps its lengths when the plate is bent. */
  readonly skin: Skin;
  /** Faces of the wall, for views and contents; null where a face has no surface. */
  readonly faces: Readonly<Record<Face, Skin | null>>;
  /** Greatest departure of the laid surface from the exact parallel surface. [mm] */
  readonly wallMm: number;
  /** Over all, as the drawing shows it. [mm] */
  readonly heightMm: number;
  /** Normal angle of seam 1 of the first piece. [rad] */
  readonly seamRad: number;
  readonly cone?: ConeForm;
  readonly notes: readonly string[];
}

export interface Refused {
  readonly kind: "refused";
  readonly issues: readonly Refusal[];
}

export const refused = (...issues: readonly Refusal[]): Refused => ({ kind: "refused", issues });

/** Equal turns of the normal, one for each piece, from the seam round. */
export function pieceSpans(seamRad: number, pieces: number): Span[] {
  const at = (piece: number) => seamRad + (piece * TURN) / pieces;
  return Array.from({ length: pieces }, (_, piece) => ({ from: at(piece), to: at(piece + 1) }));
}

/** Where the seam is wanted, or the shape's usual place. [rad] */
export const seamAt = (wantedDeg: number | undefined, usualRad: number): number =>
  wantedDeg === undefined ? usualRad : radians(wantedDeg);

/** Neutral surface at mid-thickness unless the part says otherwise: cold bending at large radii. */
export const MIDDLE = 0.5;

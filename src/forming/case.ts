import type { ShapeId } from "../shapes/part.ts";
import type { Material } from "../shapes/material.ts";
import type { BendZone } from "./bendZone.ts";
import type { Finish } from "./inspection.ts";

/** The curvature at one element. */
export interface CurvatureSample {
  readonly planDeg: number;
  readonly largeRadiusMm: number;
  readonly smallRadiusMm: number;
  /** Length of the element. */
  readonly slantMm: number;
}

/** What the forming rules need to know of a part: plain numbers, no geometry. Lengths in mm, angles in radians. */
export interface FormingCase {
  readonly shape: ShapeId;
  /** How this shape is usually formed. */
  readonly usualRoute: "roll" | "brake";
  readonly thicknessMm: number;
  readonly material: Material;
  /** The material's id in the catalogue, as a shop's stock list names it; else the stock is looked up by its name. */
  readonly materialId?: string;
  /** How lengths read in sentences; the shop's own units, else mm, where absent. */
  readonly units?: "mm" | "in";
  /** Yield strength of the mill certificate, where the part file has one. */
  readonly certificateYieldMPa?: number;
  /** How far a flat between two hits may stand off the true curve, where the part file says so. */
  readonly permittedFacetMm?: number;
  readonly pieces: number;
  readonly quantity: number;
  /** Gap left between the seam edges for the weld. [mm] */
  readonly seamGapMm?: number;
  /** Are the plate edges left square, or dressed level? */
  readonly edges: "level" | "square";
  /** Is what dressing takes off a square cut added to the blank? */
  readonly trimAllowance?: boolean;
  /** How far one seam edge goes over the other, where the seam is lapped. [mm] */
  readonly seamLapMm?: number;
  /** The face that is up as the pattern is drawn; the inside where absent. */
  readonly faceUp?: "inside" | "outside";
  /** Longest and shortest element line from end to end. */
  readonly slantMm: { readonly longest: number; readonly shortest: number };
  /** Rims of the middle surface, all round (not of one piece). */
  readonly rimsMm: { readonly large: number; readonly small: number };
  /** Least distance across the inside of each end; 0 at a point, and where the wall leaves no inside. */
  readonly insideDiameterMm: { readonly large: number; readonly small: number };
  /** Greatest lean of the wall from square to the ends: the half angle of a right cone. */
  readonly leanRad: number;
  /** Tightest radius of the middle surface square to an element, at each end; 0 at a point, null where the end is not round. */
  readonly tightestRadiusMm: { readonly large: number; readonly small: number } | null;
  /** Present for a right cone, and a pipe (half angle 0): middle surface. */
  readonly cone?: {
    readonly halfAngleRad: number;
    readonly slantMm: number;
    readonly largeRadiusMm: number;
    readonly smallRadiusMm: number;
  };
  /**
   * Radius of the middle surface square to the element at both ends, all round at equal steps of the normal's plan angle
   * from the seam, not repeated at the end. Wanted where the skin is round but curved unevenly; 0 at a point.
   */
  readonly curvature?: readonly CurvatureSample[];
  readonly blanks: readonly {
    /** Long and short side of the upright rectangle round it as drawn. */
    readonly lengthMm: number;
    readonly widthMm: number;
    readonly massKg: number;
    /** Corners of the blank's convex hull as drawn, counter-clockwise. */
    readonly hull?: readonly (readonly [number, number])[];
    /** The blank at other angles: rectangles that hold it, none better than another in both sides. */
    readonly turned?: readonly {
      readonly lengthMm: number;
      readonly widthMm: number;
      /** How far the drawn pattern is turned, counter-clockwise. */
      readonly turnRad: number;
    }[];
  }[];
  /** Present where the brake bends it: lines in order along a blank. */
  readonly bendLines?: readonly {
    readonly lengthMm: number;
    readonly bendRad: number;
    readonly wideSpacingMm: number | null;
  }[];
  /** The curved stretches of its blanks between flats and seam edges, for the brake. */
  readonly bendZones?: readonly BendZone[];
  /** What of the finished part is inspected. */
  readonly finish?: Finish;
}

import type { Forming } from "../forming/answer.ts";
import type { Part } from "../shapes/part.ts";

/** A point on the sheet: x to the right, y up. [mm] */
type SheetPoint = readonly [number, number];
/** A point in space: x right in plan, y away, z up; end A lies at z = 0. [mm] */
export type SpacePoint = readonly [number, number, number];

/** A straight line on the pattern, from end A to end B. */
export interface PatternLine {
  readonly kind: "element" | "bend";
  readonly from: SheetPoint;
  readonly to: SheetPoint;
  readonly lengthMm: number;
  /** Direction of the outward normal in plan, counter-clockwise from +x. */
  readonly planDeg: number;
  /** What this line turns the plate by: turning between the middles of its neighbouring zones. */
  readonly bendDeg: number;
}

interface PatternEdge {
  /** "large end", "small end", "rectangular end", "round end", "seam 1", "seam 2". */
  readonly name: string;
  readonly lengthMm: number;
  /** Index into `outline` where this edge begins; it runs to where the next begins. */
  readonly start: number;
}

/** One plate to cut, flat. Counter-clockwise from where seam 1 meets end A; all coordinates positive. */
export interface Blank {
  /** 1 … pieces. */
  readonly piece: number;
  /** An earlier piece with the very same outline, so that it is cut from the same pattern. */
  readonly sameAs: number | null;
  readonly faceUp: "inside" | "outside";
  readonly areaMm2: number;
  readonly massKg: number;
  /** The upright rectangle that holds it as drawn: the one that x and y are measured in. */
  readonly asDrawn: { readonly xMm: number; readonly yMm: number };
  /** The rectangle of least area that holds it, at any angle; `turnDeg` is how far the drawn pattern is turned for it, counter-clockwise. */
  readonly box: { readonly lengthMm: number; readonly widthMm: number; readonly turnDeg: number };
  readonly cutLengthMm: number;
  readonly outline: readonly SheetPoint[];
  readonly edges: readonly PatternEdge[];
  readonly lines: readonly PatternLine[];
}

/** Chords along each end, and the diagonal from this line's A to the next line's B. */
interface Steps {
  readonly aMm: number;
  readonly bMm: number;
  readonly diagonalMm: number;
}

/** One row of the marking table: an element line of the layout by hand, and the diagonal to the next one. */
export interface MarkingRow {
  readonly piece: number;
  readonly number: number;
  readonly planDeg: number;
  /** Points on the pattern. */
  readonly a: SheetPoint;
  readonly b: SheetPoint;
  /** True length of the element line. */
  readonly trueMm: number;
  /**
   * What the plate turns at this line: the turning between the middles of the zones on either side. At a seam it is that of
   * half a zone, which no line inside the plate bends, so that over the rows of a piece it sums to the piece's turning.
   */
  readonly bendDeg: number;
  /** Plan length of the element line: the base of its true-length triangle. */
  readonly planMm: number;
  /**
   * To the next line; null on the last. Straight distances in space, as the true-length diagram gives them, and in `flat`
   * what dividers span on the pattern, which is a little more: the skin between two lines is curved before it lies flat.
   */
  readonly next:
    | (Steps & {
        readonly flat: Steps;
      })
    | null;
}

/** Layout with few divisions, as with dividers and tape: what it loses against the exact pattern. */
export interface HandLayout {
  readonly divisions: number;
  /** Girth lost at each end by stepping chords in place of the arcs. */
  readonly shortfallMm: { readonly a: number; readonly b: number };
  /** Greatest distance between a hand-laid point and where it belongs, all round. */
  readonly pointMm: number;
  readonly rows: readonly MarkingRow[];
}

/** What the views are drawn from: curves in plan for each face of the wall, and elements in space. */
export interface Solid {
  readonly heightMm: number;
  /** Face curves at end A (z = 0) and end B; empty where a face has no rim there, one point at an apex. */
  readonly a: Readonly<Record<"inside" | "middle" | "outside", readonly SpacePoint[]>>;
  readonly b: Readonly<Record<"inside" | "middle" | "outside", readonly SpacePoint[]>>;
  /** Element lines of the layout by hand, on the laid surface, from the seam round to the seam. */
  readonly elements: readonly { readonly planDeg: number; readonly a: SpacePoint; readonly b: SpacePoint }[];
  /** The seam line of every piece. */
  readonly seams: readonly { readonly planDeg: number; readonly a: SpacePoint; readonly b: SpacePoint }[];
}

export interface Accuracy {
  /** Largest move of an outline point at the last halving and largest height of an arc over its chord, together. */
  readonly outlineMm: number;
  /** Ends of the pattern as laid against the exact rims of the skin. */
  readonly rimMm: number;
  /** Area of the pattern as laid against the exact area of the skin, as a share. */
  readonly areaRel: number;
  /** Greatest departure of the laid surface from the exact parallel surface of the wall. */
  readonly wallMm: number;
  /** Checks of rounding only: flat lengths against lengths in space, and the seam closing on itself. */
  readonly lengthMm: number;
  readonly closureMm: number;
  readonly stations: number;
}

export interface Report {
  /** As read, in mm and degrees. */
  readonly part: Part & { readonly name: string };
  readonly shape: {
    readonly areaMm2: number;
    /** Within the laid surface. */
    readonly volumeMm3: number;
    /** Within the inside. */
    readonly contentsMm3: number;
    readonly rims: { readonly a: number; readonly b: number };
    readonly heightMm: number;
    /** Shortest and longest element line from end to end, all round. */
    readonly elementMm: { readonly shortest: number; readonly longest: number };
    /** Where the seam lies. */
    readonly seamDeg: number;
    /** Turning over the whole skin. */
    readonly turningDeg: number;
    /**
     * What an edge cut square to the plate lacks of the end plane at one face, least and greatest round the part:
     * half the thickness times the tangent of the lean. Nought where edges stay square.
     */
    readonly edgeLossMm: { readonly least: number; readonly greatest: number };
  };
  readonly blanks: readonly Blank[];
  /** Of one part: all its blanks. */
  readonly massKg: number;
  /** Right cones only, middle surface; radii null for a pipe. */
  readonly cone?: {
    readonly halfAngleDeg: number;
    readonly slantMm: number;
    readonly outerRadiusMm: number | null;
    readonly innerRadiusMm: number | null;
    readonly sectorDeg: number;
  };
  readonly hand: HandLayout;
  readonly solid: Solid;
  readonly accuracy: Accuracy;
  readonly forming: Forming;
  /** Remarks on how it was laid out, in sentences. */
  readonly notes: readonly string[];
}

/** What there is of a report before it has been asked whether and how the part can be formed. */
export type Shaped = Omit<Report, "forming">;

/** What a pattern and views are drawn from: a report, whether or not it has been asked how the part is formed. */
export type Drawable = Shaped & { readonly forming?: Pick<Forming, "route"> };

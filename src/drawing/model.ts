import type { Vec2 } from "../geometry/vector.ts";

/**
 * What a line means; every pen gives it the line type of ISO 128-2.
 * outline: continuous wide. thin (elements, bend lines): continuous narrow. dimension (dimension, extension and leader lines):
 * continuous narrow. hidden: dashed narrow. centre: long-dashed dotted narrow. arrow: filled.
 */
export type StrokeKind = "outline" | "thin" | "dimension" | "hidden" | "centre" | "arrow";

/** Straight pieces, or an arc about a centre; angles counter-clockwise from +x, from `fromRad` on to `toRad`. */
export type Shape =
  | { readonly type: "path"; readonly points: readonly Vec2[]; readonly closed: boolean }
  | {
      readonly type: "arc";
      readonly centre: Vec2;
      readonly radius: number;
      readonly fromRad: number;
      readonly toRad: number;
    };

/** One line of a drawing. Coordinates in true millimetres of the part, y up. */
export interface Stroke {
  readonly kind: StrokeKind;
  readonly shape: Shape;
  /** The element lines that it shows, as indices into the report's `hand.rows`: pieces that are alike share a pattern. */
  readonly elements?: readonly number[];
}

/**
 * An element line where it lies in the drawing, drawn or not: whoever asks for it is shown it.
 * line: drawn as it is seen. hidden: behind the wall. left out: seen, but between lines that stand close enough already.
 */
export interface ElementLine {
  /** Indices into the report's `hand.rows`. */
  readonly elements: readonly number[];
  readonly from: Vec2;
  readonly to: Vec2;
  readonly shown: "line" | "hidden" | "left out";
}

/** small: numbers of elements, remarks. figure: dimensions, names. title: the drawing's name. */
export type LetterSize = "small" | "figure" | "title";

/** What a label says, so that a pen may set it apart and a test may find it. */
export type LabelRole = "number" | "dimension" | "name" | "note" | "title";

/** One line of lettering. `at` lies at half the height of its capitals: at its start, its middle or its end. */
export interface Label {
  readonly role: LabelRole;
  readonly text: string;
  readonly at: Vec2;
  readonly anchor: "start" | "middle" | "end";
  readonly size: LetterSize;
  /** Height of its capitals at the drawing's scale. [mm of the part] */
  readonly capMm: number;
  /** The place that it speaks of, beside which it stays when one looks nearer. */
  readonly of?: Vec2;
  /** The element lines that it numbers, as indices into the report's `hand.rows`. */
  readonly elements?: readonly number[];
  /** Turned counter-clockwise; −90 < … ≤ 90, so that it is read from below or from the right (ISO 129-1). [degrees] */
  readonly rotationDeg: number;
}

/** An upright rectangle. [mm] */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/**
 * Where one thing was put: the how-manyth of the ways that there were, and what that cost in the board's measure; null where it
 * was left out.
 */
export type PutDown = { readonly way: number; readonly price: number } | null;

/** A drawing as data: any pen can draw it, on a page, on paper or for a cutting table. */
export interface Drawing {
  readonly title: string;
  /** What the drawing shows, in a sentence, for those who cannot see it. */
  readonly description: string;
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
  /** Every element line of the part, once in each view; none in a drawing that shows no element lines. */
  readonly lines: readonly ElementLine[];
  /** The sheet: everything drawn lies within. [mm of the part] */
  readonly extent: Box;
  /** Millimetres of the part for one millimetre of paper: 10 at 1:10. */
  readonly unit: number;
  /** The scale as the drawing states it: "1:10", or "not to scale". */
  readonly scale: string;
  /** The width at which that scale holds. [mm of paper] */
  readonly paperWidthMm: number;
  /** Labels for which there was no room. */
  readonly dropped: readonly string[];
  /** Where each thing was put, one after the other, for the next drawing of nearly the same. */
  readonly puts: readonly PutDown[];
}

export const line = (kind: StrokeKind, from: Vec2, to: Vec2): Stroke => ({
  kind,
  shape: { type: "path", points: [from, to], closed: false },
});
/** An element line, which has its like in the other drawings of the part. */
export const element = (kind: StrokeKind, elements: readonly number[], from: Vec2, to: Vec2): Stroke => ({
  ...line(kind, from, to),
  elements,
});
export const path = (kind: StrokeKind, points: readonly Vec2[]): Stroke => ({
  kind,
  shape: { type: "path", points, closed: false },
});
export const closed = (kind: StrokeKind, points: readonly Vec2[]): Stroke => ({
  kind,
  shape: { type: "path", points, closed: true },
});
export const arc = (
  kind: StrokeKind,
  { centre, radius, fromRad, toRad }: { centre: Vec2; radius: number; fromRad: number; toRad: number },
): Stroke => ({ kind, shape: { type: "arc", centre, radius, fromRad, toRad } });
export const circle = (kind: StrokeKind, centre: Vec2, radius: number): Stroke =>
  arc(kind, { centre, radius, fromRad: 0, toRad: 2 * Math.PI });

import type { Placed } from "../geometry/placed.ts";
import type { Vec2 } from "../geometry/vector.ts";

/** Blanks of one form that are to be cut. */
export interface LayItem {
  /** Name of the part. */
  readonly part: string;
  /** Which of its pieces. */
  readonly piece: number;
  readonly count: number;
  /** True area. */
  readonly areaMm2: number;
  /** Counter-clockwise, the first corner not repeated; no part of the true blank lies without. */
  readonly outline: readonly Vec2[];
}

/** A size of plate in the rack; there is as much of it as is wanted. */
export interface Stock {
  readonly lengthMm: number;
  readonly widthMm: number;
  /** Keeps blanks as drawn or turned by half, so that element lines run across the plate's length. */
  readonly grain: boolean;
}

export interface LayOptions {
  /** Least distance between blanks: the kerf and the bridge that is left beside it. */
  readonly spacingMm: number;
  /** What is left along each edge of the plate. */
  readonly edgeMm: number;
  /** How long to search: 1 takes a moment, 20 up to a minute for a job of many parts. */
  readonly effort: number;
  readonly seed: number;
}

/** One blank on a plate, its drawn outline placed from the lower left corner. */
export interface Placing extends Placed {
  readonly part: string;
  readonly piece: number;
  /** The enclosing outline on the plate. */
  readonly outline: readonly Vec2[];
}

/** An upright rectangle of plate, from its lower left corner. */
export interface FreeRectangle {
  readonly at: Vec2;
  readonly xMm: number;
  readonly yMm: number;
}

/** A plate with its blanks; plates that are laid alike are told once. */
export interface LaidPlate {
  readonly stock: Stock;
  /** Plates laid exactly like this. */
  readonly count: number;
  readonly placings: readonly Placing[];
  /** True area of the blanks on one of them. */
  readonly usedAreaMm2: number;
  /** The same as a share of the plate. */
  readonly utilisation: number;
  /** From the left edge to the last blank and its edge margin: what lies beyond is a strip of full width. */
  readonly usedLengthMm: number;
  /** The largest upright rectangle that no blank, spacing nor edge margin touches; null where hardly any is left. */
  readonly free: FreeRectangle | null;
}

/** Blanks that go on no plate. */
export interface Left {
  readonly part: string;
  readonly piece: number;
  readonly count: number;
  /** Would it go on if the grain were let be? */
  readonly grainOnly: boolean;
}

/** What the plates are measured against. */
export interface Bounds {
  /** No laying can do with less: area of the blanks over that of the largest plate less its margins. */
  readonly areaPlates: number;
  /** Plates that the blanks' bounding rectangles need, laid by the same spacing and margins. */
  readonly rectanglePlates: number;
  /** True area over that of the rectangles' plates. */
  readonly rectangleUtilisation: number;
  /** True area over that of the rectangles' plates, each only as far as its last rectangle. */
  readonly rectangleUsedShare: number;
}

export interface LaidPlates {
  readonly plates: readonly LaidPlate[];
  readonly left: readonly Left[];
  /** True area over that of all plates. */
  readonly utilisation: number;
  /** True area over that of all plates, each only as far as its last blank. */
  readonly usedShare: number;
  readonly bounds: Bounds;
}

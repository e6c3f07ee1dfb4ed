import type { LetterSize } from "./model.ts";
import { FULL_SIZE, NARROW_SCALES, type Scale, SHEET_SCALES } from "./scale.ts";

/**
 * What a drawing is made for: the width at which its scale holds, the greatest height, and the lettering.
 * A drawing is made for each width anew and is never shrunk to another, because its lettering would shrink with it.
 */
export interface Paper {
  readonly name: "sheet" | "narrow" | "card" | "full size";
  readonly widthMm: number;
  readonly heightMm: number;
  /** Height of the capitals; ISO 3098 has 2.5, 3.5, 5 … [mm of paper] */
  readonly capsMm: Readonly<Record<LetterSize, number>>;
  readonly scales: readonly Scale[];
  /** Where words beside the drawing say the rest, its foot states the scale alone. */
  readonly foot?: "scale";
}

/** Within the frame of an A4 or US Letter sheet; read at arm's length. */
export const SHEET: Paper = {
  name: "sheet",
  widthMm: 170,
  heightMm: 190,
  capsMm: { small: 2.5, figure: 3.5, title: 5 },
  scales: SHEET_SCALES,
};

/** A phone held upright: 88 mm are 332 px, so that the smallest lettering is 12 px there. */
export const NARROW: Paper = {
  name: "narrow",
  widthMm: 88,
  heightMm: 150,
  capsMm: { small: 2.3, figure: 2.5, title: 3.5 },
  scales: NARROW_SCALES,
};

/** A small picture among others. */
export const CARD: Paper = { ...NARROW, name: "card", widthMm: 60, heightMm: 48 };

/** For tiles of paper and for cutting tables. */
export const FULL: Paper = {
  name: "full size",
  widthMm: Infinity,
  heightMm: Infinity,
  capsMm: { small: 5, figure: 7, title: 10 },
  scales: FULL_SIZE,
};

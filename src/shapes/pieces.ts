import type { ShapeId } from "./part.ts";

/** A part is made in so many pieces at most. */
export const MOST_PIECES = 12;

const ANY = Array.from({ length: MOST_PIECES }, (_, i) => i + 1);

/** The numbers of equal pieces that a shape is made in; a square-to-round's meet at the middles of its sides. */
const TAKEN: Readonly<Record<ShapeId, readonly number[]>> = {
  "right-cone": ANY,
  "eccentric-cone": ANY,
  "square-to-round": [1, 2, 4],
};

/** Is a shape made in so many pieces? */
export const takesPieces = (shape: ShapeId, pieces: number): boolean => TAKEN[shape].includes(pieces);

/** The numbers of pieces, rising, that a shape can be made in beyond those that a part has. */
export const morePiecesThan = (shape: ShapeId, pieces: number): readonly number[] =>
  TAKEN[shape].filter((more) => more > pieces);

/**
 * Where the seam of a part goes when it is split: where it lies, but for a square-to-round at the middle of the nearest
 * side. [degrees]
 */
export const splitSeamDeg = (shape: ShapeId, seamDeg: number): number =>
  shape === "square-to-round" ? (90 * Math.round(seamDeg / 90)) % 360 : seamDeg;

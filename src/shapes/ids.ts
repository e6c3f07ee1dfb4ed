import type { ShapeId } from "./part.ts";

const IDS: Readonly<Record<ShapeId, true>> = {
  "right-cone": true,
  "eccentric-cone": true,
  "square-to-round": true,
};

/** Is it the word for a shape in a part file? */
export const isShapeId = (word: unknown): word is ShapeId =>
  typeof word === "string" && Object.hasOwn(IDS, word);

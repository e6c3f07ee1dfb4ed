import type { ShapeId } from "../../shapes/part.ts";

/** The shapes' names in the text of a page. */
export const SHAPE_NAMES: Readonly<Record<ShapeId, string>> = {
  "right-cone": "Right cone",
  "eccentric-cone": "Eccentric cone",
  "square-to-round": "Square-to-round",
};

/** What end A and end B of each shape are called. */
export const END_NAMES: Readonly<Record<ShapeId, { readonly a: string; readonly b: string }>> = {
  "right-cone": { a: "large end", b: "small end" },
  "eccentric-cone": { a: "large end", b: "small end" },
  "square-to-round": { a: "rectangular end", b: "round end" },
};

/** The end where the bend lines of a brake lie farthest apart: what is bent of a line is measured from there. */
export const bentFrom = (shape: ShapeId): string => END_NAMES[shape][shape === "square-to-round" ? "b" : "a"];

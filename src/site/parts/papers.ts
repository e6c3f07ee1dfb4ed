import { NARROW, type Paper } from "../../drawing/paper.ts";

/** On a part's printed sheet lettering is as tall as that of its tables. [mm of paper] */
const COMPACT: Paper = { ...NARROW, capsMm: { small: 2, figure: 2.4, title: 3 }, foot: "scale" };

/** One of two columns of the printed sheet. */
export const COLUMN: Paper = { ...COMPACT, widthMm: 83, heightMm: 80 };

/** Across the printed sheet, for a part that needs a third view. */
export const ACROSS: Paper = { ...COMPACT, name: "sheet", widthMm: 170, heightMm: 68 };

/** A pattern beside its words. */
export const BESIDE_WORDS: Paper = { ...COMPACT, widthMm: 104, heightMm: 46 };

/** Two patterns side by side. */
export const PAIR: Paper = { ...COMPACT, widthMm: 83, heightMm: 46 };

import { NARROW, type Paper, SHEET } from "../../drawing/paper.ts";
import { NARROW_SCALES } from "../../drawing/scale.ts";
import { COLUMN } from "../parts/papers.ts";

/** A plate over the width of a page; as large as it goes, whatever the scale. */
export const PLATE_SHEET: Paper = { ...SHEET, heightMm: 120, scales: NARROW_SCALES, foot: "scale" };
export const PLATE_NARROW: Paper = { ...NARROW, heightMm: 100, foot: "scale" };
/** In one of two columns of a printed page. */
export const PLATE_PRINT: Paper = { ...COLUMN, heightMm: 70 };

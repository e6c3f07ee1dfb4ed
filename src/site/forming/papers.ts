import type { Paper } from "../../drawing/paper.ts";
import { ACROSS, COLUMN } from "../parts/papers.ts";

/** Across the printed work sheet. */
export const SECTIONS_PAPER: Paper = { ...ACROSS, heightMm: 82 };

/** Two plots side by side, or one with words beside it. */
export const PLOT_PAPER: Paper = { ...COLUMN, heightMm: 50 };

/** Bend lines across the printed work sheet, above their table. */
export const LINES_PAPER: Paper = { ...ACROSS, heightMm: 84 };

/** The blank beside a plot: which edge is which, not to be measured. */
export const BLANK_PAPER: Paper = { ...COLUMN, heightMm: 42 };

/** The blank below two plots. */
export const WIDE_BLANK_PAPER: Paper = { ...ACROSS, heightMm: 56 };

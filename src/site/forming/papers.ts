import type { Paper } from "../../drawing/paper.ts";
import { ACROSS, COLUMN } from "../parts/papers.ts";

/** Across the printed work sheet. */
export const SECTIONS_PAPER: Paper = { ...ACROSS, heightMm: 82 };

/** Two plots side by side, or one with words beside it. */
export const PLOT_PAPER: Paper = { ...COLUMN, heightMm: 50 };

/** Bend lines across the printed work sheet, above their table. */
export const LINES_PAPER: Paper = { ...ACROSS, heightMm: 84 };

/** The blank under the inspection: which edge is which, not to be measured. */
export const BLANK_PAPER: Paper = { ...ACROSS, heightMm: 44 };

/** At the foot of the last sheet, alone or two side by side. */
export const HAND_PAPER: Paper = { ...ACROSS, heightMm: 46 };
export const HAND_PAIR: Paper = { ...COLUMN, heightMm: 46 };

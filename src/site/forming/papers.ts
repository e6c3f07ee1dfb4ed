import type { Paper } from "../../drawing/paper.ts";
import type { Report } from "../../report/report.ts";
import { ACROSS, COLUMN } from "../parts/papers.ts";

/** Across the printed work sheet. */
export const SECTIONS_PAPER: Paper = { ...ACROSS, heightMm: 82 };

/** The rolls from above, both passes. */
export const ABOVE_PAPER: Paper = { ...ACROSS, heightMm: 50 };

/** Two plots side by side, or one with words beside it. */
export const PLOT_PAPER: Paper = { ...COLUMN, heightMm: 50 };

/** What the sheet of the bend lines holds on US Letter, the shorter paper: a plot above them, a row of their table, and all else. [mm] */
const LINES = { room: 262, plot: 66, row: 2.7, fixed: 70 };
const LINES_MM = { least: 56, most: 84 };

/** Headings of a further table. [mm] */
const HEADS_MM = 17;

/** Do the tables of these many rows find room without being halved, so that distances in inches have their fractions beside them? */
export function oneBelowOther({ rows, underPlot }: { rows: readonly number[]; underPlot: boolean }): boolean {
  const { room, plot, row, fixed } = LINES;
  const tables = rows.reduce((sum, lines) => sum + row * lines + HEADS_MM, -HEADS_MM);
  return room - fixed - (underPlot ? plot : 0) - tables >= LINES_MM.least;
}

/**
 * Bend lines across the printed work sheet, as tall as the table below them and a plot above leave room for.
 *
 * @param whole the table is not in two halves beside each other
 */
export function linesPaper({
  lines,
  underPlot,
  whole,
}: {
  lines: number;
  underPlot: boolean;
  whole: boolean;
}): Paper {
  const { room, plot, row, fixed } = LINES;
  const left = room - fixed - (underPlot ? plot : 0) - row * (whole ? lines : Math.ceil(lines / 2));
  return { ...ACROSS, heightMm: Math.min(LINES_MM.most, Math.max(LINES_MM.least, left)) };
}

/** What the sheet of the inspection holds on US Letter, the shorter paper: a row, one that takes a second line, and all else. [mm] */
const INSPECTION = { room: 252, row: 7.2, second: 3.4, letters: 58, fixed: 68, uneven: 22 };
const BLANK_MM = { least: 38, good: 58, most: 110, apart: 95 };
/** What the drawings for the layout by hand take at its foot. [mm] */
const SPARE_MM = 72;

/** The blank of a part that is rolled in zones stands below the plots, where there is room for its lines, its zones and its bevels. */
export const isBlankApart = ({ forming }: Report, zones: readonly unknown[]): boolean =>
  zones.length > 1 && forming.springback !== null;

/** The blank under the inspection: which edge is which, not to be measured; as tall as the rows above it leave room for, that for the drawings by hand kept where it can be. */
export function blankPaper(report: Report, zones: readonly unknown[] = []): Paper {
  if (isBlankApart(report, zones)) return { ...ACROSS, heightMm: BLANK_MM.apart };
  const { forming, part } = report;
  const { room, row, second, letters, fixed, uneven } = INSPECTION;
  const rows = (forming.inspection?.rows ?? []).map(({ what }) =>
    what.length > letters ? row + second : row,
  );
  // Bevels line by line, and where zones begin.
  const under = part.shape === "eccentric-cone" ? uneven : 0;
  const left = room - fixed - under - rows.reduce((sum, one) => sum + one, 0);
  const own = left - SPARE_MM >= BLANK_MM.good ? left - SPARE_MM : left;
  return { ...ACROSS, heightMm: Math.min(BLANK_MM.most, Math.max(BLANK_MM.least, own)) };
}

/** Which corner is which, under the inspection: as low as it can still be read. */
export const CORNERS_PAPER: Paper = { ...ACROSS, heightMm: 26 };

/** At the foot of the last sheet, alone or two side by side. */
export const HAND_PAPER: Paper = { ...ACROSS, heightMm: 46 };
export const HAND_PAIR: Paper = { ...COLUMN, heightMm: 46 };

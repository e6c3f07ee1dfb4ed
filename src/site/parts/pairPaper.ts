import type { Paper } from "../../drawing/paper.ts";
import { patternDrawing } from "../../drawing/pattern.ts";
import type { Report } from "../../report/report.ts";

export interface PairPaper {
  /** For each pattern, with the one scale that all of them keep to. */
  readonly paper: Paper;
  /** Do they stand one below the other, rather than side by side? */
  readonly stacked: boolean;
}

export interface PairRoom {
  /** What they have in all. [mm] */
  readonly widthMm: number;
  readonly heightMm: number;
  /** What lies between two, and what a drawing takes beside its height: its foot. [mm] */
  readonly gapMm: number;
  readonly footMm: number;
  /** On the taller of two papers they stand as on the other. */
  readonly stacked?: boolean;
}

/** Lower than this a pattern's dimensions and numbers may take all its room, and its scale runs away. [mm] */
export const LEAST_MM = 62;

/**
 * Patterns of a part in pieces: side by side or one below the other, whichever way the one scale of all is larger. Where
 * the room is too low for all of them none is drawn lower for that: they take more of it, and go on on the next sheet.
 */
export function pairPaper(report: Report, like: Paper, room: PairRoom): PairPaper {
  const { widthMm, heightMm, gapMm, footMm } = room;
  const own = report.blanks.filter(({ sameAs }) => sameAs === null);
  const each = (stacked: boolean): number => {
    const rows = stacked ? own.length : Math.ceil(own.length / 2);
    return (heightMm - (rows - 1) * (gapMm + footMm)) / rows;
  };
  // One below the other they need more height than side by side.
  const ways = (room.stacked === undefined ? [false, true] : [room.stacked])
    .filter((stacked) => !stacked || room.stacked === true || each(stacked) >= LEAST_MM)
    .map((stacked) => {
      const paper: Paper = {
        ...like,
        widthMm: stacked ? widthMm : Math.floor((widthMm - gapMm) / 2),
        heightMm: Math.max(LEAST_MM, each(stacked)),
      };
      // A piece that is smaller than the others is drawn smaller too: what lies side by side is compared.
      const unit = Math.max(...own.map((blank) => patternDrawing(report, { paper, blank }).unit));
      return { stacked, unit, paper: { ...paper, scales: paper.scales.filter((one) => one.unit >= unit) } };
    });
  const [first, second] = ways;
  if (!first) throw new RangeError("no way for patterns to stand");
  const { paper, stacked } = second && second.unit < first.unit ? second : first;
  return { paper, stacked };
}

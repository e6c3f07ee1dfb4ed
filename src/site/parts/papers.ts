import { NARROW, type Paper } from "../../drawing/paper.ts";
import { patternDrawing } from "../../drawing/pattern.ts";
import { offsetOf } from "../../drawing/views/ends.ts";
import { chosenPlan } from "../forming/plan.ts";
import type { Report } from "../../report/report.ts";
import { patternsAlone, patternsApart, roomAcross, roomInColumn, type SheetHeight } from "./firstSheet.ts";
import { LEAST_MM, pairPaper, type PairPaper } from "./pairPaper.ts";
import type { Marking } from "../words/marking.ts";

/** On a part's printed sheet lettering is as tall as that of its tables. [mm of paper] */
const COMPACT: Paper = { ...NARROW, capsMm: { small: 2, figure: 2.4, title: 3 }, foot: "scale" };

/** One of two columns of a printed sheet. */
export const COLUMN: Paper = { ...COMPACT, widthMm: 83, heightMm: 80 };

/** Across a printed sheet. */
export const ACROSS: Paper = { ...COMPACT, name: "sheet", widthMm: 170, heightMm: 68 };

/** Under the views stand their scale and the sign of the projection; with what the reckoned words may be out by. [mm] */
const FOOT_MM = 17.2;
/** Views are never lower than this; beyond this height only a tall part would use it. Lower than this a third view makes all small. [mm] */
const VIEWS_MM = { least: 60, most: 170, across: 80 };

export interface ViewsPaper {
  readonly paper: Paper;
  /** With a third view, where the part leans sideways and the sheet has room beside the sizes. */
  readonly across: boolean;
}

/** What A4 is taller by. [mm] */
const TALLER_MM = 17;
const more = (sheet: SheetHeight): number => (sheet === "tall" ? TALLER_MM : 0);

/** Views as tall as the words of the first sheet leave room for. */
export function viewsPaper(report: Report, sheet: SheetHeight): ViewsPaper {
  // The same arrangement on both papers.
  const across = offsetOf(report)[1] !== 0 && roomAcross(report, "short") - FOOT_MM >= VIEWS_MM.across;
  const room = (across ? roomAcross : roomInColumn)(report, sheet) - FOOT_MM;
  const heightMm = Math.min(VIEWS_MM.most, Math.max(VIEWS_MM.least, room));
  return {
    across,
    paper: { ...COMPACT, ...(across && { name: "sheet" as const }), widthMm: across ? 122 : 83, heightMm },
  };
}

/** Less than this is no pattern to mark by; from `across` on it is worth the width of the sheet. [mm] */
const PATTERN_MM = { least: 46, across: 64, most: 110 };
/** A low pattern stays low where its scale is no more than so many times coarser than with the height that any can do with. [-] */
const COARSER = 2;
/** What the words take when they stand below a pattern over the width of the sheet; how it is cut may stand on the first. [mm] */
const WORDS_BELOW_MM = { all: 46, apart: 33 };
/** The foot of a pattern among several, and what lies between two. [mm] */
const PAIR_MM = { footMm: 12, gapMm: 2 };
/** Lower than this the words beside a pattern are taller than it is. [mm] */
const LOW_MM = 60;
/** What the second sheet of US Letter, the shorter paper, holds; measured, and held by the test of printing. [mm] */
const SECOND_SHEET = {
  room: 257,
  fixed: 137,
  roll: 22,
  /** What the steps take that stand on the work sheet, where there is one. */
  steps: { roll: 62, brake: 54 },
  markingRow: 2.9,
  closureHead: 8,
  /** What is said of a straight lead. */
  closureLead: 4,
  closureRow: 3.4,
  /** What heading, title block and the words on many pieces take of a sheet that has no tables. */
  alone: 38,
};

interface PatternPaper {
  readonly paper: Paper;
  /** Does it lie across the sheet, above its words, rather than beside them? */
  readonly across: boolean;
}

/** What the tables of the second sheet leave for a pattern and its words. [mm] */
function leftMm(report: Report, { rows, tables }: Marking, sheet: SheetHeight): number {
  const { forming } = report;
  const { room, fixed, roll, steps, markingRow, closureHead, closureLead, closureRow } = SECOND_SHEET;
  const elsewhere = chosenPlan(report) ? steps[forming.route] : 0;
  const rolled = forming.route === "roll";
  const lead = forming.closure.some(({ leadMm }) => leadMm > 0) ? closureLead : 0;
  const closure =
    rolled && forming.closure.length > 0 ? closureHead + lead + closureRow * forming.closure.length : 0;
  const marking = markingRow * Math.ceil(rows.length / tables);
  return room + more(sheet) - fixed + elsewhere - (rolled ? roll : 0) - closure - marking;
}

/** One pattern: across the sheet where the tables below leave room for that, else beside its words, as tall as they allow. */
export function patternPaper(report: Report, marking: Marking, sheet: SheetHeight): PatternPaper {
  const left = leftMm(report, marking, sheet);
  const above = left - WORDS_BELOW_MM.all;
  if (above >= PATTERN_MM.across)
    return { across: true, paper: { ...ACROSS, heightMm: Math.min(PATTERN_MM.most, above) } };
  // A low pattern does with less width, and then the words beside it take fewer lines.
  const widthMm = left < LOW_MM ? 92 : 104;
  const paper = {
    ...COMPACT,
    widthMm,
    heightMm: Math.min(PATTERN_MM.most, Math.max(PATTERN_MM.least, left)),
  };
  return { across: false, paper: isTooLow(report, paper) ? { ...paper, heightMm: LEAST_MM } : paper };
}

function isTooLow(report: Report, paper: Paper): boolean {
  const [blank] = report.blanks;
  if (!blank || paper.heightMm >= LEAST_MM) return false;
  const unitAt = (heightMm: number): number =>
    patternDrawing(report, { blank, paper: { ...paper, heightMm } }).unit;
  return unitAt(paper.heightMm) > COARSER * unitAt(LEAST_MM);
}

/** Several patterns, above their words, with the room that the tables below leave; they stand alike on both papers. */
export function pairedPaper(report: Report, marking: Marking, sheet: SheetHeight): PairPaper {
  const { all, apart } = WORDS_BELOW_MM;
  const { room: holds, alone } = SECOND_SHEET;
  const paperOf = (one: SheetHeight, stacked?: boolean): PairPaper => {
    const left = patternsAlone(report) ? holds + more(one) - alone : leftMm(report, marking, one);
    const above = left - (patternsApart(report) ? apart : all);
    const heightMm = Math.min(2 * PATTERN_MM.most, Math.max(PATTERN_MM.least, above));
    const room = { widthMm: ACROSS.widthMm, heightMm, ...PAIR_MM, ...(stacked !== undefined && { stacked }) };
    return pairPaper(report, COMPACT, room);
  };
  const short = paperOf("short");
  return sheet === "short" ? short : paperOf(sheet, short.stacked);
}

import { CAP_PER_SIZE, textWidth } from "../../drawing/lettering.ts";
import { MM_PER_INCH } from "../../drawing/format.ts";
import type { Check } from "../../forming/check.ts";
import type { Report } from "../../report/report.ts";
import { cutParagraphs } from "../words/blankWords.ts";
import { checkFigures, noMachine, refusal, routeSentence } from "../words/forming.ts";
import { VERDICTS } from "../../report/verdictWords.ts";
import { keyFigures, type KeyFigure } from "../words/keyFigures.ts";
import { sizeFacts } from "../words/partSize.ts";
import { type Run, runLines } from "./runLines.ts";

/**
 * How much of a part's first printed sheet its words take, so that its views may take the rest. The browser lays the page
 * out; here it is reckoned from the widths of the lettering. The test of printing holds the sum.
 */

/** A sheet that holds as much as US Letter, the shorter paper, or as A4. */
export type SheetHeight = "short" | "tall";

const POINT_MM = MM_PER_INCH / 72;
/** Within margins and frame, down to the foot of the title block: US Letter is wider, A4 taller. [mm] */
const SHEET: Readonly<Record<SheetHeight, { width: number; height: number }>> = {
  short: { width: 178.5, height: 260 },
  tall: { width: 172.5, height: 277 },
};
/** Between the two columns. [mm] */
const COLUMNS_APART = 4;
/** Title and verdict, with what keeps the key figures apart; a further line of the title; a row of key figures, and a further line under them. [mm] */
const HEAD = { plain: 13.6, titleLine: 6.4, figures: 10.2, second: 3.2 };
/** The title block: one of two lines, what a third adds, and what its cells take besides title and name. [mm] */
const BLOCK = { plain: 9.1, line: 4.5, others: 270 };
/** Lettering of the print stylesheet. [points] */
const SIZE = { title: 15, text: 8, check: 7.5, basis: 7.5 };
/** From line to line, and round each row. [mm] */
const ROW = { text: 8 * 1.32 * POINT_MM, check: 7.5 * 1.25 * POINT_MM, around: 2.35 };
/** Bold lettering over plain. [-] */
const BOLD = 1.06;
/** Widths of lettering are reckoned with room for a font that runs wider; the sheet brings its own. [-] */
const OWN_FONT = 0.95;
/** What the sheet's font takes of the reckoned width, measured and rounded up: bold, regular, and units of wide letters. [-] */
const TAKES = { bold: 0.99, regular: 0.965, wideUnit: 0.7 };
const WIDE_UNIT = /\s?(?:mm|kg|lb)$/;
/** Key figures as they stand, and six of them, which stand closer: lettering and what a cell takes beside it. [points, points, mm] */
const FIGURES = { usual: { value: 12, words: 7.5, cell: 3 }, six: { value: 10.5, words: 7, cell: 2 } };
/** The frame round the key figures. [mm] */
const FRAME = 0.8;
/** One row of names and values; what its name takes of the width. [mm] */
const FACT = { row: 4.6, name: 28 };
/** The heading of the sizes with all that keeps them apart; that of the checks with its verdict; that of the blank; a note's, a paragraph's and the machines' distance. [mm] */
const AROUND = { sizes: 8.4, verdict: 13.6, cut: 8.4, apart: 1.5 };
/** The sign of a verdict before its word. [mm] */
const SIGN = 4;

/** Two patterns want a sheet's width, and the few questions of the brake leave room for their words on the first sheet. */
export const patternsApart = ({ forming, blanks }: Report): boolean =>
  forming.route === "brake" && blanks.filter(({ sameAs }) => sameAs === null).length > 1;

/** More patterns than two leave no room for the tables below them: they have a sheet of their own. */
export const patternsAlone = ({ blanks }: Report): boolean =>
  blanks.filter(({ sameAs }) => sameAs === null).length > 2;

const textLength = (text: string, points: number): number =>
  textWidth(text, CAP_PER_SIZE * points * POINT_MM);

const run = (text: string, points: number, bold = false): Run => ({
  text,
  capMm: OWN_FONT * CAP_PER_SIZE * points * POINT_MM * (bold ? BOLD : 1),
});

const lines = (text: string, points: number, widthMm: number): number =>
  runLines([run(text, points)], widthMm);

const columnOf = (sheet: SheetHeight): number => (SHEET[sheet].width - COLUMNS_APART) / 2;

/** Width of a figure with its unit. [mm] */
function figureMm(text: string, points: number, takes: number): number {
  const [unit = ""] = WIDE_UNIT.exec(text) ?? [];
  const rest = text.slice(0, text.length - unit.length);
  return takes * textLength(rest, points) + TAKES.wideUnit * textLength(unit, points);
}

/** In how many rows the cells of key figures stand, each in the first row that has room for it. */
function figureRows(figures: readonly KeyFigure[], widthMm: number): number {
  const size = figures.length === 6 ? FIGURES.six : FIGURES.usual;
  let [rows, at] = [1, 0];
  for (const { name, value, second } of figures) {
    const wide =
      size.cell +
      Math.max(
        figureMm(value, size.value, TAKES.bold),
        figureMm(name, size.words, TAKES.regular),
        figureMm(second ?? "", size.words, TAKES.regular),
      );
    if (at > 0 && at + wide > widthMm) [rows, at] = [rows + 1, 0];
    at += wide;
  }
  return rows;
}

function checkMm(check: Check, { part }: Report, widthMm: number): number {
  const { title, advice, rule, basis, verdict } = check;
  const first = [
    run(`${VERDICTS[verdict]} ${title}`, SIZE.check, true),
    run(checkFigures(check, part.units) ?? "", SIZE.check),
  ];
  const words = [run(advice, SIZE.check), run(`${rule} · ${basis}`, SIZE.basis)];
  return ROW.check * (runLines(first, widthMm, SIGN) + runLines(words, widthMm)) + ROW.around;
}

/** Heights of what stands under "Will it go?" and does not break: the verdict with the first check, each further one, each machine. [mm] */
function checkHeights(report: Report, widthMm: number): number[] {
  const { forming, part } = report;
  const verdict = `${VERDICTS[forming.verdict]} ${routeSentence(forming, noMachine(undefined))}`;
  const over = lines(verdict, SIZE.title * 0.8, widthMm) > 1 ? ROW.text : 0;
  const checks = forming.checks.map((one) => checkMm(one, report, widthMm));
  const machines =
    forming.machines.length < 2
      ? []
      : forming.machines.map(({ machine, kind, verdict: own, checks: its }) => {
          const why = machine === forming.machine ? "" : refusal(its, part.units);
          const said = [run(`${machine} (${kind}):`, SIZE.check), run(VERDICTS[own], SIZE.check, true)];
          return ROW.check * runLines([...said, run(why, SIZE.basis)], widthMm, SIGN) + 0.4;
        });
  const [first = 0, ...more] = checks;
  const [head = 0, ...others] = machines;
  return [
    AROUND.verdict + over + first,
    ...more,
    ...(machines.length > 0 ? [AROUND.apart + head, ...others] : []),
  ];
}

/** Height of the sizes and the note under the views, with their heading. [mm] */
function factsMm(report: Report, widthMm: number): number {
  const facts = sizeFacts(report, null).reduce((sum, { value, beside }) => {
    const more = lines(`${value} ${beside ?? ""}`, SIZE.text, widthMm - FACT.name) - 1;
    return sum + FACT.row + more * ROW.text;
  }, AROUND.sizes);
  const notes = (report.part.notes ?? "").trim();
  if (notes === "") return facts;
  return notes
    .split("\n")
    .reduce((sum, one) => sum + ROW.text * lines(`Note. ${one}`, SIZE.text, widthMm), facts + AROUND.apart);
}

/** Height of how the blank is cut, where that stands on the first sheet. [mm] */
const cutMm = (report: Report, widthMm: number): number =>
  cutParagraphs(report)
    .map((sentences) => ROW.text * lines(sentences.join(" "), SIZE.check, widthMm) + AROUND.apart)
    .reduce((all, one) => all + one, AROUND.cut);

/** What lies between the head and the title block of the first sheet. [mm] */
function roomMm(report: Report, sheet: SheetHeight): number {
  const { part } = report;
  const { width, height } = SHEET[sheet];
  const title = HEAD.titleLine * (lines(part.title, SIZE.title, width / BOLD) - 1);
  const figures = keyFigures(report);
  const second = figures.some((one) => one.second !== null && one.second !== undefined) ? HEAD.second : 0;
  const head = HEAD.plain + title + (HEAD.figures + second) * figureRows(figures, width - FRAME);
  const block = (textLength(part.title + part.name, SIZE.check) + BLOCK.others) / width;
  const cut = patternsApart(report) ? cutMm(report, width) : 0;
  return height - head - cut - BLOCK.plain - BLOCK.line * Math.max(0, Math.ceil(block) - 2);
}

const sum = (heights: readonly number[]): number => heights.reduce((all, one) => all + one, 0);

/** Height left for three views beside the sizes, over both columns of checks. [mm] */
export function roomAcross(report: Report, sheet: SheetHeight): number {
  const rows = checkHeights(report, columnOf(sheet));
  const columns = rows.map((_, i) => Math.max(sum(rows.slice(0, i)), sum(rows.slice(i))));
  return roomMm(report, sheet) - AROUND.sizes - Math.min(...columns);
}

/** Height left for views in a column, over the sizes: as many checks stand beside them as that column holds, the others under the sizes. [mm] */
export function roomInColumn(report: Report, sheet: SheetHeight): number {
  const room = roomMm(report, sheet);
  const widthMm = columnOf(sheet);
  const rows = checkHeights(report, widthMm);
  const under = rows.findIndex((_, i) => sum(rows.slice(i)) <= room);
  return room - factsMm(report, widthMm) - sum(rows.slice(0, under < 0 ? rows.length : under));
}

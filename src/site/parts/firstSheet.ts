import { CAP_PER_SIZE, textWidth } from "../../drawing/lettering.ts";
import { MM_PER_INCH } from "../../drawing/format.ts";
import type { Report } from "../../report/report.ts";
import { checkFigures, refusal } from "../words/forming.ts";
import { VERDICTS } from "../../report/verdictWords.ts";
import { keyFigures } from "../words/keyFigures.ts";
import { sizeFacts } from "../words/partSize.ts";

/**
 * How much of a part's first printed sheet its words take, so that its views may take the rest. The browser lays the page
 * out; here it is reckoned from the widths of the lettering, for the narrower paper (A4) and the shorter one (US Letter)
 * at once. The test of printing holds the sum.
 */

const POINT_MM = MM_PER_INCH / 72;
/** Within margins and frame. [mm] */
const SHEET = { width: 173, height: 258, column: 83.5 };
/** Title and verdict; a further line of the title; a row of key figures, a further line under them, and round each. [mm] */
const HEAD = { plain: 11.3, titleLine: 6.4, figures: 12.5, second: 3.2, cell: 3 };
/** The title block: one of two lines, what a third adds, and what its cells take besides title and name. [mm] */
const BLOCK = { plain: 9.1, line: 4.5, others: 270 };
/** Lettering of the print stylesheet. [points] */
const SIZE = { title: 15, figure: 12, text: 8, check: 7.5, basis: 6.6 };
/** From line to line, and round each row. [mm] */
const ROW = { text: 8 * 1.32 * POINT_MM, check: 7.5 * 1.25 * POINT_MM, around: 2.1 };
/** Bold lettering and the ends of lines that no word fills. [-] */
const RAGGED = 1.02;
/** The reckoned widths of cells are a little wide: so much more fits in a row. [-] */
const FLEX = 1.12;
/** One row of names and values, and the heading above, with its verdict for the checks. [mm] */
const FACT_MM = 4.6;
const HEADINGS_MM = 24;
/** How the blank is cut, where that stands on the first sheet. [mm] */
const CUT_MM = 26;

/** Two patterns want a sheet's width, and the few questions of the brake leave room for their words on the first sheet. */
export const patternsApart = ({ forming, blanks }: Report): boolean =>
  forming.route === "brake" && blanks.filter(({ sameAs }) => sameAs === null).length > 1;

const lines = (text: string, points: number, widthMm: number): number =>
  Math.max(1, Math.ceil((RAGGED * textWidth(text, CAP_PER_SIZE * points * POINT_MM)) / widthMm));

/** Height of the checks and of the list of machines, in one column. [mm] */
function checksMm({ forming, part }: Report): number {
  const rows = forming.checks.map(({ title, advice, rule, basis, ...check }) => {
    const figures = checkFigures({ title, advice, rule, basis, ...check }, part.units) ?? "";
    const first = lines(`✓ ${VERDICTS[check.verdict]} ${title} ${figures}`, SIZE.check, SHEET.column);
    const whole = textLength(advice, SIZE.check) + textLength(` ${rule} · ${basis}`, SIZE.basis);
    return ROW.check * (first + Math.ceil((RAGGED * whole) / SHEET.column)) + ROW.around;
  });
  const machines =
    forming.machines.length < 2
      ? []
      : forming.machines.map(({ machine, kind, verdict, checks }) => {
          const said = `${machine} (${kind}): ✓ ${VERDICTS[verdict]}`;
          const why = machine === forming.machine ? 0 : textLength(refusal(checks, part.units), SIZE.basis);
          return ROW.check * Math.ceil((RAGGED * (textLength(said, SIZE.check) + why)) / SHEET.column) + 0.3;
        });
  return [...rows, ...machines].reduce((sum, one) => sum + one, 0);
}

const textLength = (text: string, points: number): number =>
  textWidth(text, CAP_PER_SIZE * points * POINT_MM);

/** Height of the sizes and the note under the views, or beside them. [mm] */
function factsMm(report: Report, widthMm: number): number {
  const facts = sizeFacts(report, null).reduce((sum, { value, beside }) => {
    const more = lines(`${value} ${beside ?? ""}`, SIZE.text, widthMm - 28) - 1;
    return sum + FACT_MM + more * ROW.text;
  }, 0);
  const notes = (report.part.notes ?? "").trim();
  if (notes === "") return facts;
  return notes.split("\n").reduce((sum, one) => sum + ROW.text * lines(one, SIZE.text, widthMm), facts + 2);
}

/**
 * What lies between the head and the title block of the first sheet. [mm]
 *
 * @param more what the paper is taller than US Letter
 */
function roomMm(report: Report, more: number): number {
  const { part } = report;
  const title = HEAD.titleLine * (lines(part.title, SIZE.title, SHEET.width) - 1);
  const figures = keyFigures(report);
  const cells = figures.map(({ name, value, second }) =>
    Math.max(
      textLength(value, SIZE.figure),
      textLength(name, SIZE.check),
      textLength(second ?? "", SIZE.check),
    ),
  );
  const wide = cells.reduce((sum, one) => sum + one + HEAD.cell, 0);
  const second = figures.some((one) => one.second !== null && one.second !== undefined) ? HEAD.second : 0;
  const head = HEAD.plain + title + (HEAD.figures + second) * Math.ceil(wide / (FLEX * SHEET.width));
  const block = (textLength(part.title + part.name, SIZE.check) + BLOCK.others) / SHEET.width;
  const cut = patternsApart(report) ? CUT_MM : 0;
  return SHEET.height + more - head - cut - BLOCK.plain - BLOCK.line * Math.max(0, Math.ceil(block) - 2);
}

/** Height left for three views beside the sizes, over both columns of checks. [mm] */
export const roomAcross = (report: Report, more = 0): number =>
  roomMm(report, more) - (HEADINGS_MM + checksMm(report)) / 2 - 12;

/** Height left for views in a column, over the sizes. [mm] */
export function roomInColumn(report: Report, more = 0): number {
  const room = roomMm(report, more);
  const facts = factsMm(report, SHEET.column);
  // Both columns filled, less what a row that does not break leaves empty; and the views with their sizes stay in one.
  return Math.min(2 * room - checksMm(report) - facts - HEADINGS_MM - 8, room - facts - 10);
}

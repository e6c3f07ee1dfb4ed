import type { Block } from "./block.ts";
import { columnWidths, SLACK_MM } from "./columnWidths.ts";
import type { Pdf } from "./document.ts";
import { numbersOf } from "./numberRuns.ts";
import { printable } from "./printable.ts";
import { paragraph, type Run } from "./words.ts";

export interface Cell {
  readonly text: string | readonly Run[];
  /** Over so many columns. */
  readonly span?: number;
  /** Its own, in place of its column's. */
  readonly align?: "left" | "right";
  /** So many lines to write on, side by side. */
  readonly toWrite?: number;
}
interface TableColumn {
  /** Figures stand to the right, under each other. */
  readonly align: "left" | "right";
  /** Room that it gets of what is to be shared out. */
  readonly share: number;
}
export interface Table {
  readonly columns: readonly TableColumn[];
  /** One or two lines of headings, again on each page. */
  readonly head: readonly (readonly Cell[])[];
  readonly rows: readonly (readonly Cell[])[];
  readonly capMm?: number;
  /** Columns that a line stands before. */
  readonly edges?: readonly number[];
  /** Does a firmer line stand above this row? */
  readonly parted?: (row: readonly Cell[]) => boolean;
  /** For a row that heads those below it: what heads them again where a page ends among them. */
  readonly again?: (row: readonly Cell[]) => readonly Cell[] | undefined;
  /** Least height of a row, where it is written in. [mm] */
  readonly rowMm?: number;
}

/** Beside what stands in a cell. [mm] */
const PAD = { x: 0.8, y: 0.15 };
/** What a cell takes besides its words. [mm] */
export const AROUND_MM = 2 * PAD.x + SLACK_MM;
/** Letters of a table that asks for no others. [mm] */
const CAP_MM = 1.7;

/** A table with hairlines between its rows, cut between rows where a page ends. */
export function tableBlock(pdf: Pdf, table: Table): Block {
  const { columns, head, rows, capMm = CAP_MM } = table;
  const needs = columns.map((_, i) =>
    Math.max(0, ...[...head, ...rows].map((cells) => longestNumberMm(pdf, cellAt(cells, i), capMm))),
  );
  const known = new Map<number, readonly number[]>();
  const widthsIn = (widthMm: number): readonly number[] => {
    const shares = columns.map(({ share }) => share);
    const found = known.get(widthMm) ?? columnWidths(shares, needs, widthMm);
    known.set(widthMm, found);
    return found;
  };
  return rowsBlock(pdf, table, { heights: new WeakMap(), widthsIn });
}

/** What stands in a column alone: a heading over several has room enough. */
export function cellAt(row: readonly Cell[], column: number): Cell | undefined {
  let at = 0;
  for (const cell of row) {
    if (at === column && (cell.span ?? 1) === 1) return cell;
    at += cell.span ?? 1;
  }
  return undefined;
}

export const textOf = ({ text }: Cell): string =>
  typeof text === "string" ? text : text.map((run) => run.text).join("");

/** One row of a table may stand in bold letters. */
function longestNumberMm(pdf: Pdf, cell: Cell | undefined, capMm: number): number {
  if (!cell) return 0;
  const numbers = numbersOf(printable(textOf(cell), pdf));
  if (numbers.length === 0) return 0;
  return boldestMm(pdf, numbers, capMm) + AROUND_MM;
}

/** The longest of some words in bold letters, which are the widest. [mm] */
export const boldestMm = (pdf: Pdf, words: readonly string[], capMm: number): number =>
  Math.max(0, ...words.map((word) => pdf.width(word, { capMm, bold: true })));

/** Heights of rows by the width that they have: a long table is asked for them again on every page. */
type Heights = WeakMap<readonly Cell[], Map<number, number>>;

/** What holds for the whole table, on however many pages it stands. */
interface Shared {
  readonly heights: Heights;
  /** Widths of the columns in a width: none breaks a number. [mm] */
  readonly widthsIn: (widthMm: number) => readonly number[];
}

function rowsBlock(pdf: Pdf, table: Table, shared: Shared): Block {
  const { columns, head, rows, capMm = CAP_MM, rowMm = 0 } = table;
  const known = shared.heights;
  const across = (from: number, to: number, width: number): number =>
    shared
      .widthsIn(width)
      .slice(from, to)
      .reduce((sum, one) => sum + one, 0);
  const cellsOf = (cells: readonly Cell[], width: number, bold: boolean) => {
    let column = 0;
    let x = 0;
    return cells.map(({ text, span = 1, align = columns[column]?.align ?? "left", toWrite = 0 }) => {
      const wide = across(column, column + span, width);
      const runs = typeof text === "string" ? [{ text, bold }] : text;
      const block = paragraph(pdf, runs, { capMm, align });
      const placed = { block, x, wide, toWrite };
      column += span;
      x += wide;
      return placed;
    });
  };
  const heightOf = (cells: readonly Cell[], width: number, bold: boolean): number => {
    const heights = known.get(cells) ?? new Map<number, number>();
    known.set(cells, heights);
    const found =
      heights.get(width) ??
      Math.max(
        rowMm,
        ...cellsOf(cells, width, bold).map(({ block, wide }) => block.height(wide - 2 * PAD.x) + 2 * PAD.y),
      );
    heights.set(width, found);
    return found;
  };
  const heads = (width: number) => head.reduce((sum, cells) => sum + heightOf(cells, width, true), 0);
  return {
    height: (width) => heads(width) + rows.reduce((sum, cells) => sum + heightOf(cells, width, false), 0),
    draw: (x, y, width) => {
      let at = y;
      const rule = (widthMm: number) => pdf.line([x, at], [x + width, at], { widthMm });
      const put = (cells: readonly Cell[], bold: boolean): void => {
        const high = heightOf(cells, width, bold);
        for (const { block, x: left, wide, toWrite } of cellsOf(cells, width, bold)) {
          block.draw(x + left + PAD.x, at + PAD.y, wide - 2 * PAD.x);
          const each = wide / Math.max(1, toWrite);
          for (let i = 0; i < toWrite; i++) {
            const from = x + left + i * each;
            pdf.line([from + 1, at + high - 1.2], [from + each - 1, at + high - 1.2], { widthMm: 0.25 });
          }
        }
        at += high;
      };
      rule(0.3);
      for (const cells of head) put(cells, true);
      if (head.length > 0) rule(0.3);
      for (const cells of rows) {
        if (table.parted?.(cells)) rule(0.3);
        put(cells, false);
        rule(0.1);
      }
      for (const edge of table.edges ?? []) {
        const before = across(0, edge, width);
        pdf.line([x + before, y], [x + before, at], { widthMm: 0.1 });
      }
    },
    split: (width, room) => {
      let [at, count] = [heads(width), 0];
      for (const cells of rows) {
        at += heightOf(cells, width, false);
        if (at > room) break;
        count += 1;
      }
      if (count === rows.length) return undefined;
      // A row that heads others is not left alone at the foot of a page.
      const heading = (row: number) => rows[row] && table.again?.(rows[row]);
      while (count > 0 && heading(count - 1)) count -= 1;
      if (count === 0) return undefined;
      const [before, after] = [rows.slice(0, count), rows.slice(count)];
      const open = before.findLast((cells) => table.again?.(cells));
      const again = open && !heading(count) ? table.again?.(open) : undefined;
      return [
        rowsBlock(pdf, { ...table, rows: before }, shared),
        rowsBlock(pdf, { ...table, rows: again ? [again, ...after] : after }, shared),
      ];
    },
  };
}

import type { Block } from "./block.ts";
import type { Pdf } from "./document.ts";
import { paragraph, type Run } from "./words.ts";

export interface Cell {
  readonly text: string | readonly Run[];
  /** Over so many columns. */
  readonly span?: number;
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
  /** Least height of a row, where it is written in. [mm] */
  readonly rowMm?: number;
}

/** Beside what stands in a cell. [mm] */
export const CELL_PAD_MM = 0.8;
const PAD = { x: CELL_PAD_MM, y: 0.15 };

/** A table with hairlines between its rows, cut between rows where a page ends. */
export function tableBlock(pdf: Pdf, table: Table): Block {
  return rowsBlock(pdf, table, new WeakMap());
}

/** Heights of rows by the width that they have: a long table is asked for them again on every page. */
type Heights = WeakMap<readonly Cell[], Map<number, number>>;

function rowsBlock(pdf: Pdf, table: Table, known: Heights): Block {
  const { columns, head, rows, capMm = 1.7, rowMm = 0 } = table;
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  const cellsOf = (cells: readonly Cell[], width: number, bold: boolean) => {
    let column = 0;
    let x = 0;
    return cells.map(({ text, span = 1, toWrite = 0 }) => {
      const wide = columns
        .slice(column, column + span)
        .reduce((sum, { share }) => sum + (share / whole) * width, 0);
      const runs = typeof text === "string" ? [{ text, bold }] : text;
      const block = paragraph(pdf, runs, { capMm, align: columns[column]?.align ?? "left" });
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
        const before = columns.slice(0, edge).reduce((sum, { share }) => sum + (share / whole) * width, 0);
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
      if (count === 0 || count === rows.length) return undefined;
      return [
        rowsBlock(pdf, { ...table, rows: rows.slice(0, count) }, known),
        rowsBlock(pdf, { ...table, rows: rows.slice(count) }, known),
      ];
    },
  };
}

import type { Block } from "./block.ts";
import type { Pdf } from "./document.ts";
import { AROUND_MM, boldestMm, type Cell, cellAt, type Table, tableBlock, textOf } from "./tableBlock.ts";

/** Letters of a table, the largest first; smaller ones are not read beside a machine. [mm] */
const CAPS = [2, 1.85, 1.7, 1.55, 1.4, 1.25];
/** Of a table with more rows than one page takes the letters are no larger than this, so that it takes two. [rows, mm] */
const [LONG, LONG_CAP] = [70, 1.55];

/** A table whose columns are as wide as what stands in them asks, in the largest letters that leave every cell on its line. */
export function fittedTable(
  pdf: Pdf,
  table: Omit<Table, "columns" | "capMm"> & { readonly aligns: readonly ("left" | "right")[] },
  widthMm: number,
): Block {
  const { aligns, ...rest } = table;
  // Words grow as their letters do: they are measured once.
  const longest = aligns.map((_, i) =>
    boldestMm(pdf, [...alone(rest.head, i).flatMap(wordsOf), ...alone(rest.rows, i).map(textOf)], 1),
  );
  const wanted = (capMm: number): number[] => longest.map((one) => one * capMm + AROUND_MM);
  const sum = (capMm: number): number => wanted(capMm).reduce((all, one) => all + one, 0);
  const most = rest.rows.length > LONG ? LONG_CAP : Infinity;
  const capMm = CAPS.find((one) => one <= most && sum(one) <= widthMm) ?? CAPS[CAPS.length - 1] ?? 0;
  // What is left over is shared out evenly, so that narrow columns do not crowd beside wide ones.
  const more = Math.max(0, widthMm - sum(capMm)) / aligns.length;
  return tableBlock(pdf, {
    ...rest,
    capMm,
    columns: wanted(capMm).map((own, i) => ({ share: own + more, align: aligns[i] ?? "right" })),
  });
}

/** A heading may stand on several lines. */
const wordsOf = (cell: Cell): string[] => textOf(cell).split(" ");

const alone = (rows: readonly (readonly Cell[])[], column: number): Cell[] =>
  rows.map((row) => cellAt(row, column)).filter((cell) => cell !== undefined);

export type Cell = string | number;

/** What a spreadsheet knows UTF-8 by: without it letters such as Ø and ü come out as two others. */
export const MARK_OF_UTF8 = "\uFEFF";

/** Rows of cells as RFC 4180 has them, after the mark of UTF-8. */
export const csvText = (rows: readonly (readonly Cell[])[]): string =>
  MARK_OF_UTF8 + rows.map((row) => row.map(cell).join(",")).join("\r\n") + "\r\n";

/**
 * Where a spreadsheet would begin a formula: at the start of a cell, and behind a semicolon, which parts cells where a comma
 * is the decimal sign, quotes or not. Signs of full width are read like plain ones by some.
 */
const FORMULA = /(^|;)(?=\s*[=+@\-＝＋＠－])/g;

/** Lines of one text: a cell is one line, or whoever reads line by line takes the rest of it for rows. */
const BETWEEN_LINES = /[\r\n\u2028\u2029]+/g;

/** Text in quotes where it holds what parts cells; a sign that a table would take for a formula is text too. */
function cell(value: Cell): string {
  if (typeof value === "number") return String(value);
  const text = value.replace(BETWEEN_LINES, " ").replace(FORMULA, "$1'").replace(/^\t/, "'\t");
  return /[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

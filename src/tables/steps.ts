/** Numbers from the first to the last, so many apart; multiplied, so that no rounding adds up. */
export function steps(first: number, last: number, by: number): number[] {
  const count = Math.round((last - first) / by);
  return Array.from({ length: count + 1 }, (_, i) => first + i * by);
}

/** Where the row with these first cells stands; the tables are our own, so one that is missing is a mistake of ours. */
export function rowOf(rows: readonly (readonly string[])[], entries: readonly string[]): number {
  const row = rows.findIndex((cells) => entries.every((entry, i) => cells[i] === entry));
  if (row < 0) throw new RangeError(`no row ${entries.join(", ")}`);
  return row;
}

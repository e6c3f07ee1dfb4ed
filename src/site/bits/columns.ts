/** A long list cut into so many columns of nearly the same length, in order. */
export function columns<T>(rows: readonly T[], count: number): T[][] {
  const each = Math.ceil(rows.length / count);
  return Array.from({ length: count }, (_, i) => rows.slice(i * each, (i + 1) * each)).filter(
    (column) => column.length > 0,
  );
}

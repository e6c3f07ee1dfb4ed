/** More than words take: what just fits by the sum is not broken by its rounding. [mm] */
export const SLACK_MM = 0.1;

/** Widths of columns that share a width, each at least as wide as it needs where the others have that to spare. [mm] */
export function columnWidths(
  shares: readonly number[],
  needsMm: readonly number[],
  widthMm: number,
): number[] {
  const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);
  const whole = sum(shares);
  const fair = shares.map((share) => (share / whole) * widthMm);
  const lacking = sum(fair.map((own, i) => Math.max(0, (needsMm[i] ?? 0) - own)));
  const spare = sum(fair.map((own, i) => Math.max(0, own - (needsMm[i] ?? 0))));
  if (lacking === 0 || spare === 0) return fair;
  const [given, taken] = [Math.min(1, spare / lacking), Math.min(1, lacking / spare)];
  return fair.map((own, i) => {
    const over = own - (needsMm[i] ?? 0);
    return own - over * (over > 0 ? taken : given);
  });
}

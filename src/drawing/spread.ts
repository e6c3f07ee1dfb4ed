/**
 * Places for labels in a row, in the order of the points they belong to, each as near to its point as the others allow:
 * least squares under c₍ᵢ₊₁₎ − cᵢ ≥ half the widths of both. With the widths taken off, that is the nearest rising
 * sequence, found by pooling neighbours that are out of order (isotonic regression, from memory).
 *
 * @param points rising [mm]
 * @param widths room each label takes, clear space included [mm]
 */
export function spread(points: readonly number[], widths: readonly number[]): number[] {
  const offsets: number[] = [];
  for (let i = 0; i < points.length; i++) {
    const last = offsets[i - 1];
    offsets.push(last === undefined ? 0 : last + ((widths[i - 1] as number) + (widths[i] as number)) / 2);
  }
  const pools: { sum: number; count: number }[] = [];
  for (const [i, point] of points.entries()) {
    let pool = { sum: point - (offsets[i] as number), count: 1 };
    for (
      let last = pools.at(-1);
      last && last.sum / last.count > pool.sum / pool.count;
      last = pools.at(-1)
    ) {
      pools.pop();
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
    }
    pools.push(pool);
  }
  const rising = pools.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count));
  return rising.map((value, i) => value + (offsets[i] as number));
}

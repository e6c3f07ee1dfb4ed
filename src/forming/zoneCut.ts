/** A stretch of samples, from one to another, both ends within. */
export type Stretch = readonly [from: number, to: number];

/**
 * Cut a row of samples into as few stretches as keep within a limit, and of all ways to do it with so few into that
 * whose worst stretch is best. Neighbours share a sample; one step from sample to sample is never cut.
 *
 * @param last index of the last sample; the first is 0
 * @param costOf of a stretch: grows as it gets longer
 * @returns stretches in order; none where there is no step
 * @see derived here (dynamic programme over where the last stretch begins)
 * @example cutEvenly({ last: 4, limit: 2, costOf: (from, to) => to - from }) // → [[0, 2], [2, 4]]
 */
export function cutEvenly({
  last,
  limit,
  costOf,
}: {
  last: number;
  limit: number;
  costOf: (from: number, to: number) => number;
}): Stretch[] {
  if (last < 1) return [];
  const cost = Array.from({ length: last }, (_, from) =>
    Array.from({ length: last + 1 }, (__, to) => (to <= from ? 0 : costOf(from, to))),
  );
  const at = (from: number, to: number): number => cost[from]?.[to] ?? 0;
  const fewest = (): number => {
    let count = 0;
    for (let from = 0; from < last; count++) {
      let to = from + 1;
      while (to < last && at(from, to + 1) <= limit) to++;
      from = to;
    }
    return count;
  };
  // best[j]: the least worst cost with which the samples up to j are cut into the stretches counted so far.
  let best = Array.from({ length: last + 1 }, (_, to) => (to === 0 ? Infinity : at(0, to)));
  const begins: number[][] = [];
  const count = fewest();
  for (let stretch = 2; stretch <= count; stretch++) {
    const begin = Array<number>(last + 1).fill(0);
    const next = Array<number>(last + 1).fill(Infinity);
    for (let to = stretch; to <= last; to++)
      for (let from = stretch - 1; from < to; from++) {
        const worst = Math.max(best[from] ?? Infinity, at(from, to));
        if (worst < (next[to] ?? Infinity)) {
          next[to] = worst;
          begin[to] = from;
        }
      }
    begins.push(begin);
    best = next;
  }
  const stretches: Stretch[] = [];
  let to = last;
  for (const begin of begins.toReversed()) {
    const from = begin[to] ?? 0;
    stretches.unshift([from, to]);
    to = from;
  }
  return [[0, to], ...stretches];
}

import { QUADRATURE_REL } from "./tolerance.ts";

/** Intervals of the first and of the finest row of nodes. */
const [COARSEST, FINEST] = [8, 128];

/** Sum of a Chebyshev series at t within −1 … 1, its first term in full. C. W. Clenshaw (1955), from memory. */
function clenshaw(terms: readonly number[], t: number): number {
  let [next, after] = [0, 0];
  for (let j = terms.length - 1; j > 0; j--) {
    const here = 2 * t * next - after + (terms[j] as number);
    after = next;
    next = here;
  }
  return t * next - after + (terms[0] ?? 0);
}

/** Terms of the series through values at cos(πk/n), k = 0 … n; the first is the whole constant term. */
function seriesThrough(values: readonly number[]): number[] {
  const n = values.length - 1;
  const cosines = Array.from({ length: 2 * n }, (_, k) => Math.cos((Math.PI * k) / n));
  return values.map((_, j) => {
    let sum = 0;
    for (let k = 0; k <= n; k++) {
      const share = k === 0 || k === n ? 0.5 : 1;
      sum += share * (values[k] as number) * (cosines[(j * k) % (2 * n)] as number);
    }
    return ((j === 0 || j === n ? 1 : 2) * sum) / n;
  });
}

/** Have the terms died away, so that no more nodes are wanted? */
function isSettled(terms: readonly number[]): boolean {
  const most = Math.max(...terms.map(Math.abs));
  return terms.slice(-3).every((term) => Math.abs(term) <= QUADRATURE_REL * most);
}

/**
 * Integral of a smooth function from the start of a stretch to any place of it, from one row of values: where many parts
 * of the same stretch are asked for, each then takes no more than a short sum. The function is written as a Chebyshev
 * series, which is integrated term by term; nodes are doubled until its last terms have died away.
 *
 * @returns null where they do not: integrate each part by itself
 * @see textbook numerical analysis (Clenshaw and Curtis, 1960), from memory
 */
export function antiderivative(
  f: (x: number) => number,
  from: number,
  to: number,
): ((x: number) => number) | null {
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  let values: number[] = [];
  for (let n = COARSEST; n <= FINEST; n *= 2) {
    const before = values;
    // Every other node stood in the row before.
    values = Array.from({ length: n + 1 }, (_, k) =>
      k % 2 === 0 && before.length > 0
        ? (before[k / 2] as number)
        : f(middle + half * Math.cos((Math.PI * k) / n)),
    );
    const terms = seriesThrough(values);
    if (!isSettled(terms)) continue;
    const at = (j: number) => (j === 0 ? 2 : 1) * (terms[j] ?? 0);
    const sums = [0, ...terms.map((_, i) => (half * (at(i) - at(i + 2))) / (2 * (i + 1)))];
    while (sums.length > 2 && Math.abs(sums.at(-1) as number) < Number.EPSILON * Math.abs(sums[1] as number))
      sums.pop();
    const start = clenshaw(sums, -1);
    return (x) => clenshaw(sums, (x - middle) / half) - start;
  }
  return null;
}

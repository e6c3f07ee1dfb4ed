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

/** cos(πk/n) for k = 0 … 2n − 1, by n, a power of two. */
const cosinesOf = new Map<number, Float64Array>();

function cosines(n: number): Float64Array {
  const known = cosinesOf.get(n);
  if (known) return known;
  const made = new Float64Array(2 * n).map((_, k) => Math.cos((Math.PI * k) / n));
  cosinesOf.set(n, made);
  return made;
}

/** Terms of the series through values at cos(πk/n), k = 0 … n; the first is the whole constant term. */
function seriesThrough(values: Float64Array): Float64Array {
  const n = values.length - 1;
  const [half, cos, round] = [n / 2, cosines(n), 2 * n - 1];
  const at = (k: number): number => (values[k] as number) * (k === 0 || k === n ? 0.5 : 1);
  // Even terms see the row folded on its middle, odd ones the difference of its halves.
  const [sums, differences] = [new Float64Array(half + 1), new Float64Array(half)];
  for (let k = 0; k < half; k++) {
    sums[k] = at(k) + at(n - k);
    differences[k] = at(k) - at(n - k);
  }
  sums[half] = at(half);
  const terms = new Float64Array(n + 1);
  for (let j = 0; j <= n; j++) {
    const folded = j % 2 === 0 ? sums : differences;
    let sum = 0;
    for (let k = 0; k < folded.length; k++) sum += (folded[k] as number) * (cos[(j * k) & round] as number);
    terms[j] = ((j === 0 || j === n ? 1 : 2) * sum) / n;
  }
  return terms;
}

/** Have the terms died away, so that no more nodes are wanted? */
function isSettled(terms: Float64Array): boolean {
  let most = 0;
  for (let j = 0; j < terms.length; j++) most = Math.max(most, Math.abs(terms[j] as number));
  return terms.subarray(-3).every((term) => Math.abs(term) <= QUADRATURE_REL * most);
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
  let values = new Float64Array();
  for (let n = COARSEST; n <= FINEST; n *= 2) {
    const before = values;
    // Every other node stood in the row before.
    const cos = cosines(n);
    values = new Float64Array(n + 1);
    for (let k = 0; k <= n; k++)
      values[k] =
        k % 2 === 0 && before.length > 0 ? (before[k / 2] as number) : f(middle + half * (cos[k] as number));
    const terms = seriesThrough(values);
    if (!isSettled(terms)) continue;
    const at = (j: number) => (j === 0 ? 2 : 1) * (terms[j] ?? 0);
    const sums = [0];
    for (let j = 1; j <= terms.length; j++) sums.push((half * (at(j - 1) - at(j + 1))) / (2 * j));
    while (sums.length > 2 && Math.abs(sums.at(-1) as number) < Number.EPSILON * Math.abs(sums[1] as number))
      sums.pop();
    const start = clenshaw(sums, -1);
    return (x) => clenshaw(sums, (x - middle) / half) - start;
  }
  return null;
}

import { QUADRATURE_REL } from "./tolerance.ts";

/** Nodes and weights of the seven-point Gauss–Legendre rule on −1 … 1. Abramowitz & Stegun, table 25.4. */
const NODES = [0, 0.4058451513773972, 0.7415311855993945, 0.9491079123427585] as const;
const WEIGHTS = [0.4179591836734694, 0.3818300505051189, 0.2797053914892766, 0.1294849661688697] as const;
const DEEPEST = 40;
/** A smooth function takes some dozens of halvings; one that takes more only shows its own rounding, panel by panel. */
const MOST_HALVINGS = 1 << 9;
/** Then so many equal panels serve as well as any. */
const EQUAL_PANELS = 1 << 8;

/** The rule's sum for f and for |f|, from the same values. */
function gauss(f: (x: number) => number, from: number, to: number): { sum: number; size: number } {
  const half = (to - from) / 2;
  const middle = (from + to) / 2;
  const centre = f(middle);
  let sum = WEIGHTS[0] * centre;
  let size = WEIGHTS[0] * Math.abs(centre);
  for (let i = 1; i < NODES.length; i++) {
    const reach = half * (NODES[i] as number);
    const [left, right] = [f(middle - reach), f(middle + reach)];
    const weight = WEIGHTS[i] as number;
    sum += weight * (left + right);
    size += weight * (Math.abs(left) + Math.abs(right));
  }
  return { sum: sum * half, size: Math.abs(size * half) };
}

/** The rule's sum over equal panels. */
function composite(f: (x: number) => number, from: number, to: number): number {
  const at = (i: number) => from + ((to - from) * i) / EQUAL_PANELS;
  let sum = 0;
  for (let i = 0; i < EQUAL_PANELS; i++) sum += gauss(f, at(i), at(i + 1)).sum;
  return sum;
}

/**
 * Integral of a smooth function, halving panels until nothing changes any more. The work has an end whatever the function
 * is: where halving does not settle, as where a function is lost in its own rounding, equal panels are taken.
 *
 * @returns to about 12 digits of the integral of |f|, or where it does not settle to about those that f itself has
 * @example integrate((x) => x ** 3, 0, 2) // → 4.000000000
 */
export function integrate(f: (x: number) => number, from: number, to: number): number {
  const { sum: whole, size: scale } = gauss(f, from, to);
  let halvings = 0;
  const panel = (left: number, right: number, before: number, depth: number): number => {
    if (++halvings > MOST_HALVINGS) return NaN; // nothing of this is used
    const middle = (left + right) / 2;
    const first = gauss(f, left, middle).sum;
    const second = gauss(f, middle, right).sum;
    const settled = Math.abs(first + second - before) <= QUADRATURE_REL * scale;
    if (settled || depth >= DEEPEST) return first + second;
    return panel(left, middle, first, depth + 1) + panel(middle, right, second, depth + 1);
  };
  const halved = panel(from, to, whole, 0);
  return halvings > MOST_HALVINGS ? composite(f, from, to) : halved;
}

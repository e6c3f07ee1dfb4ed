/** A number as it was written, kept as a whole number over a whole number so that no digit is lost on the way. */
export interface Ratio {
  readonly over: number;
  readonly under: number;
}

/** Up to this many digits every whole number on the way to millimetres (times 12, times 127) is held exactly. */
const MAX_DIGITS = 12;

/** "12", "12.5", ".5" without sign → a ratio; undefined for anything else, and for more digits than a double holds. */
export function decimalRatio(text: string): Ratio | undefined {
  const match = /^(\d+)?(?:\.(\d*))?$/.exec(text);
  const whole = match?.[1] ?? "";
  const decimals = (match?.[2] ?? "").replace(/0+$/, "");
  if (!match || text === "" || text === ".") return undefined;
  const digits = `${whole}${decimals}`.replace(/^0+(?=\d)/, "");
  if (digits.length <= MAX_DIGITS) return { over: Number(digits), under: 10 ** decimals.length };
  // Beyond what whole numbers hold exactly: the nearest double is all there is.
  return { over: Number(text), under: 1 };
}

/** whole + over/under. */
export function mixed(whole: number, fraction: Ratio): Ratio {
  return { over: whole * fraction.under + fraction.over, under: fraction.under };
}

/** a + b. */
export function add(a: Ratio, b: Ratio): Ratio {
  return a.under === b.under
    ? { over: a.over + b.over, under: a.under }
    : { over: a.over * b.under + b.over * a.under, under: a.under * b.under };
}

/** The one rounding step: to millimetres, an inch being 127/5 mm. */
export function inchesToMm({ over, under }: Ratio): number {
  return (over * 127) / (under * 5);
}

/** The one rounding step, where the number already counts millimetres. */
export function plain({ over, under }: Ratio): number {
  return over / under;
}

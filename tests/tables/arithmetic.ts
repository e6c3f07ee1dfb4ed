const inDegrees =
  (f: (x: number) => number) =>
  (deg: number): number =>
    f((deg * Math.PI) / 180);

const FUNCTIONS = {
  sin: inDegrees(Math.sin),
  cos: inDegrees(Math.cos),
  tan: inDegrees(Math.tan),
  arctan: (x: number) => (Math.atan(x) * 180) / Math.PI,
  arccos: (x: number) => (Math.acos(x) * 180) / Math.PI,
  root: Math.sqrt,
  pi: Math.PI,
};

/** Keys a printed sum in, as a pocket calculator set to degrees would: "1000 × sin(180° ÷ 12)". */
export function keyIn(sum: string): number {
  const code = sum
    .replaceAll("×", "*")
    .replaceAll("÷", "/")
    .replaceAll("−", "-")
    .replaceAll("°", "")
    .replaceAll("π", "pi")
    .replaceAll("√", "root")
    .replaceAll(/\b(sin|cos|tan) ([\d.]+)/g, "$1($2)")
    .replaceAll("²", "**2")
    .replaceAll("³", "**3");
  if (!/^[\w\s.()*/+-]+$/.test(code)) throw new Error(`not a sum: ${sum}`);
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the text under test is our own
  const run = new Function(...Object.keys(FUNCTIONS), `return ${code}`) as (...all: unknown[]) => number;
  return run(...Object.values(FUNCTIONS));
}

/** Half of the last figure of a printed number, and a hair for a number that was a tie. */
export const halfLast = (printed: string): number =>
  0.5 * 10 ** -(printed.split(".")[1]?.length ?? 0) * (1 + 1e-6);

/** How far a printed number lies from what it should be, in halves of its last figure: 1 or less is right. */
export const off = (printed: string, value: number): number =>
  Math.abs(Number(printed) - value) / halfLast(printed);

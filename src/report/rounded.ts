/** Numbers leave the core with six decimals: a millionth of a millimetre, and the same text on every engine. */
const DECIMALS = 6;

/** Errors are far smaller than lengths and keep their leading digits instead. */
const ERROR_DIGITS = 3;

function round(value: number): number {
  const scale = 10 ** DECIMALS;
  const near = Math.round(value * scale) / scale;
  return near === 0 ? 0 : near; // no −0
}

const roundError = (value: number): number => Number(value.toPrecision(ERROR_DIGITS));

/** A copy of a tree of plain data with every number rounded; those under `accuracy` to three digits. */
export function rounded<T>(tree: T, error = false): T {
  if (typeof tree === "number") return (error ? roundError(tree) : round(tree)) as T;
  if (Array.isArray(tree)) return tree.map((one: unknown) => rounded(one, error)) as T;
  if (tree === null || typeof tree !== "object") return tree;
  // Written key by key: a list of pairs to make the copy from would take as long as the rounding.
  const copy: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(tree) as [string, unknown][])
    copy[key] = rounded(value, error || key === "accuracy");
  return copy as T;
}

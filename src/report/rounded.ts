/** Numbers leave the core with six decimals: a millionth of a millimetre, and the same text on every engine. */
const DECIMALS = 6;
const SCALE = 10 ** DECIMALS;

/** Errors are far smaller than lengths and keep their leading digits instead. */
const ERROR_DIGITS = 3;

function round(value: number): number {
  const near = Math.round(value * SCALE) / SCALE;
  return near === 0 ? 0 : near; // no −0
}

const roundError = (value: number): number => Number(value.toPrecision(ERROR_DIGITS));

/** A copy of a tree of plain data with every number rounded; those under `accuracy` to three digits. */
export function rounded<T>(tree: T, error = false): T {
  if (typeof tree === "number") return (error ? roundError(tree) : round(tree)) as T;
  if (Array.isArray(tree)) {
    const list: unknown[] = tree;
    const copied: unknown[] = new Array(list.length);
    for (let i = 0; i < list.length; i++) copied[i] = rounded(list[i], error);
    return copied as T;
  }
  if (tree === null || typeof tree !== "object") return tree;
  // Written key by key: a list of pairs to make the copy from would take as long as the rounding.
  const copy: Record<string, unknown> = {};
  for (const key of Object.keys(tree))
    copy[key] = rounded((tree as Readonly<Record<string, unknown>>)[key], error || key === "accuracy");
  return copy as T;
}

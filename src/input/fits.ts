import { isOptional, shapeOf, type Alternatives, type Schema } from "./introspect.ts";
import type { MapTree } from "./tree.ts";

interface Fit {
  readonly word: string;
  /** Keys that only some of the alternatives have: those it has, less those it has not. */
  readonly own: number;
  /** Keys that it must have and the file has not. */
  readonly missing: number;
}

/**
 * The word of the alternative whose keys suit the file best, where the file does not say which it is: the rest of the
 * file can then be judged in the same go. Undefined where none is set apart by a key of its own, or two suit equally.
 */
export function bestFit({ key, options }: Alternatives, tree: MapTree): string | undefined {
  const all = [...options.values()];
  const fits = [...options].map(([word, schema]): Fit => ({ word, ...fitOf(schema, all, tree, key) }));
  const [best, next] = fits.toSorted((a, b) => b.own - a.own || a.missing - b.missing);
  if (!best || best.own <= 0) return undefined;
  return next?.own === best.own && next.missing === best.missing ? undefined : best.word;
}

function fitOf(schema: Schema, all: readonly Schema[], tree: MapTree, skip: string): Omit<Fit, "word"> {
  const shape = shapeOf(schema) ?? {};
  let own = 0;
  for (const [key, { tree: value }] of tree.entries) {
    if (key === skip) continue;
    const rivals = all.map((one) => shapeOf(one)?.[key]);
    if (rivals.some((one) => one === undefined) && rivals.some((one) => one !== undefined))
      own += Object.hasOwn(shape, key) ? 1 : -1;
    const inner = shape[key];
    const groups = rivals.filter((one) => one !== undefined);
    if (inner && value.kind === "map") own += fitOf(inner, groups, value, "").own;
  }
  const missing = missingIn(shape, tree, skip);
  return { own, missing };
}

function missingIn(shape: Readonly<Record<string, Schema>>, tree: MapTree, skip: string): number {
  return Object.entries(shape).reduce((sum, [key, schema]) => {
    if (key === skip || isOptional(schema)) return sum;
    const value = tree.entries.get(key)?.tree;
    if (!value) return sum + 1;
    return sum + (value.kind === "map" ? missingIn(shapeOf(schema) ?? {}, value, "") : 0);
  }, 0);
}

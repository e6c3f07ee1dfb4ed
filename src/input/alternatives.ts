import { bestFit } from "./fits.ts";
import { type Alternatives, type Schema, shapeOf } from "./introspect.ts";
import { either, nearest } from "./nearest.ts";
import { wordFor } from "./synonyms.ts";
import type { MapTree } from "./tree.ts";
import { didYouMean, whatIsWrong } from "./treeWords.ts";

interface Chosen {
  /** What is wrong with the word that says which group it is. */
  readonly problem?: { readonly problem: string; readonly remedy: string };
  /** The group that it is, or that it is judged as; undefined where nothing tells. */
  readonly taken: { readonly word: string; readonly schema: Schema } | undefined;
}

/** Which of several groups is meant: by its word, or by the word that a mistyped one comes nearest to. */
export function chosenOf({ key, options }: Alternatives, tree: MapTree): Chosen {
  const words = [...options.keys()];
  const take = (chosen: string | undefined): Chosen["taken"] => {
    const schema = chosen === undefined ? undefined : options.get(chosen);
    return chosen !== undefined && schema ? { word: chosen, schema } : undefined;
  };
  const word = tree.entries.get(key)?.tree;
  const written = word?.kind === "scalar" && word.value !== null ? word.written : undefined;
  // A misspelt key is told as such, and its word taken: one slip, one message.
  const known = take(written) ?? (word ? undefined : take(slipOf(key, tree, words)));
  if (known) return { taken: known };
  const guess = written === undefined ? undefined : (nearest(written, words) ?? wordFor(written, words));
  const remedy = guess === undefined ? `give ${either(words)}` : didYouMean(guess, words);
  // Nothing to go by but the keys: the rest is judged as what it looks like.
  return {
    problem: { problem: whatIsWrong(word), remedy },
    taken: take(guess ?? bestFit({ key, options }, tree)),
  };
}

/** Keys whose meaning is the same in every alternative. */
export function sharedShape(options: readonly Schema[]): Record<string, Schema> {
  const [first = {}, ...others] = options.map((option) => shapeOf(option) ?? {});
  return Object.fromEntries(
    Object.entries(first).filter(([key, schema]) => others.every((one) => one[key] === schema)),
  );
}

/** The word under a key that is nearly the one looked for. */
function slipOf(key: string, tree: MapTree, words: readonly string[]): string | undefined {
  for (const [written, { tree: value }] of tree.entries) {
    if (value.kind === "scalar" && words.includes(value.written) && nearest(written, [key]))
      return value.written;
  }
  return undefined;
}

import { nearest } from "./nearest.ts";
import { keyFor } from "./synonyms.ts";
import type { Tree } from "./tree.ts";

/** What else is worth saying where a key is guessed. */
const MORE: Readonly<Record<string, string>> = {
  machines: " It lists rolls and brakes, each with kind: plate roll or kind: press brake",
};

interface UnknownKey {
  /** The key that it is a slip of the keyboard for. */
  readonly slip: string | undefined;
  /** The key that is meant: a slip, or another word for it. */
  readonly guess: string | undefined;
  /** Is it what a decimal comma cut off? In braces a comma ends a value: { diameter: 4,625 } holds 4 and a key 625. */
  readonly comma: boolean;
  readonly problem: string;
  readonly remedy: string;
}

/** What to say of a key that is none here: of all the keys there are, and those that are still missing. */
export function unknownKeyWords(
  key: string,
  value: Tree,
  { all, missing }: { readonly all: readonly string[]; readonly missing: readonly string[] },
): UnknownKey {
  const slip = nearest(key, missing);
  const guess = slip ?? keyFor(key, missing);
  const comma = /^\d+$/.test(key) && value.kind === "scalar" && value.value === null;
  if (comma)
    return { slip, guess, comma, problem: "stands after a comma", remedy: "use a point for decimals" };
  const remedy =
    guess === undefined
      ? `the keys here are ${all.join(", ")}`
      : `did you mean ${guess}?${MORE[guess] ?? ""}`;
  return { slip, guess, comma, problem: "is not a key here", remedy };
}

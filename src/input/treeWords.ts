import { shown } from "./reading.ts";
import type { ScalarTree, Tree } from "./tree.ts";

/** A value as it stands in the file, for a message. */
export function seen(tree: ScalarTree): string {
  return tree.written.trim() === "" ? "an empty text" : shown(tree.written);
}

/** What is wrong with a word that is not the one looked for. */
export function whatIsWrong(word: Tree | undefined): string {
  if (!word) return "is missing";
  if (word.kind !== "scalar") return "is not one word";
  return word.value === null ? "has no value" : `${seen(word)} is not known`;
}

/** The nearest of the known words, and the others where there are any. */
export const didYouMean = (guess: string, words: readonly string[]) =>
  words.length < 2 ? `did you mean ${guess}?` : `did you mean ${guess}? Known are ${words.join(", ")}`;

/** For a value that went with a comment: "thickness: #10". */
export function hashWords({ hash }: ScalarTree, example: string | undefined) {
  if (hash === undefined) return undefined;
  return {
    problem: "has no value, for what follows # is a comment and is not read",
    remedy:
      example === undefined
        ? "put the value in front of it, or in quotes"
        : `write it without, as in ${example}`,
  };
}

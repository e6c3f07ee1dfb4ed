/**
 * The known word that a mistyped one was most likely meant to be; undefined where none is near.
 * Near is: no more slips than a third of its letters; capitals, spaces and hyphens do not count.
 */
export function nearest(word: string, known: readonly string[]): string | undefined {
  // A long text is no slip of the keyboard, and the distance costs the product of the lengths.
  if (word.length > 60) return undefined;
  const wanted = fold(word);
  let best: string | undefined;
  let fewest = Infinity;
  for (const candidate of known) {
    const slips = editDistance(wanted, fold(candidate));
    const letters = Math.min(wanted.length, candidate.length);
    // Any two-letter word is one slip from half of all others.
    const allowed = letters < 3 ? 0 : Math.floor(letters / 3);
    if (slips <= allowed && slips < fewest) [best, fewest] = [candidate, slips];
  }
  return best;
}

const fold = (word: string) => word.toLowerCase().replace(/[\s_-]+/g, "");

/** Fewest letters put in, left out, changed or swapped with their neighbour that turn one word into the other. */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(
        Math.min(
          at(last, j) + 1,
          at(row, j - 1) + 1,
          at(last, j - 1) + (same ? 0 : 1),
          swapped ? at(beforeLast, j - 2) + 1 : Infinity,
        ),
      );
    }
    [beforeLast, last] = [last, row];
  }
  return at(last, b.length);
}

const at = (row: readonly number[], index: number) => row[index] ?? Infinity;

/** "a", "a or b", "a, b or c". */
export function either(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1) ?? ""}`;
}

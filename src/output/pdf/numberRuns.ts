/** Digits with the points, strokes, hyphens and brackets that belong to them: 114-13/16, (±0.5), 2026-11-04. */
const NUMBER = /[(±Ø+−-]*\d[\d.,/:×−–-]*[)°%″′,;.]*/gu;

/** A word in the pieces that it may be broken into: single signs, and whole numbers. */
export function breakable(word: string): string[] {
  const pieces: string[] = [];
  let from = 0;
  for (const { 0: number, index } of word.matchAll(NUMBER)) {
    pieces.push(...Array.from(word.slice(from, index)), number);
    from = index + number.length;
  }
  return [...pieces, ...Array.from(word.slice(from))];
}

/** The numbers of a text, which must each stay on their line. */
export const numbersOf = (text: string): string[] => text.match(NUMBER) ?? [];

/** Signs that have a like in the binder's font. */
const LIKE: Readonly<Record<string, string>> = {
  "\u2300": "Ø",
  "\u2010": "-",
  "\u2011": "-",
  "\u2212": "−",
  "\u2044": "/",
};

/** Which signs a font has, and who wants to be told of those that it has not. */
interface Signs {
  readonly holds: (sign: string) => boolean;
  readonly lose?: (sign: string, words: string) => void;
}

/**
 * Words that somebody typed, as the font can print them: signs that it has not give way to their like, to their letter without
 * its accent, or to a question mark, never to a gap. Our own words are not sent through here: of those, none may be missing.
 */
export function printable(words: string, { holds, lose }: Signs): string {
  return Array.from(words.normalize("NFC").replace(/[^\S\u00a0]+/g, " "))
    .map((sign) => {
      const like = LIKE[sign] ?? sign;
      if (holds(like)) return like;
      const bare = sign.normalize("NFKD").replace(/\p{M}/gu, "");
      if (bare !== "" && Array.from(bare).every(holds)) return bare;
      lose?.(sign, words);
      return "?";
    })
    .join("");
}

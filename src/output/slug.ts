/** Letters that are no other letter with a sign on it, as they are written without them. A lone Ø, as in Ø900, is the sign of a diameter and is left out. */
const WHOLE_LETTERS: Readonly<Record<string, string>> = {
  ...{ ø: "o", æ: "ae", ß: "ss", ł: "l" },
  ...{ đ: "d", œ: "oe", ð: "d", þ: "th" },
};

/** Words as they stand in an address or a file's name: letters and figures, all else a hyphen. */
export const slug = (words: string): string =>
  words
    .toLowerCase()
    .replaceAll(/(?<!\p{L})ø(?!\p{L})/gu, " ")
    .replaceAll(/[øæßłđœðþ]/g, (letter) => WHOLE_LETTERS[letter] ?? letter)
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");

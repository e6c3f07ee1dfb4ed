/** Signs of the trade by the codes of DXF, and those that plain ASCII has a like of. */
const SIGNS: Readonly<Record<string, string>> = {
  "°": "%%d",
  "±": "%%p",
  "½": "1/2",
  "×": "x",
  "–": "-",
  "’": "'",
};

/** Letters that Unicode does not take apart into one of ASCII and an accent, as they are spelled without them. */
const LETTERS: Readonly<Record<string, string>> = {
  ß: "ss",
  ẞ: "SS",
  ø: "o",
  Ø: "O",
  æ: "ae",
  Æ: "AE",
  œ: "oe",
  Œ: "OE",
  ł: "l",
  Ł: "L",
  đ: "d",
  Đ: "D",
  ð: "d",
  Ð: "D",
  þ: "th",
  Þ: "Th",
  ħ: "h",
  Ħ: "H",
  ŧ: "t",
  Ŧ: "T",
  ŋ: "n",
  Ŋ: "N",
  ı: "i",
};

/** A diameter sign stands by itself or before a figure; within a word it is a letter. */
const DIAMETER = /(?<!\p{L})[Øø](?!\p{L})/gu;

/**
 * Words as a reader of release 12 can show them: signs by their codes, letters without accents; a question mark for all
 * that has no like among them.
 *
 * @example dxfWords("Stoß Ø 500") // "Stoss %%c 500"
 */
export const dxfWords = (words: string): string =>
  words
    .replace(/[°±½×–’]/g, (sign) => SIGNS[sign] ?? sign)
    // The sign of the trade, and its two look-alikes in Unicode.
    .replace(/[⌀∅]/g, "%%c")
    .normalize("NFC")
    .replace(DIAMETER, "%%c")
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^\x20-\x7e]/gu, (letter) => LETTERS[letter] ?? "?");

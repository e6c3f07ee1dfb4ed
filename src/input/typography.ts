const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅐": "1/7",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅑": "1/9",
  "⅒": "1/10",
};

/** Longer than any size anyone writes; what is longer is something else, and is not worth the work. */
const MAX_CHARACTERS = 100;

/**
 * The same text in plain characters: printed quotes, dashes, fraction signs and wide spaces are what a drawing,
 * a word processor or a telephone puts in for the keys ' " - / and the space bar. Undefined where it is far too long.
 */
export function tidy(text: string): string | undefined {
  if (text.length > MAX_CHARACTERS) return undefined;
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/g, (sign) => ` ${FRACTIONS[sign] ?? sign} `)
    .replace(/[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/g, " ")
    .replace(/[\u2010-\u2015\u2212\ufe63\uff0d]/g, "-")
    .replace(/[\u2044\u2215\uff0f]/g, "/")
    .replace(/[\u2018\u2019\u201a\u201b\u2032\u00b4\u02b9\u02bc`]/g, "'")
    .replace(/[\u201c\u201d\u201e\u201f\u2033\u02ba\u3003\uff02]/g, '"')
    .replace(/''/g, '"')
    .replace(/\s*\/\s*/g, "/")
    .replace(/\s+/g, " ")
    .trim();
}

/** A number never stands on another line than its unit or its name. */
export const joined = (words: string): string =>
  words.replace(/(\d) (?=(?:mm|in|kg|lb|kN|short tons|%)(?![a-z]))|\b(R|zone|[A-F]) (?=\d)/g, "$1$2\u00a0");

/** A number never stands on another line than its unit or its name. */
export const joined = (words: string): string =>
  words.replace(/(\d) (?=(?:mm|in|kg|lb|kN|short tons|%)(?![a-z]))|\b(R|zone|[A-F]) (?=\d)/g, "$1$2\u00a0");

/** On a page neither is a fraction taken from its whole inches: a browser would break the line behind the dash. */
export const unbroken = (words: string): string => joined(words).replace(/(\d)-(?=\d+\/\d)/g, "$1-\u2060");

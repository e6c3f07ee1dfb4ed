/** What a piece of text came to: a value, or what is wrong with it and what would be right. */
export type Reading<T> =
  | { readonly kind: "read"; readonly value: T }
  | { readonly kind: "unreadable"; readonly problem: string; readonly remedy: string };

export const read = <T>(value: T): Reading<T> => ({ kind: "read", value });

export const unreadable = (problem: string, remedy: string): Reading<never> => ({
  kind: "unreadable",
  problem,
  remedy,
});

const SHOWN = 40;

/** Control characters, half characters, and signs that show nothing or turn the line round. */
const UNSEEN = /[\p{Cc}\p{Cs}\p{Cn}\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/gu;

/** Text of a file inside a message: on one line, not longer than a glance, nothing in it that a terminal would obey. */
export function shown(text: string): string {
  const cut = text.length > SHOWN ? `${text.slice(0, SHOWN - 1).replace(/\p{Cs}$/u, "")}…` : text;
  return onOneLine(cut);
}

/** The same without cutting. */
export function onOneLine(text: string): string {
  return text.replace(UNSEEN, (sign) => {
    if (sign === "\n") return "⏎";
    return sign === "\t" ? "⇥" : `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, "0")}`;
  });
}

/** A file that is not there: what its name is like matters no more then. */
export const NO_FILE: Reading<never> = unreadable("there is no such file", "check its name and folder");

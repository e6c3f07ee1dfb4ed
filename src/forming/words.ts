/** "one", "one and two", "one, two and three". */
export const listed = (words: readonly (string | number)[]): string =>
  words.length > 1 ? `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}` : words.join("");

/** With a capital: what begins a sentence. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Without one: a sentence that goes on behind a colon. */
export const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);

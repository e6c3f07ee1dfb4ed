/** Letters of the words that a sign stood in. */
const MOST = 60;

/** Signs that show nothing themselves, or turn round what stands beside them. */
const UNSEEN = /\p{C}/gu;
/** A sign as it can be told, by its number where nothing is to be seen of it. */
const shown = (sign: string): string =>
  sign.replace(UNSEEN, (one) => `U+${(one.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`);

/** Signs that somebody typed and that print has not, in a sentence to stand behind another; empty where there are none. */
export function lostSigns(lost: ReadonlyMap<string, string>): string {
  const [words] = lost.values();
  if (words === undefined) return "";
  const signs = [...lost.keys()].map(shown).join(" ");
  const start = Array.from(words.replaceAll(UNSEEN, ""));
  const first = `${start.slice(0, MOST).join("")}${start.length > MOST ? "…" : ""}`;
  return ` Print has no letters for ${signs}: a question mark stands for ${lost.size === 1 ? "it" : "each"}, first in “${first}”.`;
}

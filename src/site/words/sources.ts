/** How well we know a source, in the words of the page. */
export const READ = {
  read: { mark: "Read", means: "The value was read in the document itself, as far as the note says." },
  "read in a reproduction": {
    mark: "Read in a reproduction",
    means: "The value was read in a copy, a table or a calculation sheet made by others.",
  },
  "from memory": { mark: "From memory", means: "Recalled, not seen. Check it before you rely on it." },
} as const;

/** The kinds of source in the order of the page. */
export const SOURCE_KINDS = [
  ["standard", "Standards"],
  ["statute", "Laws and regulations"],
  ["book", "Books"],
  ["paper", "Papers"],
  ["web page", "Web pages"],
  ["common practice", "Common practice"],
] as const;

/** A basis as it is read on paper: the short name of a source, or its own words. */
export const basisName = (known: ReadonlyMap<string, string>, basis: string): string =>
  known.get(basis) ?? basis;

/** What stands beside a figure on paper, where nobody follows a link: "Groover, Modern Manufacturing, textbook, from memory". */
export const shortName = ({ short, read }: { readonly short: string; readonly read: keyof typeof READ }) =>
  read === "from memory" ? `${short}, ${read}` : short;

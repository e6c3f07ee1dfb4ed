/** Words as they stand in an address or a file's name: letters and figures, all else a hyphen. */
export const slug = (words: string): string =>
  words
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");

/** Figures under the pattern that can be asked, and what they are called. */
export const PATTERN_FIGURES = [
  { id: "cutting", name: "length of cutting" },
  { id: "loss", name: "what a square cut lacks" },
  { id: "hand", name: "what stepped chords lack" },
  { id: "exact", name: "how exact it is" },
] as const;

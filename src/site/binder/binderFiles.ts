/** The binder as PDF, by paper. */
export const BINDER_FILES = [
  { file: "binder-a4.pdf", paper: "a4", name: "A4" },
  { file: "binder-letter.pdf", paper: "letter", name: "US Letter" },
] as const;

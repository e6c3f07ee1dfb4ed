/** The binder as PDF, by paper. */
const BINDER_FILES = [
  { file: "binder-a4.pdf", paper: "a4", name: "A4" },
  { file: "binder-letter.pdf", paper: "letter", name: "US Letter" },
] as const;

/** Of a larger job the site has neither: a page of so many sheets is heavy to open, and the command writes the PDF. */
const MOST_PARTS = 60;

export const onSite = (parts: number): boolean => parts <= MOST_PARTS;

export const binderFiles = (parts: number): readonly (typeof BINDER_FILES)[number][] =>
  onSite(parts) ? BINDER_FILES : [];

/** A moment as PDF writes it, in UTC, so that it does not depend on where it is written: D:20260131120000+00'00'. */
export const pdfDate = (at: Date): string =>
  `D:${at.toISOString().slice(0, 19).replaceAll(/[-:T]/g, "")}+00'00'`;

/** Stands where there is no date, never the clock's: a PDF must say when it was made, and the same files give the same bytes. */
export const NO_DATE = "D:20000101000000+00'00'";

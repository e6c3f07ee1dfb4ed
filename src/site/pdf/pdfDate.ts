/** A moment as PDF writes it, in UTC, so that it does not depend on where it is written: D:20260131120000+00'00'. */
export const pdfDate = (at: Date): string =>
  `D:${at.toISOString().slice(0, 19).replaceAll(/[-:T]/g, "")}+00'00'`;

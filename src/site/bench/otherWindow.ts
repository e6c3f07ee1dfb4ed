/** Said on loading, where another window has typed since this one did. */
export const OTHER_DRAFT =
  "Another window of this browser typed last, and what it typed is here. Undo brings back what this window had.";

/** Said where another window of the browser has changed what it shares with this one. */
export const otherWindow = (what: "part" | "shop"): string =>
  `Another window of this browser has just changed its own copy of this ${what}. Both go on, but only what is typed last is kept: save this one as a file, or close the other.`;

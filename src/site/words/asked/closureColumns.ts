/** Columns of the closure table that can be asked, and what they are called. */
export const CLOSURE_COLUMNS = [
  { id: "closed", name: "Closed" },
  { id: "share", name: "Share of the bend" },
  { id: "large", name: "Large end" },
  { id: "small", name: "Small end" },
] as const;

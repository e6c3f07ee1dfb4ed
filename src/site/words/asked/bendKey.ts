/** Columns of the table of bend lines that can be asked. */
export type BendColumn = "bend" | "depth" | "a" | "b" | "length" | "bent" | "hit" | "force";

/** Under which a column is asked: several pieces have a table each. */
export const bendKey = (piece: number, column: BendColumn): string => `${piece} ${column}`;

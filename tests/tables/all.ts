import type { ReckonerTable } from "../../src/tables/table.ts";
import { reckonerTables } from "../../src/tables/tables.ts";
import { tables } from "../input/files.ts";

export const { materials } = tables.catalogue;
export const all: readonly ReckonerTable[] = reckonerTables(tables.catalogue);

export function tableOf(id: string): ReckonerTable {
  const found = all.find((one) => one.id === id);
  if (!found) throw new RangeError(id);
  return found;
}

/** Cells of a row as numbers; a fraction or a word is not one. */
export const numbersOf = (row: readonly string[]): number[] => row.map(Number);

/** Inches as a rule has them: 12-3/8, 3/4, 5. */
export function inchesOf(text: string): number {
  const [, whole = "0", above = "0", below = "1"] = /^(?:(\d+)(?:-|$))?(?:(\d+)\/(\d+))?$/.exec(text) ?? [];
  if (text === "") throw new Error("no inches");
  return Number(whole) + Number(above) / Number(below);
}

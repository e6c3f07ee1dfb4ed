import { PlateRoll, PressBrake, Shop } from "../../forming/machine.ts";
import type { Schema } from "../../input/introspect.ts";
import { schemaRows, type SchemaRow } from "./schemaRows.ts";

const machine = (schema: Schema): SchemaRow[] => schemaRows(schema, "machines[]");

/** The shop file in the groups that its page shows. */
export const SHOP_ROWS: readonly (readonly [string, readonly SchemaRow[]])[] = [
  ["The file", schemaRows(Shop).filter(({ path }) => !/[[.]/.test(path))],
  ["A plate roll", machine(PlateRoll)],
  ["A press brake", machine(PressBrake)],
  ["A stock plate", schemaRows(Shop).filter(({ path }) => path.startsWith("stock["))],
  ["Cutting", schemaRows(Shop).filter(({ path }) => path.startsWith("cutting."))],
];

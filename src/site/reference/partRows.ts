import { alternativesOf } from "../../input/introspect.ts";
import { Part, type ShapeId } from "../../shapes/part.ts";
import { schemaRows, type SchemaRow } from "./schemaRows.ts";

const shapes = [...(alternativesOf(Part)?.options ?? [])].map(
  ([shape, schema]) => [shape as ShapeId, schemaRows(schema)] as const,
);
const inAll = ({ path }: SchemaRow) => shapes.every(([, rows]) => rows.some((row) => row.path === path));

/** Keys that every shape shares, though what they hold may differ in the first of them. */
export const COMMON_ROWS: readonly SchemaRow[] = (shapes[0]?.[1] ?? [])
  .filter(inAll)
  .map((row) => (row.path === "shape" ? { ...row, holds: shapes.map(([shape]) => shape).join(" or ") } : row))
  .filter(({ path }) => path !== "height");

/** What each shape has besides. A height is listed with the shape, since a right cone may go without. */
export const SHAPE_ROWS = shapes.map(
  ([shape, rows]) => [shape, rows.filter((row) => !inAll(row) || row.path === "height")] as const,
);

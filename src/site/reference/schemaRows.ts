import {
  alternativesOf,
  bare,
  choicesOf,
  isOptional,
  itemOf,
  limitsOf,
  quantityOf,
  shapeOf,
  type Schema,
} from "../../input/introspect.ts";

/** One key of a part or shop file, as its schema has it. */
export interface SchemaRow {
  readonly path: string;
  /** What may be written there: "length", "mm or in", "text" … */
  readonly holds: string;
  readonly required: boolean;
}

/** In words, with the limits where a number is bare of any unit. */
function holds(schema: Schema): string {
  const quantity = quantityOf(schema);
  if (quantity) return quantity;
  const choices = choicesOf(schema);
  if (choices) return choices.join(" or ");
  const { type } = bare(schema)._zod.def;
  const { min, max, multipleOf } = limitsOf(schema);
  const range = min && max ? `, ${min.value} to ${max.value}` : "";
  if (type === "number") return `${multipleOf === 2 ? "even number" : "number"}${range}`;
  if (type === "string") return max ? `text, up to ${max.value} characters` : "text";
  if (type === "boolean") return "true or false";
  if (type === "tuple") return `two of: ${quantityOf(itemOf(schema, 0) ?? schema) ?? "number"}`;
  if (type === "array") return "list";
  return "group";
}

/** Every key below a schema, in the order of the file; a group comes before what it holds. */
export function schemaRows(schema: Schema, path = ""): SchemaRow[] {
  const alternatives = alternativesOf(schema);
  if (alternatives)
    return unique([...alternatives.options.values()].flatMap((option) => schemaRows(option, path)));
  const item = bare(schema)._zod.def.type === "array" ? itemOf(schema, 0) : undefined;
  if (item) return quantityOf(item) || !shapeOrAlternatives(item) ? [] : schemaRows(item, `${path}[]`);
  return Object.entries(shapeOf(schema) ?? {}).flatMap(([key, value]) => {
    const at = path === "" ? key : `${path}.${key}`;
    return [{ path: at, holds: holds(value), required: !isOptional(value) }, ...schemaRows(value, at)];
  });
}

const shapeOrAlternatives = (schema: Schema) => shapeOf(schema) ?? alternativesOf(schema);

/** Shapes share most keys; the first mention stands. */
function unique(rows: readonly SchemaRow[]): SchemaRow[] {
  const seen = new Set<string>();
  return rows.filter(({ path }) => !seen.has(path) && seen.add(path));
}

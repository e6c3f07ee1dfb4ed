import type { Quantity } from "../shapes/fields.ts";
import {
  bare,
  choicesOf,
  isOptional,
  isWhole,
  limitsOf,
  quantityOf,
  rulesOf,
  shapeOf,
  type Limits,
  type Schema,
} from "./introspect.ts";

/**
 * What a schema asks for, as plain data: enough to make a form from and to know the plainest answers as right, without
 * the schema itself and the library that runs it.
 */
export type Outline = {
  readonly optional: boolean;
  /** Are there rules beyond what is said here, which only the schema itself can judge? */
  readonly ruled?: true;
} & (
  | { readonly kind: "group"; readonly keys: Readonly<Record<string, Outline>> }
  | { readonly kind: "pair"; readonly items: readonly Outline[] }
  | {
      readonly kind: "number";
      readonly quantity?: Quantity;
      readonly whole: boolean;
      readonly limits: Limits;
    }
  | { readonly kind: "text"; readonly limits: Limits }
  | { readonly kind: "choice"; readonly words: readonly string[] }
  | { readonly kind: "yes" }
  | { readonly kind: "list" }
  | { readonly kind: "other" }
);

export function outlineOf(schema: Schema): Outline {
  const about = {
    optional: isOptional(schema),
    ...(rulesOf(schema) === "others" && { ruled: true as const }),
  };
  const keys = shapeOf(schema);
  if (keys) {
    const outlines = Object.entries(keys).map(([key, inner]) => [key, outlineOf(inner)] as const);
    return { ...about, kind: "group", keys: Object.fromEntries(outlines) };
  }
  const words = choicesOf(schema);
  if (words) return { ...about, kind: "choice", words };
  const { def } = bare(schema)._zod;
  if (def.type === "tuple")
    return { ...about, kind: "pair", items: def.items.map((item) => outlineOf(item)) };
  if (def.type === "array") return { ...about, kind: "list" };
  if (def.type === "string") return { ...about, kind: "text", limits: limitsOf(schema) };
  if (def.type === "boolean") return { ...about, kind: "yes" };
  if (def.type !== "number") return { ...about, kind: "other" };
  const quantity = quantityOf(schema);
  return {
    ...about,
    kind: "number",
    ...(quantity && { quantity }),
    whole: isWhole(schema),
    limits: limitsOf(schema),
  };
}

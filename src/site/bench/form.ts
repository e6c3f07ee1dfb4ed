import {
  bare,
  choicesOf,
  isOptional,
  isWhole,
  quantityOf,
  shapeOf,
  type Schema,
} from "../../input/introspect.ts";
import type { Typed, TypedGroup } from "../../input/typed.ts";
import type { Complaint } from "./readTyped.ts";
import type { FieldPath } from "../../input/problem.ts";
import type { Quantity } from "../../shapes/fields.ts";

/** How a field is filled in. */
type FieldKind =
  | Quantity
  | "count"
  | "number"
  | "text"
  | "long text"
  | "choice"
  | "yes"
  | "yes or no"
  | "lengths"
  | "material";

/** What a form writes into: the part, or the shop. */
export interface Typing {
  readonly typed: TypedGroup;
  readonly problems: readonly Complaint[];
  readonly put: (path: FieldPath, value: Typed | undefined) => void;
  /** A field was left: the next change is undone apart from it. */
  readonly leave: () => void;
}

export interface FieldItem {
  readonly kind: FieldKind;
  readonly path: FieldPath;
  /** Words to choose from. */
  readonly choices: readonly string[];
  readonly optional: boolean;
}

/** The units of a file: a choice that a form writes every size anew for. */
export const UNITS_ITEM: FieldItem = {
  kind: "choice",
  path: ["units"],
  choices: ["mm", "in"],
  optional: false,
};
export const UNIT_NAMES = { mm: "millimetres", in: "inches" };

/** Fields that belong together, under one heading. */
interface FieldSet {
  readonly path: FieldPath;
  readonly optional: boolean;
  readonly fields: readonly FieldItem[];
}

export interface FormModel {
  /** Fields of the file itself, in the order of its schema. */
  readonly fields: readonly FieldItem[];
  readonly sets: readonly FieldSet[];
}

/** What a form for a group of keys asks, from its schema: a new key of a file is a new field of the form. */
export function formOf(schema: Schema, path: FieldPath = []): FormModel {
  const fields: FieldItem[] = [];
  const sets: FieldSet[] = [];
  for (const [key, inner] of Object.entries(shapeOf(schema) ?? {})) {
    const at = [...path, key];
    if (shapeOf(inner)) {
      const own = formOf(inner, at);
      sets.push({
        path: at,
        optional: isOptional(inner),
        fields: [...own.fields, ...own.sets.flatMap((set) => set.fields)],
      });
    } else fields.push(...itemsOf(inner, at));
  }
  return { fields, sets };
}

function itemsOf(schema: Schema, path: FieldPath): FieldItem[] {
  const optional = isOptional(schema);
  const { def } = bare(schema)._zod;
  if (def.type === "array") return [{ path, optional, choices: [], kind: "lengths" }];
  if (def.type === "tuple")
    return def.items.flatMap((item, i) => itemsOf(item, [...path, i]).map((one) => ({ ...one, optional })));
  return [{ path, optional, choices: choicesOf(schema) ?? [], kind: kindOf(schema, path) }];
}

function kindOf(schema: Schema, path: FieldPath): FieldKind {
  if (path.at(-1) === "material") return "material";
  if (choicesOf(schema)) return "choice";
  const quantity = quantityOf(schema);
  if (quantity) return quantity;
  if (isWhole(schema)) return "count";
  const { type } = bare(schema)._zod.def;
  if (type === "boolean") return "yes";
  if (type === "number") return "number";
  return path.at(-1) === "notes" ? "long text" : "text";
}

import { unitName } from "../../drawing/format.ts";
import type { Limits } from "../../input/introspect.ts";
import type { Outline } from "../../input/outline.ts";
import { typedAt, type Typed, type TypedGroup } from "../../input/typed.ts";
import type { Complaint } from "./typedReading.ts";
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
  /** Path of the field that was typed in last, its steps joined; none where the form does not say. */
  readonly typedLast?: string | undefined;
  /** What is said where something was typed last and something else is wrong; of a part where this is left out. */
  readonly elsewhere?: (wrong: Complaint) => string;
  /** What is said of a file, in words of the form. */
  readonly inWords: (text: string) => string;
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
  /** What a number may be, in mm, degrees or as a count. */
  readonly limits?: Limits;
}

/** The units of a file: a choice that a form writes every size anew for. */
export const UNITS_ITEM: FieldItem = {
  kind: "choice",
  path: ["units"],
  choices: ["mm", "in"],
  optional: false,
};
export const UNIT_NAMES = { mm: unitName("mm"), in: unitName("in") };

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

/** What a form for a group of keys asks: a new key of a file is a new field of the form. */
export function formFrom(outline: Outline, path: FieldPath = []): FormModel {
  const fields: FieldItem[] = [];
  const sets: FieldSet[] = [];
  for (const [key, inner] of Object.entries(outline.kind === "group" ? outline.keys : {})) {
    const at = [...path, key];
    if (inner.kind === "group") {
      const own = formFrom(inner, at);
      sets.push({
        path: at,
        optional: inner.optional,
        fields: [...own.fields, ...own.sets.flatMap((set) => set.fields)],
      });
    } else fields.push(...itemsOf(inner, at));
  }
  return { fields, sets };
}

/** All fields of a form, those under a heading included. */
export const fieldsOf = ({ fields, sets }: FormModel): readonly FieldItem[] => [
  ...fields,
  ...sets.flatMap((set) => set.fields),
];

/** A right cone takes one of these. */
export const TALL = ["height", "slant", "halfAngle"] as const;
/** Under which of them its height is given; undefined where none is. */
export const tallKey = (
  typed: TypedGroup,
  ways: readonly (typeof TALL)[number][] = TALL,
): (typeof TALL)[number] | undefined => ways.find((key) => typedAt(typed, [key]) !== undefined);

function itemsOf(outline: Outline, path: FieldPath): FieldItem[] {
  const { optional } = outline;
  if (outline.kind === "pair")
    return outline.items.flatMap((item, i) =>
      itemsOf(item, [...path, i]).map((one) => ({ ...one, optional })),
    );
  const choices = outline.kind === "choice" ? outline.words : [];
  const limits = outline.kind === "number" && { limits: outline.limits };
  return [{ path, optional, choices, kind: kindOf(outline, path), ...limits }];
}

function kindOf(outline: Outline, path: FieldPath): FieldKind {
  if (path.at(-1) === "material") return "material";
  switch (outline.kind) {
    case "choice":
    case "yes":
      return outline.kind;
    case "list":
      return "lengths";
    case "number":
      return outline.quantity ?? (outline.whole ? "count" : "number");
    case "text":
    case "group":
    case "pair":
    case "other":
      return path.at(-1) === "notes" ? "long text" : "text";
  }
}

/** Is a problem told at this field: its own, that of any size of its list, or at the first of a pair that of both? */
export function isShownAt(path: FieldPath, { kind, path: own }: Pick<FieldItem, "kind" | "path">): boolean {
  const there = kind === "lengths" ? path.slice(0, own.length) : path;
  const here = own.at(-1) === 0 && path.length < own.length ? own.slice(0, -1) : own;
  return there.join() === here.join();
}

/** What an empty field leaves: nothing, or an empty place where another's would move into it, as of a pair. */
export const emptyAt = (path: FieldPath): "" | undefined =>
  typeof path.at(-1) === "number" ? "" : undefined;

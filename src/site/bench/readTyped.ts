import { check } from "../../input/check.ts";
import type { Tables } from "../../input/context.ts";
import type { FieldPath } from "../../input/problem.ts";
import { treeOf, type TypedGroup } from "../../input/typed.ts";
import { Part } from "../../shapes/part.ts";
import { fieldProblems } from "../../shapes/registry.ts";

/** What is wrong at a field, and what would be right. */
export interface Complaint {
  readonly path: FieldPath;
  readonly problem: string;
  readonly remedy: string;
}

export type TypedReading<T> =
  | { readonly kind: "read"; readonly value: T }
  | { readonly kind: "problems"; readonly problems: readonly Complaint[] };

export function reading<T>(value: T | undefined, problems: readonly Complaint[]): TypedReading<T> {
  return value === undefined || problems.length > 0
    ? { kind: "problems", problems }
    : { kind: "read", value };
}

/** A part as it was typed, read by the same rules as a part file; every problem names its field. */
export function readTypedPart(typed: TypedGroup, tables: Tables): TypedReading<Part> {
  const { value, problems, right, given } = check(Part, treeOf(typed), tables);
  const between = right === undefined ? [] : fieldProblems(right, given);
  return reading(value, [...problems, ...between]);
}

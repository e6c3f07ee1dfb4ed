import type { FieldPath } from "../../input/problem.ts";

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

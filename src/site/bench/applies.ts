import type { FieldPath } from "../../input/problem.ts";
import { typedAt, type TypedGroup } from "../../input/typed.ts";

/** Fields that hang on another choice: when there is something to fill in. */
const ONLY_WHERE: Readonly<Record<string, (typed: TypedGroup) => boolean>> = {
  // Only the ends of a right cone can be left square; every other shape refuses that.
  edges: ({ shape }) => shape === "right-cone",
  "seam.lap": (typed) => typedAt(typed, ["seam", "joint"]) === "lap",
  "seam.gap": (typed) => typedAt(typed, ["seam", "joint"]) !== "lap",
};

/** Is a field shown? One that holds something always is, so that it can be mended. */
export function applies(path: FieldPath, typed: TypedGroup): boolean {
  const value = typedAt(typed, path);
  return (value !== undefined && value !== "") || (ONLY_WHERE[path.join(".")]?.(typed) ?? true);
}

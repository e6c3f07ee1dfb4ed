import type { Typed, TypedGroup } from "../../input/typed.ts";

/** The worked example of a shape's page, as somebody would have typed it. */
export const typedExample = (example: Readonly<Record<string, unknown>>): TypedGroup =>
  Object.fromEntries(Object.entries(example).map(([key, value]) => [key, typedFrom(value)]));

function typedFrom(value: unknown): Typed {
  if (typeof value === "boolean") return value;
  if (Array.isArray(value)) return value.map(typedFrom);
  if (typeof value === "object" && value !== null) return typedExample(value as Record<string, unknown>);
  return String(value);
}

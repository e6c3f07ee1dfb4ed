import { alternativesOf } from "../../input/introspect.ts";
import { outlineOf } from "../../input/outline.ts";
import { Part } from "../../shapes/part.ts";
import type { BenchTables } from "./start.ts";

/** What the file of each shape asks for, from the schemas themselves. */
export function partOutlines(): BenchTables["outlines"] {
  const shapes = [...(alternativesOf(Part)?.options ?? [])];
  return Object.fromEntries(
    shapes.map(([id, schema]) => [id, outlineOf(schema)]),
  ) as unknown as BenchTables["outlines"];
}

import { alternativesOf } from "../../input/introspect.ts";
import { outlineOf } from "../../input/outline.ts";
import { Part } from "../../shapes/part.ts";
import type { Outlines } from "./partReader.ts";

/** What the file of each shape asks for, from the schemas themselves. */
export function partOutlines(): Outlines {
  const shapes = [...(alternativesOf(Part)?.options ?? [])];
  return Object.fromEntries(shapes.map(([id, schema]) => [id, outlineOf(schema)])) as unknown as Outlines;
}

import { check } from "../../input/check.ts";
import type { Tables } from "../../input/context.ts";
import type { TypedGroup } from "../../input/typed.ts";
import { treeOf } from "../../input/typedTree.ts";
import { Part } from "../../shapes/part.ts";
import { fieldProblems } from "../../shapes/registry.ts";
import { reading, type TypedReading } from "./typedReading.ts";

/** A part as it was typed, read by the same rules as a part file; every problem names its field. */
export function readTypedPart(typed: TypedGroup, tables: Tables): TypedReading<Part> {
  const { value, problems, right, given } = check(Part, treeOf(typed), tables);
  const between = right === undefined ? [] : fieldProblems(right, given);
  return reading(value, [...problems, ...between]);
}

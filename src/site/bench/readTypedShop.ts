import { Shop } from "../../forming/machine.ts";
import { check } from "../../input/check.ts";
import type { Tables } from "../../input/context.ts";
import { shopProblems } from "../../input/shopProblems.ts";
import type { TypedGroup } from "../../input/typed.ts";
import { treeOf } from "../../input/typedTree.ts";
import { reading, type TypedReading } from "./typedReading.ts";

/** The shop's machines and stock as they were typed, read by the same rules as a shop file. */
export function readTypedShop(typed: TypedGroup, tables: Tables): TypedReading<Shop> {
  const { value, problems, right } = check(Shop, treeOf(typed), tables);
  const between = right === undefined ? [] : shopProblems(right);
  return reading(value, [...problems, ...between]);
}

import type { Tables } from "../../../input/context.ts";
import { printProblems } from "../../../input/problem.ts";
import { readShop } from "../../../input/readShop.ts";
import type { TypedGroup } from "../../../input/typed.ts";
import { typedOf } from "../../../input/typedTree.ts";

/** The shop of a file as it is written there, or everything that is wrong with it. */
export function openShop(
  text: string,
  path: string,
  tables: Tables,
):
  | { readonly kind: "shop"; readonly shop: TypedGroup }
  | { readonly kind: "problems"; readonly lines: readonly string[] } {
  const { value, problems, tree } = readShop(text, { path, ...tables });
  if (tree?.kind === "map" && "shape" in (typedOf(tree) as TypedGroup))
    return {
      kind: "problems",
      lines: [`${path} is a part file, not a shop file: open it at the top of the bench.`],
    };
  if (!value || !tree) return { kind: "problems", lines: printProblems(problems) };
  return { kind: "shop", shop: typedOf(tree) as TypedGroup };
}

import type { MapTree, Tree } from "./tree.ts";
import { filledIn, isList, type Typed, type TypedGroup } from "./typed.ts";

/** A form has no lines and columns; its problems are told at the field. */
const NOWHERE = { line: 1, column: 1 };

/** What was read from a file, as it is written there. Values that are missing are left out. */
export function typedOf(tree: Tree): Typed | undefined {
  switch (tree.kind) {
    case "map": {
      const entries = [...tree.entries].flatMap(([key, { tree: value }]) => {
        const typed = typedOf(value);
        return typed === undefined ? [] : [[key, typed] as const];
      });
      return Object.fromEntries(entries);
    }
    case "list":
      return tree.items.map((item) => typedOf(item) ?? "");
    case "scalar":
      if (tree.value === null) return undefined;
      return typeof tree.value === "boolean"
        ? tree.value
        : String(tree.written === "" ? tree.value : tree.written);
  }
}

/** A number as YAML reads one: "12.5" is one, "12-3/8" and "10 ga" are text. */
export const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i;

/** What was typed, as if it had been read from a file: empty fields count as left out. */
export function treeOf(typed: TypedGroup): MapTree {
  return group(typed) ?? { kind: "map", entries: new Map(), at: NOWHERE };
}

function group(typed: TypedGroup): MapTree | undefined {
  const entries = new Map<string, { keyAt: typeof NOWHERE; tree: Tree }>();
  for (const [key, value] of Object.entries(typed)) {
    const tree = treeFor(filledIn(key, value));
    if (tree) entries.set(key, { keyAt: NOWHERE, tree });
  }
  return entries.size === 0 ? undefined : { kind: "map", entries, at: NOWHERE };
}

function treeFor(typed: Typed): Tree | undefined {
  if (typeof typed === "string") {
    const written = typed.trim();
    return written === "" ? undefined : scalar(NUMBER.test(written) ? Number(written) : written, written);
  }
  if (typeof typed === "boolean") return scalar(typed, String(typed));
  if (!isList(typed)) return group(typed);
  const items = typed.map(treeFor);
  // A list that everything was taken from is one with nothing in it: a shop may have no machine.
  if (items.length > 0 && items.every((item) => item === undefined)) return undefined;
  return { kind: "list", items: items.map((item) => item ?? scalar(null, "")), at: NOWHERE };
}

const scalar = (value: string | number | boolean | null, written: string): Tree => ({
  kind: "scalar",
  value,
  written,
  told: false,
  at: NOWHERE,
});

import type { FieldPath } from "./problem.ts";
import type { MapTree, Tree } from "./tree.ts";

/** What a file says, as it is written there: plain data without the syntax of a file. A form holds the same. */
export type Typed = string | boolean | TypedGroup | TypedList;
export interface TypedGroup {
  readonly [key: string]: Typed;
}
export type TypedList = readonly Typed[];

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
    const tree = treeFor(value);
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
  if (items.every((item) => item === undefined)) return undefined;
  return { kind: "list", items: items.map((item) => item ?? scalar(null, "")), at: NOWHERE };
}

const scalar = (value: string | number | boolean | null, written: string): Tree => ({
  kind: "scalar",
  value,
  written,
  told: false,
  at: NOWHERE,
});

const isList = (typed: Typed): typed is TypedList => Array.isArray(typed);

/** What stands at a path; undefined where nothing does. */
export function typedAt(typed: Typed | undefined, path: FieldPath): Typed | undefined {
  let here = typed;
  for (const step of path) {
    if (typeof here !== "object") return undefined;
    here = Object.hasOwn(here, step) ? (here as Readonly<Record<string | number, Typed>>)[step] : undefined;
  }
  return here;
}

/** A copy in which something else stands at a path; groups and lists on the way are made where there are none. */
export function typedWith(typed: Typed | undefined, path: FieldPath, value: Typed | undefined): Typed {
  const [step, ...rest] = path;
  if (step === undefined) return value ?? "";
  const inner = typedWith(typedAt(typed, [step]), rest, value);
  const gone = rest.length === 0 && value === undefined;
  if (typeof step === "number") {
    const list = typeof typed === "object" && isList(typed) ? [...typed] : [];
    if (gone) list.splice(step, 1);
    else {
      while (list.length < step) list.push("");
      list[step] = inner;
    }
    return list;
  }
  const before = typeof typed === "object" && !isList(typed) ? typed : {};
  return gone
    ? Object.fromEntries(Object.entries(before).filter(([key]) => key !== step))
    : { ...before, [step]: inner };
}

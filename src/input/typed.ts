import type { FieldPath } from "./problem.ts";

/** What a file says, as it is written there: plain data without the syntax of a file. A form holds the same. */
export type Typed = string | boolean | TypedGroup | TypedList;
export interface TypedGroup {
  readonly [key: string]: Typed;
}
export type TypedList = readonly Typed[];

export const isList = (typed: Typed): typed is TypedList => Array.isArray(typed);

/** Two distances that are none where nobody gives them: the place of a centre. */
const NONE_IF_EMPTY = new Set(["offset"]);

/** What is typed under a key; places of an offset that are empty, or were never reached, are nought. */
export function filledIn(key: string, typed: Typed): Typed {
  if (!NONE_IF_EMPTY.has(key) || typeof typed !== "object" || !isList(typed) || typed.length > 2)
    return typed;
  return [0, 1].map((i) => {
    const one = typed[i] ?? "";
    return typeof one === "string" && one.trim() === "" ? "0" : one;
  });
}

/** What stands at a path; undefined where nothing does. */
export function typedAt(typed: Typed | undefined, path: FieldPath): Typed | undefined {
  let here = typed;
  for (const step of path) {
    if (typeof here !== "object") return undefined;
    here = Object.hasOwn(here, step) ? (here as Readonly<Record<string | number, Typed>>)[step] : undefined;
  }
  return here;
}

/**
 * A copy in which something else stands at a path; groups and lists on the way are made where there are none. Without a
 * value the key goes, or the item of a list: those behind it move up.
 */
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

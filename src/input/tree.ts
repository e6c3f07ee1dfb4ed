import type { FieldPath, Locate, Place } from "./problem.ts";

/** What a file holds, each piece with its place: the plain data of YAML, freed from its syntax. */
export type Tree = ScalarTree | ListTree | MapTree;

export interface ScalarTree {
  readonly kind: "scalar";
  readonly value: string | number | boolean | null;
  /** As it stands in the file, quotes taken off. */
  readonly written: string;
  /** Has its syntax been found fault with? Then no more is said about it. */
  readonly told: boolean;
  /** The comment that stands in its place, where there is no value. */
  readonly hash?: string;
  readonly at: Place;
}

interface ListTree {
  readonly kind: "list";
  readonly items: readonly Tree[];
  readonly at: Place;
}

export interface MapTree {
  readonly kind: "map";
  /** A Map, so that a key named __proto__ is a key like any other. */
  readonly entries: ReadonlyMap<string, { readonly keyAt: Place; readonly tree: Tree }>;
  readonly at: Place;
}

/** The piece at a path, if there is one. */
export function find(tree: Tree | undefined, path: FieldPath): Tree | undefined {
  let here = tree;
  for (const step of path) here = child(here, step);
  return here;
}

function child(tree: Tree | undefined, step: string | number): Tree | undefined {
  if (tree?.kind === "map") return tree.entries.get(String(step))?.tree;
  return tree?.kind === "list" ? tree.items[Number(step)] : undefined;
}

/** Where a field's value stands; where it is missing, the key of the nearest group around it that is there. */
export function locator(tree: Tree | undefined): Locate {
  return (path) => {
    let here = tree;
    let place: Place = tree?.at ?? { line: 1, column: 1 };
    for (const [depth, step] of path.entries()) {
      const entry = here?.kind === "map" ? here.entries.get(String(step)) : undefined;
      here = child(here, step);
      if (!here) return place;
      place = depth === path.length - 1 || !entry ? here.at : entry.keyAt;
    }
    return place;
  };
}

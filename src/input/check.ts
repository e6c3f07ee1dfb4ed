import * as z from "zod/mini";
import type { Given, Loose } from "../shapes/loose.ts";
import { complaint } from "./complaint.ts";
import type { Tables } from "./context.ts";
import { alternativesOf, entryOf, itemOf, shapeOf, type Schema } from "./introspect.ts";
import { pathKey, toPlain, type FieldProblem } from "./plainTree.ts";
import type { FieldPath } from "./problem.ts";
import { find, type Tree } from "./tree.ts";
import { wordFor } from "./synonyms.ts";
import type { Units } from "./units.ts";

/** A schema that can be run, with what comes out of it. */
export type Runnable<T> = Schema & {
  safeParse(
    data: unknown,
  ): { success: true; data: T } | { success: false; error: { issues: z.core.$ZodIssue[] } };
};

export interface Checked<T> {
  /** Present where there are no problems. */
  readonly value: T | undefined;
  readonly problems: readonly FieldProblem[];
  /** What is right in it; all of it where there are no problems. */
  readonly right: Loose<T> | undefined;
  readonly given: Given;
}

/** Converts a tree to mm and degrees, runs its schema, and tells everything that is wrong with it in one go. */
export function check<T>(schema: Runnable<T>, tree: Tree, tables: Tables): Checked<T> {
  const units = unitsOf(tree);
  const {
    plain,
    problems: found,
    apart,
    settled,
    spelt,
    vague,
    taken,
  } = toPlain(schema, tree, tables, units);
  const parsed = schema.safeParse(plain);
  const given: Given = (path) => find(tree, respelt(path, spelt)) !== undefined || isSettled(settled, path);
  if (parsed.success && found.length === 0)
    return { value: parsed.data, problems: [], right: parsed.data as Loose<T>, given };
  const problems = [...found];
  const told = new Set(settled);
  const wrong: FieldPath[] = [];
  for (const run of [{ schema, plain, path: [] }, ...apart]) {
    for (const issue of issuesOf(run.schema, run.plain)) {
      const inner = issue.path.filter((step) => typeof step !== "symbol");
      wrong.push([...run.path, ...inner]);
      const path = respelt([...run.path, ...inner], spelt);
      if (isSettled(told, path)) continue;
      told.add(pathKey(path));
      const said = complaint(issue, schemaAt(run.schema, run.plain, inner), find(tree, path), units);
      if (said) problems.push({ path, ...said });
    }
  }
  return {
    value: undefined,
    problems,
    right: without(
      plain,
      [...wrong.map(pathKey), ...settled, ...vague].filter((key) => !taken.has(key)),
    ) as Loose<T> | undefined,
    given,
  };
}

/** Where a field of the schema stands in the file. */
function respelt(path: FieldPath, spelt: ReadonlyMap<string, FieldPath>): FieldPath {
  let here: FieldPath = [];
  let read: FieldPath = [];
  for (const step of path) {
    here = [...here, step];
    read = spelt.get(pathKey(here)) ?? [...read, step];
  }
  return read;
}

/** The data without the pieces that something is wrong with. */
function without(plain: unknown, wrong: readonly string[]): unknown {
  const bad = new Set(wrong);
  const pruned = (value: unknown, path: FieldPath): unknown => {
    if (bad.has(pathKey(path))) return undefined;
    if (Array.isArray(value)) return value.map((item, i) => pruned(item, [...path, i]));
    if (!isRecord(value)) return value;
    return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, pruned(one, [...path, key])]));
  };
  return pruned(plain, []);
}

function issuesOf(schema: Schema, plain: unknown): readonly z.core.$ZodIssue[] {
  return z.safeParse(schema, plain).error?.issues ?? [];
}

const UNITS: readonly Units[] = ["mm", "in"];

/** How the file says its numbers are read, a slip taken as what it means; undefined where nobody can tell. */
function unitsOf(tree: Tree): Units | undefined {
  const units = find(tree, ["units"]);
  if (units?.kind !== "scalar") return undefined;
  const word = UNITS.find((one) => one === units.value) ?? wordFor(units.written, UNITS);
  return UNITS.find((one) => one === word);
}

/** Has something been said about this field already, or about a group around it? */
function isSettled(settled: ReadonlySet<string>, path: FieldPath): boolean {
  return path.some((_, i) => settled.has(pathKey(path.slice(0, i)))) || settled.has(pathKey(path));
}

/** The schema of one field, following the groups that were chosen. */
function schemaAt(schema: Schema, plain: unknown, path: FieldPath): Schema {
  let here = schema;
  let value = plain;
  for (const step of path) {
    const inner =
      typeof step === "number" ? itemOf(here, step) : (shapeOf(chosen(here, value))?.[step] ?? entryOf(here));
    if (!inner) return here;
    here = inner;
    value = isRecord(value) ? value[step] : undefined;
  }
  return chosen(here, value);
}

/** Of several alternative groups the one that the value's word names. */
function chosen(schema: Schema, value: unknown): Schema {
  const alternatives = alternativesOf(schema);
  const word = alternatives && isRecord(value) ? value[alternatives.key] : undefined;
  return (typeof word === "string" ? alternatives?.options.get(word) : undefined) ?? schema;
}

const isRecord = (value: unknown): value is Record<string | number, unknown> =>
  typeof value === "object" && value !== null;

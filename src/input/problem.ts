import type { Refusal } from "../shapes/refusal.ts";
import { onOneLine, shown } from "./reading.ts";

/** A place in a file, counted from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** Keys and list indices (from 0) from the top of a file down to one value. */
export type FieldPath = readonly (string | number)[];

/** Something wrong in a file: where, what, and what would be right. */
export interface Problem extends Place {
  /** The file, as the reader named it. */
  readonly path: string;
  /** The field in dots and brackets, list items counted from 1; "file" where it is the file as a whole. */
  readonly field: string;
  readonly problem: string;
  readonly remedy: string;
}

/** Finds the place of a field: its value, or where the value ought to stand. */
export type Locate = (path: FieldPath) => Place;

/** `path:line:column: field: what is wrong; what would be right` */
export function printProblem({ path, line, column, field, problem, remedy }: Problem): string {
  return `${onOneLine(path)}:${line}:${column}: ${field}: ${problem}; ${remedy}`;
}

/** In the order in which a person would go through the files. */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  return [...problems].sort(
    (a, b) =>
      compare(a.path, b.path) ||
      a.line - b.line ||
      a.column - b.column ||
      compare(a.field, b.field) ||
      compare(a.problem, b.problem),
  );
}

/** One printed line for each problem, sorted. */
export function printProblems(problems: readonly Problem[]): string[] {
  return sortProblems(problems).map(printProblem);
}

/** By code unit, so that the order is the same on every machine. */
function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** smallEnd.offset[2]: as one would say it, list items counted from 1. */
export function fieldName(path: FieldPath): string {
  let name = "";
  for (const step of path)
    name += typeof step === "number" ? `[${step + 1}]` : `${name === "" ? "" : "."}${shown(step)}`;
  return name === "" ? "file" : name;
}

/** What the geometry refused, told like any other problem of the file. */
export function refusalProblems(
  refusals: readonly Refusal[],
  file: { readonly path: string; readonly locate: Locate },
): Problem[] {
  return refusals.map(({ path, problem, remedy }) => ({
    path: file.path,
    ...file.locate(path),
    field: fieldName(path),
    problem,
    remedy,
  }));
}

/** A problem of a file as a whole. */
export function fileProblem(path: string, problem: string, remedy: string): Problem {
  return { path, line: 1, column: 1, field: "file", problem, remedy };
}

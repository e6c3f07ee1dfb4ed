import { effortOf, effortProblem } from "../../job/effort.ts";
import { type PlateGroup, platesOf } from "../../job/plates.ts";
import type { Binder } from "../binder/binder.ts";

let kept: { readonly binder: Binder; readonly groups: readonly PlateGroup[] } | undefined;

/** The plates of a job, laid once for all pages and files of a build. */
export function layJob(binder: Binder): readonly PlateGroup[] {
  if (kept?.binder !== binder) kept = { binder, groups: platesOf(binder, effort()) };
  return kept.groups;
}

/** How long plates are searched for: SLANTWORK_EFFORT, 1 if left out. */
export function effort(given: string | undefined = process.env["SLANTWORK_EFFORT"]): number {
  const value = effortOf(given);
  if (value === undefined) throw new Error(effortProblem(given));
  return value;
}

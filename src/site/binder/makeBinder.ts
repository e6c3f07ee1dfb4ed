import { basename, resolve } from "node:path";
import type { Tables } from "../../input/context.ts";
import { refusalProblems, type Problem } from "../../input/problem.ts";
import { readFolder } from "../../input/readFolder.ts";
import type { TypedGroup } from "../../input/typed.ts";
import { keptOf, type Trials, trialsPath } from "../../input/readTrials.ts";
import type { Job } from "../../input/readJob.ts";
import type { Shop } from "../../forming/machine.ts";
import { develop } from "../../report/develop.ts";
import { trialsNote } from "../../report/trialsNote.ts";
import type { Report } from "../../report/report.ts";
import type { Material } from "../../shapes/material.ts";
import { jobPartOf } from "../job/jobPart.ts";

export interface BinderPart {
  readonly report: Report;
  readonly material: Material;
  /** The sheet gauge that its thickness is, "10 ga"; null where it is none. */
  readonly gauge: string | null;
  /** Trials of its first pass that were kept next to its file. */
  readonly trials: Trials | undefined;
  /** Its file as it is written. */
  readonly written: TypedGroup;
}

/** One data folder, read and developed: what all pages are made of. */
export interface Binder {
  /** The folder's own name: where it lies is nobody's business on paper. */
  readonly folder: string;
  /** Materials and gauges. */
  readonly tables: Tables;
  readonly shop: Shop | undefined;
  /** The shop's file as it is written. */
  readonly shopWritten: TypedGroup | undefined;
  readonly job: Job | undefined;
  readonly parts: readonly BinderPart[];
  /** Everything wrong in any of the files; a binder with problems is not published. */
  readonly problems: readonly Problem[];
  /** Trials that give no setting, one sentence each: the part is worked out all the same. */
  readonly trialNotes: readonly string[];
}

/**
 * Reads and develops a folder, good and bad parts alike.
 *
 * @param from the folder that its path starts from
 * @param core what works a part out
 */
export function makeBinder(
  folder: string,
  tables: Tables,
  { from = ".", core = develop }: { readonly from?: string; readonly core?: typeof develop } = {},
): Binder {
  const { parts, shop, shopWritten, job, problems } = readFolder(folder, tables, from);
  const refused: Problem[] = [];
  const made: BinderPart[] = [];
  const trialNotes: string[] = [];
  for (const { part, path, trials, locate, written } of parts) {
    const context = { catalogue: tables.catalogue, ...(shop && { shop }), trials: trials && keptOf(trials) };
    const developed = core(part, context);
    trialNotes.push(...trialsNote(part, trialsPath(path), context));
    if (developed.kind === "refused") refused.push(...refusalProblems(developed.issues, { path, locate }));
    else made.push({ ...jobPartOf(developed.report, tables), trials, written });
  }
  return {
    folder: basename(resolve(from, folder)),
    tables,
    shop,
    shopWritten,
    job,
    parts: made,
    problems: [...problems, ...refused],
    trialNotes,
  };
}

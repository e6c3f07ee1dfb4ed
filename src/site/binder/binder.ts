import { basename, resolve } from "node:path";
import type { Tables } from "../../input/context.ts";
import { gaugeOf } from "../../input/gaugeName.ts";
import { loadCatalogue } from "../../input/loadCatalogue.ts";
import { printProblems, refusalProblems, type Problem } from "../../input/problem.ts";
import { readFolder } from "../../input/readFolder.ts";
import type { TypedGroup } from "../../input/typed.ts";
import { keptOf, type Trials } from "../../input/readTrials.ts";
import type { Job } from "../../input/readJob.ts";
import type { Shop } from "../../forming/machine.ts";
import { develop } from "../../report/develop.ts";
import type { Report } from "../../report/report.ts";
import type { Material } from "../../shapes/material.ts";

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
}

/** The folder of the job: SLANTWORK_DATA, or the invented one that comes with the project. */
const dataFolder = (): string => process.env["SLANTWORK_DATA"] ?? "demo-data";

/** Reads and develops a folder, good and bad parts alike. */
function makeBinder(folder: string): Binder {
  // The pages run from a bundle, where the tables no longer lie beside the code.
  const tables = loadCatalogue(resolve("content"));
  const { parts, shop, shopWritten, job, problems } = readFolder(folder, tables);
  const refused: Problem[] = [];
  const made: BinderPart[] = [];
  for (const { part, path, trials, locate, written } of parts) {
    const developed = develop(part, {
      catalogue: tables.catalogue,
      ...(shop && { shop }),
      trials: trials && keptOf(trials),
    });
    const material = tables.catalogue.materials[part.material];
    if (developed.kind === "refused") refused.push(...refusalProblems(developed.issues, { path, locate }));
    else if (material) {
      const gauge = gaugeOf(tables.gauges, material.family, part.thickness);
      made.push({ report: developed.report, material, gauge, trials, written });
    }
  }
  return {
    folder: basename(resolve(folder)),
    tables,
    shop,
    shopWritten,
    job,
    parts: made,
    problems: [...problems, ...refused],
  };
}

let kept: Binder | undefined;

/** The binder of this build, made once. */
export function readBinder(): Binder {
  const binder = kept ?? makeBinder(dataFolder());
  if (binder.problems.length > 0) throw new Error(problemLines(binder).join("\n"));
  // While somebody edits the files, every page shows them as they are now.
  if (!import.meta.env.DEV) kept = binder;
  return binder;
}

/** One line for each problem, as a terminal and an editor understand it. */
const problemLines = ({ problems }: Pick<Binder, "problems">): string[] => printProblems(problems);

/** The problems of the folder that this build is about; none where all is well. */
export const folderProblems = (): string[] => problemLines(makeBinder(dataFolder()));

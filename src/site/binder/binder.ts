import { resolve } from "node:path";
import { loadCatalogue } from "../../input/loadCatalogue.ts";
import { printProblems } from "../../input/problem.ts";
import { type Binder, makeBinder } from "./makeBinder.ts";

export type { Binder, BinderPart } from "./makeBinder.ts";

/** The folder of the job: SLANTWORK_DATA, or the invented one that comes with the project. */
const dataFolder = (): string => process.env["SLANTWORK_DATA"] ?? "demo-data";

// The pages run from a bundle, where the tables no longer lie beside the code.
const made = (): Binder => makeBinder(dataFolder(), loadCatalogue(resolve("content")));

let kept: Binder | undefined;

/** The binder of this build, made once. */
export function readBinder(): Binder {
  const binder = kept ?? made();
  if (binder.problems.length > 0) throw new Error(problemLines(binder).join("\n"));
  // While somebody edits the files, every page shows them as they are now.
  if (!import.meta.env.DEV) kept = binder;
  return binder;
}

/** One line for each problem, as a terminal and an editor understand it. */
const problemLines = ({ problems }: Pick<Binder, "problems">): string[] => printProblems(problems);

/** The problems of the folder that this build is about; none where all is well. */
export const folderProblems = (): string[] => problemLines(made());

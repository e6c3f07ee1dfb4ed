import type { Tables } from "../../../input/context.ts";
import { readFolderOn } from "../../../input/folder.ts";
import { printProblems, refusalProblems } from "../../../input/problem.ts";
import { read, type Reading } from "../../../input/reading.ts";
import { MAX_SIZE } from "../../../input/text.ts";
import type { TypedGroup } from "../../../input/typed.ts";
import { formingCase } from "../../../report/formingCase.ts";
import { settledKept } from "../settledKept.ts";
import { keptOf } from "../../../input/readTrials.ts";
import { layOut } from "../../../report/layOut.ts";
import type { NamedTyped } from "../asTyped.ts";
import { carriedOf } from "../trialsHere.ts";
import { unzip } from "./unzip.ts";
import { zipDisk } from "./zipDisk.ts";

/** What a packed job holds. */
export interface OpenedJob {
  readonly job: TypedGroup | undefined;
  readonly shop: TypedGroup | undefined;
  /** Parts that nothing is wrong with, in the order of the job. */
  readonly parts: readonly NamedTyped[];
  /** Parts that something is wrong with, as far as their files are keys and values. */
  readonly unfit: readonly NamedTyped[];
  /** Names of the job's parts, in its order. */
  readonly order: readonly string[];
  /** A line for every problem, as the build prints it. */
  readonly problems: readonly string[];
}

const nameOf = (path: string): string => path.replace(/^.*\//, "").replace(/\.ya?ml$/i, "");

/** Reads a packed job by the rules of a job's folder. */
export function openJob(bytes: Uint8Array, tables: Tables): Reading<OpenedJob> {
  const packed = unzip(bytes, (name) => /\.ya?ml$/i.test(name), MAX_SIZE);
  if (packed.kind === "unreadable") return packed;
  const folder = readFolderOn(zipDisk(packed.value), ".", tables);
  const problems = [...folder.problems];
  const parts: NamedTyped[] = [];
  const unfit = (folder.unfit ?? []).map(({ path, written }) => ({ name: nameOf(path), part: written }));
  for (const { part, path, locate, written, trials } of folder.parts) {
    const made = layOut(part, tables);
    if (made.kind === "refused") problems.push(...refusalProblems(made.issues, { path, locate }));
    (made.kind === "refused" ? unfit : parts).push({
      name: part.name,
      part: written,
      ...(trials &&
        made.kind === "laid" && {
          trials: carriedOf(
            settledKept(keptOf(trials), {
              item: formingCase(part, made),
              shop: folder.shop,
              units: part.units,
            }),
            { part, made, shop: folder.shop },
          ),
        }),
    });
  }
  const { jobWritten: job, shopWritten: shop } = folder;
  const named = job?.["parts"];
  const order = Array.isArray(named) ? named.filter((name) => typeof name === "string") : [];
  return read({ job, shop, parts, unfit, order, problems: printProblems(problems) });
}

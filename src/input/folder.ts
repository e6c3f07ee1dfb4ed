import type { Shop } from "../forming/machine.ts";
import type { Tables } from "./context.ts";
import type { Disk } from "./disk.ts";
import type { DocumentReading } from "./document.ts";
import { nearest } from "./nearest.ts";
import { partName } from "./partName.ts";
import { fileProblem, sortProblems, type Locate, type Problem } from "./problem.ts";
import { noText, readPartFile, readShopFile, sameNames, type NamedFile } from "./readFiles.ts";
import { readJob, type Job, type JobReading } from "./readJob.ts";
import type { NamedPart } from "./readPart.ts";
import { isTrialsFile, readTrials, trialsPath, type Trials } from "./readTrials.ts";
import { shown } from "./reading.ts";
import type { Tree } from "./tree.ts";
import type { TypedGroup } from "./typed.ts";
import { typedOf } from "./typedTree.ts";

interface FolderPart {
  readonly part: NamedPart;
  readonly path: string;
  /** Trials of its first pass, kept next to it. */
  readonly trials: Trials | undefined;
  /** For what the geometry may refuse later on. */
  readonly locate: Locate;
  /** The file as it is written. */
  readonly written: TypedGroup;
}

/** A part file of keys and values with something wrong in them. */
interface UnfitPart {
  readonly path: string;
  readonly written: TypedGroup;
}

/** What a data folder holds: shop.yaml and job.yaml where it has them, and every part of parts/. */
export interface FolderReading {
  /** The good ones, in the order of the job, then by name. */
  readonly parts: readonly FolderPart[];
  readonly shop: Shop | undefined;
  /** The shop's file as it is written. */
  readonly shopWritten?: TypedGroup | undefined;
  readonly job: Job | undefined;
  /** The job's file as it is written. */
  readonly jobWritten?: TypedGroup | undefined;
  /** Parts that have problems, as their files are written. */
  readonly unfit?: readonly UnfitPart[];
  /** Everything wrong in any of the files, in order. */
  readonly problems: readonly Problem[];
}

/** Folders within folders that are looked into for part files gone astray. */
const DEEPEST = 4;
const YAML = /\.ya?ml$/i;

/** Reads a data folder. Nothing in the folder makes it throw; all problems of all files come back in one go. */
export function readFolderOn(disk: Disk, folder: string, tables: Tables): FolderReading {
  const inside = (name: string): NamedFile => ({ file: `${folder}/${name}`, path: shownPath(folder, name) });
  const top = disk.names(folder);
  if (!top)
    return empty([fileProblem(folder, "there is no such folder, or it may not be read", "check its name")]);
  const problems: Problem[] = top.flatMap((name) => astray(name, inside(name).path));

  const files = (disk.names(`${folder}/parts`) ?? [])
    .filter((name) => YAML.test(name) && !isTrialsFile(name))
    .map((name) => inside(`parts/${name}`));
  if (files.length === 0) {
    problems.push(
      fileProblem(inside("parts").path, "there are no part files", "put a .yaml file for each part here"),
    );
  }
  problems.push(...unread(disk, folder, "parts").map((name) => misplaced(inside(name).path)));
  problems.push(...sameNames(files.map(({ path }) => path)));
  const parts: FolderPart[] = [];
  const unfit: UnfitPart[] = [];
  const tried: Tried[] = [];
  for (const file of files) {
    const { part, problems: bad, locate, tree } = readPartFile(file, tables, disk);
    problems.push(...bad);
    const kept = trialsOf(file, tables, disk);
    problems.push(...(kept?.problems ?? []));
    if (kept?.value) tried.push({ path: trialsPath(file.path), locate: kept.locate, ...kept.value });
    if (part) parts.push({ part, path: file.path, trials: kept?.value, locate, written: writtenIn(tree) });
    else if (tree?.kind === "map") unfit.push({ path: file.path, written: writtenIn(tree) });
  }

  const shopFile = one("shop", top, inside, problems);
  const shop = shopFile && readShopFile(shopFile, tables, disk);
  if (shop?.value) problems.push(...tried.flatMap((one) => noSuchRoll(one, shop.value?.machines ?? [])));
  const jobFile = one("job", top, inside, problems);
  const job = jobFile && jobOf(jobFile, tables, files, disk);
  problems.push(...(shop?.problems ?? []), ...(job?.problems ?? []));
  return {
    parts: inOrder(parts, job?.value?.parts ?? []),
    shop: shop?.value,
    shopWritten: shop?.value && writtenIn(shop.tree),
    job: job?.value,
    jobWritten: job?.value && writtenIn(job.tree),
    unfit,
    problems: sortProblems(problems),
  };
}

const writtenIn = (tree: Tree | undefined): TypedGroup => (tree && (typedOf(tree) as TypedGroup)) ?? {};

/** The trials kept next to a part file; undefined where there are none. */
function trialsOf(
  { file, path }: NamedFile,
  tables: Tables,
  disk: Disk,
): DocumentReading<Trials> | undefined {
  const beside = trialsPath(file);
  if (!disk.has(beside)) return undefined;
  const text = disk.text(beside);
  return text.kind === "read"
    ? readTrials(text.value, { path: trialsPath(path), ...tables })
    : noText(trialsPath(path), text.problem, text.remedy);
}

/** Trials with the file that they stand in. */
interface Tried extends Pick<Trials, "machine"> {
  readonly path: string;
  readonly locate: Locate;
}

/** Trials on a machine that the shop does not have would be passed over in silence. */
function noSuchRoll({ machine, path, locate }: Tried, machines: Shop["machines"]): Problem[] {
  const names = machines.filter(({ kind }) => kind === "plate roll").map(({ name }) => name);
  if (names.includes(machine)) return [];
  const guess = nearest(machine, names);
  return [
    {
      path,
      ...locate(["machine"]),
      field: "machine",
      problem: `the shop has no plate roll called ${shown(machine)}`,
      remedy:
        guess === undefined ? `its plate rolls are: ${names.join(", ") || "none"}` : `did you mean ${guess}?`,
    },
  ];
}

const empty = (problems: readonly Problem[]): FolderReading => ({
  parts: [],
  shop: undefined,
  job: undefined,
  problems,
});

/** "parts/a.yaml" from the folder one stands in, else with the folder in front. */
function shownPath(folder: string, name: string): string {
  const front = folder.replace(/[/\\]+$/, "");
  return front === "." || front === "" ? name : `${front}/${name}`;
}

/** A YAML file at the top that nobody would read: silence about it would leave its owner guessing. */
function astray(name: string, path: string): Problem[] {
  if (!YAML.test(name) || /^(?:shop|job)\.ya?ml$/.test(name)) return [];
  const guess = nearest(name.replace(YAML, ""), ["shop", "job"]);
  const remedy = guess === undefined ? "part files go into the folder parts" : `did you mean ${guess}.yaml?`;
  return [fileProblem(path, "this file is not read here", remedy)];
}

/** Part files below parts/ in folders of their own, or with another ending behind theirs: nobody would read them. */
function unread(disk: Disk, folder: string, inner: string, deep = 0): string[] {
  return (disk.names(`${folder}/${inner}`) ?? []).flatMap((name) => {
    const path = `${inner}/${name}`;
    if (/\.ya?ml\.[a-z]{2,4}$/i.test(name)) return [path];
    // A folder that is called like a part is told as one.
    if (YAML.test(name)) return deep > 0 ? [path] : [];
    return deep < DEEPEST ? unread(disk, folder, path, deep + 1) : [];
  });
}

const misplaced = (path: string) =>
  /\.ya?ml$/i.test(path)
    ? fileProblem(path, "this file is not read here", "put it into the folder parts itself")
    : fileProblem(
        path,
        "this file is not read",
        "rename it to end in .yaml, or move it out of the folder parts",
      );

/** shop.yaml or shop.yml, not both. */
function one(name: string, top: readonly string[], inside: (name: string) => NamedFile, problems: Problem[]) {
  const [first, second] = [`${name}.yaml`, `${name}.yml`].filter((candidate) => top.includes(candidate));
  if (first !== undefined && second !== undefined) {
    problems.push(fileProblem(inside(second).path, `${first} is there too`, "keep one of the two files"));
  }
  return first === undefined ? undefined : inside(first);
}

/** The job's list may name parts whose files are bad: they are told as bad, not as unknown. */
function jobOf(
  { file, path }: NamedFile,
  tables: Tables,
  files: readonly NamedFile[],
  disk: Disk,
): JobReading {
  const text = disk.text(file);
  if (text.kind === "unreadable") return noText(path, text.problem, text.remedy);
  const names = files.flatMap((one) => {
    const name = partName(one.path);
    return name.kind === "read" ? [name.value] : [];
  });
  return readJob(text.value, { path, ...tables }, names);
}

function inOrder(parts: readonly FolderPart[], order: readonly string[]): FolderPart[] {
  const { compare } = new Intl.Collator("en", { numeric: true });
  const rank = ({ part }: FolderPart) => {
    const place = order.indexOf(part.name);
    return place < 0 ? order.length : place;
  };
  return [...parts].sort((a, b) => rank(a) - rank(b) || compare(a.part.name, b.part.name));
}

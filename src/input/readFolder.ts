import { readdirSync } from "node:fs";
import type { Shop } from "../forming/machine.ts";
import type { Tables } from "./context.ts";
import { nearest } from "./nearest.ts";
import { partName } from "./partName.ts";
import { fileProblem, sortProblems, type Locate, type Problem } from "./problem.ts";
import { noText, readPartFile, readShopFile, sameNames, type NamedFile } from "./readFiles.ts";
import { readJob, type Job, type JobReading } from "./readJob.ts";
import type { NamedPart } from "./readPart.ts";
import { isTrialsFile } from "./readTrials.ts";
import { readText, systemCode } from "./readText.ts";

interface FolderPart {
  readonly part: NamedPart;
  readonly path: string;
  /** For what the geometry may refuse later on. */
  readonly locate: Locate;
}

/** What a data folder holds: shop.yaml and job.yaml where it has them, and every part of parts/. */
export interface FolderReading {
  /** The good ones, in the order of the job, then by name. */
  readonly parts: readonly FolderPart[];
  readonly shop: Shop | undefined;
  readonly job: Job | undefined;
  /** Everything wrong in any of the files, in order. */
  readonly problems: readonly Problem[];
}

const YAML = /\.ya?ml$/i;

/** Reads a data folder. Nothing in the folder makes it throw; all problems of all files come back in one go. */
export function readFolder(folder: string, tables: Tables): FolderReading {
  const inside = (name: string): NamedFile => ({ file: `${folder}/${name}`, path: shownPath(folder, name) });
  const top = namesIn(folder);
  if (!top)
    return empty([fileProblem(folder, "there is no such folder, or it may not be read", "check its name")]);
  const problems: Problem[] = top.flatMap((name) => astray(name, inside(name).path));

  const files = (namesIn(`${folder}/parts`) ?? [])
    .filter((name) => YAML.test(name) && !isTrialsFile(name))
    .map((name) => inside(`parts/${name}`));
  if (files.length === 0) {
    problems.push(
      fileProblem(inside("parts").path, "there are no part files", "put a .yaml file for each part here"),
    );
  }
  problems.push(...sameNames(files.map(({ path }) => path)));
  const parts: FolderPart[] = [];
  for (const file of files) {
    const { part, problems: bad, locate } = readPartFile(file, tables);
    problems.push(...bad);
    if (part) parts.push({ part, path: file.path, locate });
  }

  const shopFile = one("shop", top, inside, problems);
  const shop = shopFile && readShopFile(shopFile, tables);
  const jobFile = one("job", top, inside, problems);
  const job = jobFile && jobOf(jobFile, tables, files);
  problems.push(...(shop?.problems ?? []), ...(job?.problems ?? []));
  return {
    parts: inOrder(parts, job?.value?.parts ?? []),
    shop: shop?.value,
    job: job?.value,
    problems: sortProblems(problems),
  };
}

const empty = (problems: readonly Problem[]): FolderReading => ({
  parts: [],
  shop: undefined,
  job: undefined,
  problems,
});

/** Names in a folder, sorted by code unit; undefined where there is no such folder, or it may not be looked into. */
function namesIn(folder: string): string[] | undefined {
  try {
    return readdirSync(folder).sort();
  } catch (error) {
    if (systemCode(error) === undefined) throw error;
    return undefined;
  }
}

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

/** shop.yaml or shop.yml, not both. */
function one(name: string, top: readonly string[], inside: (name: string) => NamedFile, problems: Problem[]) {
  const [first, second] = [`${name}.yaml`, `${name}.yml`].filter((candidate) => top.includes(candidate));
  if (first !== undefined && second !== undefined) {
    problems.push(fileProblem(inside(second).path, `${first} is there too`, "keep one of the two files"));
  }
  return first === undefined ? undefined : inside(first);
}

/** The job's list may name parts whose files are bad: they are told as bad, not as unknown. */
function jobOf({ file, path }: NamedFile, tables: Tables, files: readonly NamedFile[]): JobReading {
  const text = readText(file);
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

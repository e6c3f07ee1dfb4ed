import { statSync } from "node:fs";
import { join, resolve } from "node:path";
import { loadCatalogue } from "../input/loadCatalogue.ts";
import { partName } from "../input/partName.ts";
import { printProblems, refusalProblems, sortProblems, type Problem } from "../input/problem.ts";
import { nodeDisk } from "../input/nodeDisk.ts";
import { readPartFile, readShopFile, sameNames } from "../input/readFiles.ts";
import { isTrialsFile, keptOf, trialsPath } from "../input/readTrials.ts";
import type { develop } from "../report/develop.ts";
import { trialsNote } from "../report/trialsNote.ts";
import type { Report } from "../report/report.ts";
import { readArguments, USAGE, type Request } from "./arguments.ts";
import { correct, keptTrials } from "./correct.ts";
import { notHere } from "../job/notHere.ts";
import { printJson } from "../output/json.ts";
import { developJob } from "./developJob.ts";
import { ifSystemLets } from "./ifSystemLets.ts";
import { filesOf, partFilesIn } from "./partFolder.ts";
import { putFiles } from "./putFiles.ts";
import { wrongWords } from "./wrongWords.ts";

/** What a run would put where; nothing is printed before all is done. */
export interface Outcome {
  readonly stdout: string;
  readonly stderr: string;
  readonly exitCode: 0 | 1;
}

export interface Surroundings {
  /** Paths on the command line start from here. */
  readonly folder: string;
  readonly develop: typeof develop;
  /** Is what is printed shown to somebody, and not read by a program? */
  readonly screen?: boolean;
}

/** Files that are named in one line; of more the number tells enough. */
const MOST_NAMED = 8;

/** The whole of the command, but for the process around it. */
export function run(args: readonly string[], { folder, develop, screen = false }: Surroundings): Outcome {
  const request = readArguments(args);
  switch (request.kind) {
    case "help":
      return { stdout: USAGE, stderr: "", exitCode: 0 };
    case "wrong":
      return {
        stdout: "",
        stderr: `develop: ${wrongWords(request.sentence, args, { command: "develop", usage: USAGE })}`,
        exitCode: 1,
      };
    case "develop":
      return developAll(request, { folder, develop, screen });
    case "correct":
      return correct(request, folder);
  }
}

export type DevelopRequest = Extract<Request, { kind: "develop" }>;

function developAll(
  asked: DevelopRequest,
  { folder, develop: core, screen }: Required<Surroundings>,
): Outcome {
  const [only] = asked.parts;
  if (asked.parts.length === 1 && only !== undefined && isFolder(resolve(folder, only)))
    return developJob({ ...asked, job: only }, folder, core);
  // A shell's parts/*.yaml names the trials kept beside the parts too; they are no parts.
  const parts = asked.parts.filter((path) => !isTrialsFile(path));
  const request = { ...asked, parts: parts.length > 0 ? parts : asked.parts };
  const { reports, problems, trialNotes } = reportsOf(request, folder, core);
  const lines = printProblems(problems);
  const told = lines.map((line) => `${line}\n`).join("");
  const { notes, failed } = putParts(request, folder, reports);
  const stderr = told + [...trialNotes, ...notes].map((note) => `develop: ${note}\n`).join("");
  if (failed || reports.length === 0) return { stdout: "", stderr, exitCode: 1 };
  const value = request.parts.length === 1 ? reports[0] : reports;
  // A program that reads what is printed gets the reports as ever; nobody reads thousands of lines off a screen that lie in the folder too.
  const stdout = screen && asked.out !== undefined ? "" : `${printJson(value)}\n`;
  return { stdout, stderr, exitCode: lines.length > 0 ? 1 : 0 };
}

/**
 * The parts' files into the folder that was asked for. Old files never pass for new ones: those of a part which this run
 * could not lay out are taken away, and those that it no longer has; a list's run names those that are of none of its
 * parts, which may be gone or may be another list's.
 */
function putParts(
  { out, parts, shop, inches }: DevelopRequest,
  folder: string,
  reports: readonly Report[],
): { notes: string[]; failed: boolean } {
  if (out === undefined) return { notes: [], failed: false };
  const target = { folder: resolve(folder, out), shown: out };
  const named = parts
    .map((path) => partName(path))
    .flatMap((name) => (name.kind === "read" ? [name.value] : []));
  const ours = new Set([...named, ...reports.map(({ part }) => part.name)]);
  const files = filesOf(reports, { inches });
  const there = partFilesIn(target.folder);
  const old = there.filter(({ name, part }) => ours.has(part) && files.every((file) => file.name !== name));
  const put = putFiles(
    target,
    files,
    old.map(({ name }) => name),
  );
  if (put.kind === "failed") return { notes: [put.sentence], failed: true };
  const notes = put.takenAway.map((name) => `${join(out, name)} was of an earlier run and is taken away`);
  if (files.length > 0) {
    const of = reports.length === 1 ? "1 part" : `${reports.length} parts`;
    notes.push(`${files.length} files of ${of} were written into ${out}`);
  }
  const bad = notHere({ parts: reports.map((report) => ({ report })), shop });
  if (bad) notes.push(bad.sentence);
  const rest = parts.length > 1 ? there.filter(({ part }) => !ours.has(part)).map(({ name }) => name) : [];
  if (rest.length > 0) {
    const some = rest.slice(0, MOST_NAMED).join(", ");
    const more = rest.length > MOST_NAMED ? ` and ${rest.length - MOST_NAMED} more` : "";
    notes.push(`${out} also holds what is of no part of this run and was left as it was: ${some}${more}`);
  }
  return { notes, failed: false };
}

const isFolder = (path: string): boolean => ifSystemLets(() => statSync(path).isDirectory(), false);

/** The good parts' reports, in the order of the command line, and everything wrong with the others. */
function reportsOf(request: DevelopRequest, folder: string, core: typeof develop) {
  const tables = loadCatalogue();
  const problems: Problem[] = [];
  const shop =
    request.shop === undefined
      ? undefined
      : readShopFile({ file: resolve(folder, request.shop), path: request.shop }, tables, nodeDisk);
  problems.push(...(shop?.problems ?? []), ...sameNames(request.parts));
  const twice = new Set(sameNames(request.parts).map(({ path }) => path));
  const reports: Report[] = [];
  const trialNotes: string[] = [];
  for (const path of request.parts) {
    const {
      part,
      problems: bad,
      locate,
    } = readPartFile({ file: resolve(folder, path), path }, tables, nodeDisk);
    problems.push(...bad);
    if (!part || twice.has(path)) continue;
    const kept = keptTrials(path, folder, tables);
    problems.push(...(kept?.problems ?? []));
    const context = {
      catalogue: tables.catalogue,
      ...(shop?.value && { shop: shop.value }),
      trials: kept?.value && keptOf(kept.value),
    };
    const developed = core(part, context);
    trialNotes.push(...trialsNote(part, trialsPath(path), context));
    if (developed.kind === "report") reports.push(developed.report);
    else problems.push(...refusalProblems(developed.issues, { path, locate }));
  }
  // Without the shop that was asked for, a report would be silent about its machines.
  return { reports: shop && !shop.value ? [] : reports, problems: sortProblems(problems), trialNotes };
}

import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { loadCatalogue } from "../input/loadCatalogue.ts";
import { printProblems, refusalProblems, type Problem } from "../input/problem.ts";
import { nodeDisk } from "../input/nodeDisk.ts";
import { readPartFile, readShopFile } from "../input/readFiles.ts";
import { readText } from "../input/readText.ts";
import { seenOf, readTrials, trialsPath } from "../input/readTrials.ts";
import { printJson } from "../output/json.ts";
import { correctPart } from "../report/correct.ts";
import type { Request } from "./arguments.ts";
import type { Outcome } from "./run.ts";
import { trialOfWord } from "./trialWord.ts";

type NoSetting = Extract<ReturnType<typeof correctPart>, { kind: "none" }>;
type CorrectRequest = Extract<Request, { kind: "correct" }>;

const said = (sentence: string): Outcome => ({ stdout: "", stderr: `develop: ${sentence}\n`, exitCode: 1 });
const bad = (problems: readonly Problem[]): Outcome => ({
  stdout: "",
  stderr: printProblems(problems)
    .map((line) => `${line}\n`)
    .join(""),
  exitCode: 1,
});

/** A trial whose bearings cannot be taken, or do not agree with its raise: at its place in the file, or as it was typed. */
function wronglySet(
  { at, key, problem, remedy }: NonNullable<NoSetting["wrong"]>,
  {
    before,
    kept,
    request,
  }: {
    readonly before: number;
    readonly kept: ReturnType<typeof keptTrials>;
    readonly request: CorrectRequest;
  },
): Outcome {
  const path = ["trials", at, key];
  return at < before && kept
    ? bad(
        refusalProblems([{ path, problem, remedy }], { path: trialsPath(request.part), locate: kept.locate }),
      )
    : said(`the trial ${request.trials[at - before] ?? ""}: ${problem}; ${remedy}`);
}

/** The next setting of a part's first pass, from the trials kept next to its file and those of the command line. */
export function correct(request: CorrectRequest, folder: string): Outcome {
  const tables = loadCatalogue();
  const read = readPartFile({ file: resolve(folder, request.part), path: request.part }, tables, nodeDisk);
  const shop = readShopFile({ file: resolve(folder, request.shop), path: request.shop }, tables, nodeDisk);
  const kept = keptTrials(request.part, folder, tables);
  const problems = [...read.problems, ...shop.problems, ...(kept?.problems ?? [])];
  const { part } = read;
  if (!part || !shop.value || problems.length > 0) return bad(problems);
  const words = request.trials.map((word) => trialOfWord(word, part.units));
  const wrong = words.find((word) => typeof word === "string");
  if (wrong !== undefined) return said(wrong);
  const machine = request.machine ?? kept?.value?.machine;
  // Trials of one machine say nothing about another.
  const before = kept?.value && kept.value.machine === machine ? kept.value.trials : [];
  const rows = [...before, ...words.filter((word) => typeof word !== "string")];
  if (rows.length === 0)
    return said(`there is no trial yet for ${request.part}; give one, as in --trial setting=12.5,gap=840`);
  const answer = correctPart(
    part,
    { catalogue: tables.catalogue, shop: shop.value },
    machine,
    rows.map(seenOf),
  );
  switch (answer.kind) {
    case "refused":
      return bad(refusalProblems(answer.issues, { path: request.part, locate: read.locate }));
    case "none": {
      const { wrong } = answer;
      if (wrong) return wronglySet(wrong, { before: before.length, kept, request });
      return said(`no next setting for ${request.part}: ${answer.why}`);
    }
    case "correction":
    case "zones":
      return {
        stdout: `${printJson({ part: part.name, ...answer.correction })}\n`,
        stderr: "",
        exitCode: 0,
      };
  }
}

/** The trials that are kept next to a part file; undefined where there are none. */
export function keptTrials(path: string, folder: string, tables: ReturnType<typeof loadCatalogue>) {
  const shown = trialsPath(path);
  const file = resolve(folder, shown);
  if (!existsSync(file)) return undefined;
  const text = readText(file);
  return text.kind === "read" ? readTrials(text.value, { path: shown, ...tables }) : undefined;
}

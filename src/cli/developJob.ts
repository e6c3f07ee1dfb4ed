import { existsSync, readFileSync, realpathSync } from "node:fs";
import { join, resolve } from "node:path";
import { loadCatalogue } from "../input/loadCatalogue.ts";
import { printProblems, sortProblems } from "../input/problem.ts";
import { effortOf, effortProblem } from "../job/effort.ts";
import { LIST, listedIn, READ_ME } from "../job/fileList.ts";
import { jobFolder } from "../job/jobFiles.ts";
import { notHere } from "../job/notHere.ts";
import { platesOf } from "../job/plates.ts";
import { printJson } from "../output/json.ts";
import type { develop } from "../report/develop.ts";
import { makeBinder } from "../site/binder/makeBinder.ts";
import { ifSystemLets } from "./ifSystemLets.ts";
import { putFiles } from "./putFiles.ts";
import type { DevelopRequest, Outcome } from "./run.ts";

const wrong = (sentence: string): Outcome => ({ stdout: "", stderr: `develop: ${sentence}\n`, exitCode: 1 });

/** A whole job: its reports printed, or its cutting files written. Where anything is wrong in it, neither. */
export function developJob(
  { job: shown, shop, out, inches }: DevelopRequest & { readonly job: string },
  folder: string,
  core: typeof develop,
): Outcome {
  if (shop !== undefined)
    return wrong(`${shown} is a job's folder and has its own shop.yaml; leave out --shop`);
  const where = resolve(folder, shown);
  if (out !== undefined && isSame(where, resolve(folder, out)))
    return wrong(`${out} is the job's own folder; give another folder`);
  const effort = effortOf(process.env["SLANTWORK_EFFORT"]);
  if (effort === undefined) return wrong(effortProblem(process.env["SLANTWORK_EFFORT"]));
  const job = makeBinder(shown, loadCatalogue(), { from: folder, core });
  if (job.problems.length > 0) {
    const told = printProblems(sortProblems(job.problems)).map((line) => `${line}\n`);
    const note = out === undefined ? "" : "develop: nothing was written\n";
    return { stdout: "", stderr: told.join("") + note, exitCode: 1 };
  }
  const notes = job.trialNotes.map((note) => `develop: ${note}\n`).join("");
  if (out === undefined)
    return { stdout: `${printJson(job.parts.map(({ report }) => report))}\n`, stderr: notes, exitCode: 0 };

  const about = { title: job.job?.title ?? job.folder, reference: job.job?.reference };
  const files = jobFolder(about, job, platesOf(job, effort), { inches }).map(({ path, text }) => ({
    name: path,
    text,
  }));
  const target = { folder: resolve(folder, out), shown: out };
  const before = earlierFiles(target.folder);
  const strange = files.find(({ name }) => !before.includes(name) && existsSync(join(target.folder, name)));
  if (strange)
    return wrong(
      `${join(out, strange.name)} is there already and was not written by an earlier run; give another folder, or take it away. Nothing was written`,
    );
  const old = before.filter((name) => files.every((file) => file.name !== name));
  const put = putFiles(target, files, old);
  if (put.kind === "failed") return wrong(`${put.sentence}. Nothing was written`);
  const taken = put.takenAway.map(
    (name) => `develop: ${join(out, name)} was of an earlier run and is taken away\n`,
  );
  const bad = notHere(job);
  return {
    stdout: `${files.length} files were written into ${out}; ${join(out, LIST)} tells what each is for\n${bad ? `${bad.sentence}\n` : ""}`,
    stderr: notes + taken.join(""),
    exitCode: 0,
  };
}

/** Files of a job that an earlier run wrote there, its list and its word on what to know first included. */
function earlierFiles(folder: string): string[] {
  const list = ifSystemLets(() => readFileSync(join(folder, LIST), "utf8"), undefined);
  const listed = list === undefined ? undefined : listedIn(list);
  return listed ? [...listed, LIST, READ_ME] : [];
}

const isSame = (one: string, other: string): boolean =>
  ifSystemLets(() => realpathSync(one) === realpathSync(other), false);

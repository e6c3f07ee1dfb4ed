import { nearest } from "../input/nearest.ts";
import type { BinderPaper } from "../site/pdf/binder/binderPdf.ts";
import { HALVES, type WhichHalf } from "../site/pdf/binder/sections.ts";

/** What the command line asks for. */
export type BinderRequest =
  | { readonly kind: "help" }
  | { readonly kind: "wrong"; readonly sentence: string }
  | {
      readonly kind: "binder";
      /** The job's folder; the usual one if left out. */
      readonly folder?: string;
      readonly paper: BinderPaper;
      readonly which: WhichHalf;
      readonly out: string;
    };

export const BINDER_USAGE = `Usage: npm run --silent binder -- [FOLDER] [--paper a4|letter] [--only job|reference] [--out FILE.pdf]

Writes the binder of a job's folder as one PDF: cover, contents with page numbers, safety sheet, machine cards,
shape cards, ready reckoners, list of parts with the plates to cut, part cards with their work sheets, sources.

  FOLDER           the job's folder, with parts/ and, if you like, shop.yaml and job.yaml;
                   without it the one that SLANTWORK_DATA names, else the demo job
  --paper a4       the paper: a4 (usual) or letter
  --only job       what goes with the job, without shapes, tables and glossary
  --only reference shapes, tables, glossary and sources, without any job
  --out FILE.pdf   the file to write; binder.pdf if left out. It is written whole or not at all
  --help           print this text

What is wrong with a file of the folder is told on standard error, one line each, and no PDF is written.
`;

const PAPERS = ["a4", "letter"] as const;
const FLAGS = ["--paper", "--only", "--out", "--help"] as const;

/** Reads the arguments after the name of the program. */
export function readBinderArguments(args: readonly string[]): BinderRequest {
  const folders: string[] = [];
  const values = new Map<string, string>();
  const rest = [...args];
  let flags = true;
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    if (flags && word === "--") flags = false;
    else if (!flags || !word.startsWith("-")) folders.push(word);
    else if (word === "--help" || word === "-h") return { kind: "help" };
    else {
      const at = word.indexOf("=");
      const flag = at < 0 ? word : word.slice(0, at);
      if (!FLAGS.some((one) => one === flag)) return wrong(unknown(flag));
      if (values.has(flag)) return wrong(`${flag} is given twice; give it once`);
      const value = at < 0 ? (rest.shift() ?? "") : word.slice(at + 1);
      if (value === "" || (at < 0 && value.startsWith("-")))
        return wrong(`${flag} needs ${NEEDS[flag] ?? "a value"}`);
      values.set(flag, value);
    }
  }
  const [folder, ...more] = folders;
  if (more.length > 0)
    return wrong(`a binder is of one folder; ${folder ?? ""} and ${more.join(", ")} are named`);
  if (folder === "") return wrong("the folder has an empty name; give the folder that holds parts/");
  const paper = PAPERS.find((one) => one === (values.get("--paper") ?? "a4").toLowerCase());
  if (!paper) return wrong(`--paper ${values.get("--paper") ?? ""} is not known; give a4 or letter`);
  const which = HALVES.find((one) => one === (values.get("--only") ?? "all"));
  if (!which || values.get("--only") === "all")
    return wrong(`--only ${values.get("--only") ?? ""} is not known; give job or reference`);
  if (which === "reference" && folder !== undefined)
    return wrong("the reference half is of no job; leave out the folder, or --only reference");
  const out = values.get("--out") ?? "binder.pdf";
  if (!/\.pdf$/i.test(out)) return wrong(`--out ${out} is no name of a PDF; let it end in .pdf`);
  return { kind: "binder", paper, which, out, ...(folder !== undefined && { folder }) };
}

/** What each option needs. */
const NEEDS: Readonly<Record<string, string>> = {
  "--paper": "a paper, a4 or letter",
  "--only": "a half of the binder, job or reference",
  "--out": "a file, as in --out binder.pdf",
};

function unknown(flag: string): string {
  const guess = nearest(flag, FLAGS);
  return `there is no option ${flag}; ${guess === undefined ? `the options are ${FLAGS.join(", ")}` : `did you mean ${guess}?`}`;
}

const wrong = (sentence: string): BinderRequest => ({ kind: "wrong", sentence });

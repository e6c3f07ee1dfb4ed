import type { BinderPaper } from "../site/pdf/binder/binderPdf.ts";
import { HALVES, type WhichHalf } from "../site/pdf/binder/sections.ts";
import { readOptions } from "./options.ts";

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
shape cards, ready reckoners, list of parts with the plates to cut, part cards with their work sheets, glossary,
sources.

  FOLDER           the job's folder, with parts/ and, if you like, shop.yaml and job.yaml;
                   without it the one that SLANTWORK_DATA names, else the demo job
  --paper a4       the paper: a4 (usual) or letter
  --only job       what goes with the job, without shapes, tables and glossary; safety and sources go with both halves
  --only reference safety, shapes, tables, glossary and sources, without any job
  --out FILE.pdf   the file to write; binder.pdf if left out. It is written whole or not at
                   all; its folder is made if it is not there
  --help           print this text

What is wrong with a file of the folder is told on standard error, one line each, and no PDF is written.
`;

const PAPERS = ["a4", "letter"] as const;
const OPTIONS = {
  "--paper": { needs: "a paper, a4 or letter" },
  "--only": { needs: "a half of the binder, job or reference" },
  "--out": { needs: "a file, as in --out binder.pdf" },
};

/** Reads the arguments after the name of the program. */
export function readBinderArguments(args: readonly string[]): BinderRequest {
  const read = readOptions(args, OPTIONS);
  if (read.kind !== "options") return read;
  const { names, one } = read;
  const [folder, ...more] = names;
  if (more.length > 0)
    return wrong(`a binder is of one folder; ${folder ?? ""} and ${more.join(", ")} are named`);
  if (folder === "") return wrong("the folder has an empty name; give the folder that holds parts/");
  const paper = PAPERS.find((format) => format === (one("--paper") ?? "a4").toLowerCase());
  if (!paper) return wrong(`--paper ${one("--paper") ?? ""} is not known; give a4 or letter`);
  const which = HALVES.find((half) => half === (one("--only") ?? "all"));
  if (!which || one("--only") === "all")
    return wrong(`--only ${one("--only") ?? ""} is not known; give job or reference`);
  if (which === "reference" && folder !== undefined)
    return wrong("the reference half is of no job; leave out the folder, or --only reference");
  const out = one("--out") ?? "binder.pdf";
  if (!/\.pdf$/i.test(out)) return wrong(`--out ${out} is no name of a PDF; let it end in .pdf`);
  return { kind: "binder", paper, which, out, ...(folder !== undefined && { folder }) };
}

const wrong = (sentence: string): BinderRequest => ({ kind: "wrong", sentence });

import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { loadCatalogue } from "../input/loadCatalogue.ts";
import { loadContent } from "../input/loadContent.ts";
import { printProblems } from "../input/problem.ts";
import type { Tables } from "../input/context.ts";
import { type Binder, makeBinder } from "../site/binder/makeBinder.ts";
import { projectFonts, projectVersion } from "../site/binder/projectFiles.ts";
import { binderPdf, type MadeBinder } from "../site/pdf/binder/binderPdf.ts";
import { BINDER_USAGE, readBinderArguments, type BinderRequest } from "./binderArguments.ts";
import type { Outcome } from "./run.ts";
import { writeWhole } from "./writeWhole.ts";
import { wrongWords } from "./wrongWords.ts";

const PROJECT = fileURLToPath(new URL("../../", import.meta.url));

const failed = (sentence: string): Outcome => ({ stdout: "", stderr: `binder: ${sentence}\n`, exitCode: 1 });

/** The whole of the command, but for the process around it. Paths start from the folder; the data folder is what SLANTWORK_DATA says. */
export function bindJob(
  args: readonly string[],
  { folder, dataFolder }: { readonly folder: string; readonly dataFolder: string | undefined },
): Outcome {
  const request = readBinderArguments(args);
  switch (request.kind) {
    case "help":
      return { stdout: BINDER_USAGE, stderr: "", exitCode: 0 };
    case "wrong":
      return failed(wrongWords(request.sentence, args, { command: "binder", usage: BINDER_USAGE }).trimEnd());
    case "binder":
      return bind(request, { folder, dataFolder });
  }
}

function bind(
  request: Extract<BinderRequest, { kind: "binder" }>,
  { folder, dataFolder }: { folder: string; dataFolder: string | undefined },
): Outcome {
  const { which, paper, out } = request;
  const tables = loadCatalogue();
  const binder = which === "reference" ? undefined : read(request.folder, { folder, dataFolder, tables });
  if (binder && binder.problems.length > 0) {
    const lines = printProblems(binder.problems);
    const count = lines.length === 1 ? "1 problem" : `${lines.length} problems`;
    return failed(`${count} in the folder, so that no PDF is written\n${lines.join("\n")}`);
  }
  const made = binderPdf({
    content: loadContent(),
    tables,
    binder,
    which,
    paper,
    fonts: projectFonts(PROJECT),
    version: projectVersion(PROJECT),
  });
  const sentence = writeWhole(resolve(folder, out), out, made.bytes);
  if (sentence !== undefined) return failed(sentence);
  return {
    stdout: `${out}: ${made.pages} ${made.pages === 1 ? "page" : "pages"}\n`,
    stderr: (binder?.trialNotes ?? []).map((note) => `binder: ${note}\n`).join("") + lostSigns(made),
    exitCode: 0,
  };
}

/** The job's folder as it is named, or the one that comes with the project. */
function read(
  named: string | undefined,
  { folder, dataFolder, tables }: { folder: string; dataFolder: string | undefined; tables: Tables },
): Binder {
  const shown = named ?? dataFolder;
  return shown === undefined
    ? makeBinder(join(PROJECT, "demo-data"), tables)
    : makeBinder(shown, tables, { from: folder });
}

/** Signs that the font has not are told, so that nobody has to find them on paper. */
const lostSigns = ({ lost }: MadeBinder): string =>
  [...lost]
    .map(
      ([sign, words]) =>
        `binder: the font has no ${sign} (U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}); a question mark is printed for it, first in: ${words.length > MOST ? `${words.slice(0, MOST)}…` : words}\n`,
    )
    .join("");
/** Letters of the words that a sign stood in. */
const MOST = 60;

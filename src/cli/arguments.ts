import { nearest } from "../input/nearest.ts";

/** What the command line asks for. */
export type Request =
  | { readonly kind: "help" }
  | { readonly kind: "wrong"; readonly sentence: string }
  | {
      readonly kind: "develop";
      readonly parts: readonly string[];
      readonly shop?: string;
      readonly out?: string;
      /** DXF in inches too. */
      readonly inches: boolean;
    }
  | {
      readonly kind: "correct";
      readonly part: string;
      readonly shop: string;
      readonly machine?: string;
      /** As written, after the trials of the part's own file. */
      readonly trials: readonly string[];
    };

export const USAGE = `Usage: npm run --silent develop -- part.yaml [more.yaml ...] [--shop shop.yaml] [--out folder]
       npm run --silent develop -- job-folder [--out folder]

Reads part files, or a job's folder with its shop.yaml, job.yaml and parts, lays them out flat and checks how they can
be formed. Prints the report as JSON: one report for one part, a list for several and for a job.

  --shop file    the shop's machines and stock plates; without it only the part itself is checked
  --out folder   also write for each part NAME.json, the report, and what it is cut and marked out by: NAME.dxf,
                 NAME.svg, NAME.csv, with -piece-N in the name where pieces differ. Of a job's folder write the files
                 of all parts and plates, with list.csv that tells what each is for, and print no reports.
                 All is written or nothing; the folder is made if it is not there, other files in it stay, and files
                 of a part that could not be laid out are taken away
  --inches       write DXF in inches too; those of parts in inches are written in both anyhow
  --trial ...    print the next setting of the first pass instead, after a trial on an initial-pinch roll:
                 --trial setting=12.5,gap=840   the raise at the large edge, counted from the flat plate (the
                 scale's reading less its reading at 0), and the inside gap at the large end,
                 closed=45 (per cent) or flat in place of the gap; gap=-40 or closed=105 where the edges overlap;
                 of an eccentric cone zone=2,setting=12.5,large=830,small=520, the inside radii that came out
                 (or chord=300,largeDepth=13.4,smallDepth=21.8 under a straightedge, or flat); every zone by itself.
                 Once for each trial, in order.
                 Trials kept in PART.trials.yaml next to the part come first; --trial file (that very word,
                 not a path) takes those alone
  --machine name the roll it was tried on, where the shop has several
  --help         print this text

What is wrong with a file is told on standard error, one line each:
  path:line:column: field: what is wrong; what would be right
Nothing is printed or written for such a part, and the exit code is 1.
`;

const FLAGS = ["--shop", "--out", "--inches", "--trial", "--machine", "--help"] as const;

/** What each option that takes a value needs. */
const NEEDS: Readonly<Record<string, string>> = {
  "--shop": "a file, as in --shop shop.yaml",
  "--out": "a folder, as in --out reports",
  "--trial": "a trial, as in --trial setting=12.5,gap=840",
  "--machine": 'a name, as in --machine "Big roll"',
};

/** Reads the arguments after the name of the program. */
export function readArguments(args: readonly string[]): Request {
  const parts: string[] = [];
  const values = new Map<string, string>();
  const trials: string[] = [];
  const rest = [...args];
  let flags = true;
  let inches = false;
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    if (flags && word === "--") flags = false;
    else if (!flags || !word.startsWith("-")) parts.push(word);
    else if (word === "--help" || word === "-h") return { kind: "help" };
    else if (word === "--inches") inches = true;
    else {
      const [flag, given] = split(word);
      const needs = NEEDS[flag];
      if (needs === undefined) return wrong(unknown(flag));
      if (values.has(flag)) return wrong(`${flag} is given twice; give it once`);
      const value = given ?? rest.shift() ?? "";
      if (value === "" || (given === undefined && value.startsWith("-")))
        return wrong(`${flag} needs ${needs}`);
      if (flag === "--trial") trials.push(value);
      else values.set(flag, value);
    }
  }
  if (parts.some((part) => part === ""))
    return wrong("a part file has an empty name; give the path of a .yaml file");
  if (parts.length === 0)
    return wrong("no part file is named; give at least one .yaml file, or a job's folder");
  const shop = values.get("--shop");
  const out = values.get("--out");
  const machine = values.get("--machine");
  if (trials.length > 0) {
    if (inches) return wrong("--trial writes no files; leave out --inches");
    return correction(parts, trials, { shop, out, machine });
  }
  if (machine !== undefined) return wrong("--machine goes with --trial");
  if (inches && out === undefined)
    return wrong("--inches is about the files that are written; give --out too");
  return {
    kind: "develop",
    parts,
    inches,
    ...(shop !== undefined && { shop }),
    ...(out !== undefined && { out }),
  };
}

/** A trial is of one part on one machine of one shop. */
function correction(
  parts: readonly string[],
  trials: readonly string[],
  { shop, out, machine }: Record<"shop" | "out" | "machine", string | undefined>,
): Request {
  const [part] = parts;
  if (part === undefined || parts.length > 1) return wrong("--trial is about one part; name one .yaml file");
  if (shop === undefined)
    return wrong("--trial needs the machine: give the shop file, as in --shop shop.yaml");
  if (out !== undefined) return wrong("--trial writes no files; leave out --out");
  const words = trials.filter((word) => word !== "file");
  return { kind: "correct", part, shop, trials: words, ...(machine !== undefined && { machine }) };
}

/** --out=folder or --out folder */
function split(word: string): [string, string | undefined] {
  const at = word.indexOf("=");
  return at < 0 ? [word, undefined] : [word.slice(0, at), word.slice(at + 1)];
}

function unknown(flag: string): string {
  const guess = nearest(flag, FLAGS);
  return `there is no option ${flag}; ${guess === undefined ? `the options are ${FLAGS.join(", ")}` : `did you mean ${guess}?`}`;
}

const wrong = (sentence: string): Request => ({ kind: "wrong", sentence });

import { readOptions } from "./options.ts";

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
                 On a screen the reports of parts are then not printed either; into a file or a pipe they are.
                 All is written or nothing; the folder is made if it is not there, other files in it stay, and files
                 of a part that could not be laid out are taken away
  --inches       write DXF in inches too; those of parts in inches are written in both anyhow
  --trial ...    print the next setting of the first pass instead, after a trial on an initial-pinch roll:
                 --trial setting=12.5,gap=840   the raise at the large edge, counted from the flat plate (the
                 scale's reading less its reading at 0), and the inside gap at the large end,
                 closed=45 (per cent, by the bent part) or flat in place of the gap; gap=-40 or closed=105 where
                 the edges overlap;
                 of an eccentric cone zone=2,setting=12.5,large=830,small=520, the inside radii that came out
                 (or chord=300,largeDepth=13.4,smallDepth=21.8 under a straightedge, or flat); every zone by itself.
                 In place of the setting the raises at both bearings, where the scales are: drop=31,fixed=12, the
                 drop end and the fixed end, from their own 0, or what the scales show with dropAt0=150,fixedAt0=150,
                 what they show on the flat plate. Then the next numbers are told for both bearings too.
                 Once for each trial, in order.
                 Trials kept in PART.trials.yaml next to the part come first; --trial file (that very word,
                 not a path) takes those alone
  --machine name the roll it was tried on, where the shop has several
  --help         print this text

What is wrong with a file is told on standard error, one line each:
  path:line:column: field: what is wrong; what would be right
Nothing is printed or written for such a part, and the exit code is 1.
`;

const OPTIONS = {
  "--shop": { needs: "a file, as in --shop shop.yaml" },
  "--out": { needs: "a folder, as in --out reports" },
  "--inches": { needs: null },
  "--trial": { needs: "a trial, as in --trial setting=12.5,gap=840", many: true },
  "--machine": { needs: 'a name, as in --machine "Big roll"' },
};

/** Reads the arguments after the name of the program. */
export function readArguments(args: readonly string[]): Request {
  const read = readOptions(args, OPTIONS);
  if (read.kind !== "options") return read;
  const { names: parts, all, one } = read;
  const inches = all.has("--inches");
  const trials = all.get("--trial") ?? [];
  if (parts.some((part) => part === ""))
    return wrong("a part file has an empty name; give the path of a .yaml file");
  if (parts.length === 0)
    return wrong("no part file is named; give at least one .yaml file, or a job's folder");
  const shop = one("--shop");
  const out = one("--out");
  const machine = one("--machine");
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

const wrong = (sentence: string): Request => ({ kind: "wrong", sentence });

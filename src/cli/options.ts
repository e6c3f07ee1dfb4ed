import { nearest } from "../input/nearest.ts";

/** An option of a command: what its value has to be, as the end of a sentence; null where it takes none. */
interface Option {
  readonly needs: string | null;
  /** It may be given again and again. */
  readonly many?: boolean;
}

/** What a command line comes to, before a command makes sense of it. */
export type Options =
  | { readonly kind: "help" }
  | { readonly kind: "wrong"; readonly sentence: string }
  | {
      readonly kind: "options";
      /** Words that belong to no option. */
      readonly names: readonly string[];
      /** Values of each option in their order; of one that takes none, an empty word. */
      readonly all: ReadonlyMap<string, readonly string[]>;
      /** The one value of an option. */
      readonly one: (flag: string) => string | undefined;
    };

/** Reads the arguments after the name of a program: --flag value or --flag=value; after -- all are names. */
export function readOptions(args: readonly string[], known: Readonly<Record<string, Option>>): Options {
  const names: string[] = [];
  const all = new Map<string, readonly string[]>();
  const rest = [...args];
  let flags = true;
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    if (flags && word === "--") flags = false;
    else if (!flags || !word.startsWith("-")) names.push(word);
    else if (word === "--help" || word === "-h") return { kind: "help" };
    else if (known[word]?.needs === null) all.set(word, [""]);
    else {
      const [flag, given] = split(word);
      const { needs = null, many = false } = known[flag] ?? {};
      if (needs === null) return wrong(unknown(flag, Object.keys(known)));
      const before = all.get(flag) ?? [];
      if (before.length > 0 && !many) return wrong(`${flag} is given twice; give it once`);
      const value = given ?? rest.shift() ?? "";
      if (value === "" || (given === undefined && value.startsWith("-")))
        return wrong(`${flag} needs ${needs}`);
      all.set(flag, [...before, value]);
    }
  }
  return { kind: "options", names, all, one: (flag) => all.get(flag)?.[0] };
}

/** --out=folder or --out folder */
function split(word: string): [string, string | undefined] {
  const at = word.indexOf("=");
  return at < 0 ? [word, undefined] : [word.slice(0, at), word.slice(at + 1)];
}

function unknown(flag: string, flags: readonly string[]): string {
  const all = [...flags, "--help"];
  const guess = nearest(flag, all);
  return `there is no option ${flag}; ${guess === undefined ? `the options are ${all.join(", ")}` : `did you mean ${guess}?`}`;
}

const wrong = (sentence: string): Options => ({ kind: "wrong", sentence });

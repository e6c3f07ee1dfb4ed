import type { Tables } from "../../../input/context.ts";
import { printProblems, refusalProblems } from "../../../input/problem.ts";
import { partOfText } from "../../../input/readFiles.ts";
import { decode } from "../../../input/text.ts";
import { typedOf, type TypedGroup } from "../../../input/typed.ts";
import { layOut } from "../../../report/layOut.ts";
import type { NamedTyped } from "../link.ts";

/** A part file as it was opened. */
export interface OpenedPart {
  /** A line for every problem, as the build prints it. */
  readonly problems: readonly string[];
  /** What the file says, problems or not, where it is a file of keys and values at all. */
  readonly typed: NamedTyped | undefined;
}

/** Reads a part file by the rules of the build, the geometry's included. */
export function openPart(bytes: Uint8Array, file: string, tables: Tables): OpenedPart {
  const { part, problems, locate, tree } = partOfText(decode(bytes), file, tables);
  const made = part && layOut(part, tables);
  const refused = made?.kind === "refused" ? refusalProblems(made.issues, { path: file, locate }) : [];
  const name = file.replace(/\.ya?ml$/i, "");
  return {
    problems: printProblems([...problems, ...refused]),
    typed: tree?.kind === "map" ? { name, part: typedOf(tree) as TypedGroup } : undefined,
  };
}

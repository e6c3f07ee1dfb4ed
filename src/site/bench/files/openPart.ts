import type { Tables } from "../../../input/context.ts";
import { printProblems, refusalProblems } from "../../../input/problem.ts";
import { partOfText } from "../../../input/readFiles.ts";
import { decode } from "../../../input/text.ts";
import type { TypedGroup } from "../../../input/typed.ts";
import { typedOf } from "../../../input/typedTree.ts";
import { layOut } from "../../../report/layOut.ts";
import type { NamedTyped } from "../asTyped.ts";

/** A part file as it was opened. */
export interface OpenedPart {
  /** A line for every problem, as the build prints it. */
  readonly problems: readonly string[];
  /** What the file says, problems or not, where it is a file of keys and values at all. */
  readonly typed: NamedTyped | undefined;
}

/** What else a file is that names no shape; undefined where nobody can tell. */
function otherKind(typed: TypedGroup): string | undefined {
  // Its part stands in it as it was read, with what was left out put in.
  if ("part" in typed && "forming" in typed)
    return "is a part’s report, not a part file: open the file that the report was made from, or its page.";
  if ("shape" in typed) return undefined;
  if ("machines" in typed)
    return "is a shop file, not a part file: open it below “Look at the shop’s machines and change them”.";
  return "parts" in typed
    ? "is a job file, not a part file: pack its folder as a .zip and open that at the tray."
    : undefined;
}

/** Endings under which a part file may lie, its own and those that a mail or an editor leaves: none, or that of any text. */
const MAY_BE_PART = /(?:^[^.]*|\.(?:ya?ml|txt|text))$/i;

/** Reads a part file by the rules of the build, the geometry's included. */
export function openPart(bytes: Uint8Array, file: string, tables: Tables): OpenedPart {
  const { part, problems, locate, tree } = partOfText(decode(bytes), file, tables);
  const keys = tree?.kind === "map" ? (typedOf(tree) as TypedGroup) : undefined;
  const other = keys && otherKind(keys);
  if (other) return { problems: [`${file} ${other}`], typed: undefined };
  // To rename a picture would not help.
  if (!MAY_BE_PART.test(file) && !(keys && "shape" in keys))
    return {
      problems: [
        `${file} is neither a part file, which ends in .yaml, nor a job’s folder packed as a .zip: choose one of these.`,
      ],
      typed: undefined,
    };
  const made = part && layOut(part, tables);
  const refused = made?.kind === "refused" ? refusalProblems(made.issues, { path: file, locate }) : [];
  const name = file.replace(/\.ya?ml$/i, "");
  return {
    problems: printProblems([...problems, ...refused]),
    typed: keys && { name, part: keys },
  };
}

import { Part } from "../shapes/part.ts";
import { fieldProblems } from "../shapes/registry.ts";
import type { Loose } from "../shapes/loose.ts";
import type { FileContext } from "./context.ts";
import { readDocument, type DocumentReading } from "./document.ts";
import type { Tree } from "./tree.ts";
import { partName } from "./partName.ts";
import { fileProblem, sortProblems, type Locate, type Problem } from "./problem.ts";

/** A part as read, in mm and degrees, with its name. */
export type NamedPart = Part & { readonly name: string };

export interface PartReading {
  /** Present where there are no problems. */
  readonly part: NamedPart | undefined;
  readonly problems: readonly Problem[];
  readonly locate: Locate;
  /** The file as it is written, where it is a file at all. */
  readonly tree?: Tree | undefined;
}

/** Reads the text of one part file. */
export function readPart(text: string, file: FileContext): PartReading {
  const { value, problems, locate, tree }: DocumentReading<Part> = readDocument(
    {
      schema: Part,
      begins: "shape: right-cone",
      rules: (right, given) => fieldProblems(right as Loose<Part>, given),
    },
    text,
    file,
  );
  const name = partName(file.path);
  if (name.kind === "unreadable") {
    const bad = fileProblem(file.path, name.problem, name.remedy);
    return { part: undefined, problems: sortProblems([bad, ...problems]), locate, tree };
  }
  return { part: value && { ...value, name: name.value }, problems, locate, tree };
}

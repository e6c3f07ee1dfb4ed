import type { Given, Loose } from "../shapes/loose.ts";
import { check, type Runnable } from "./check.ts";
import type { FileContext } from "./context.ts";
import type { FieldProblem } from "./plainTree.ts";
import { fieldName, fileProblem, sortProblems, type Locate, type Problem } from "./problem.ts";
import { cleanText } from "./text.ts";
import { locator, type Tree } from "./tree.ts";
import { yamlTree } from "./yamlTree.ts";

/** What came out of one file. */
export interface DocumentReading<T> {
  /** Present where there are no problems. */
  readonly value: T | undefined;
  readonly problems: readonly Problem[];
  /** For problems that turn up later on. */
  readonly locate: Locate;
  /** The file as it is written, where it is a file at all. */
  readonly tree?: Tree | undefined;
}

export interface DocumentKind<T> {
  readonly schema: Runnable<T>;
  /** How such a file begins, for somebody whose file is empty: "shape: right-cone". */
  readonly begins: string;
  /** What the schema cannot say about it: rules between fields, asked of what is right in the file. */
  readonly rules?: (right: Loose<T>, given: Given) => readonly FieldProblem[];
}

/** Text → tree → mm and degrees → checked value, or everything that is wrong with the file. Never throws for its text. */
export function readDocument<T>(kind: DocumentKind<T>, text: string, file: FileContext): DocumentReading<T> {
  const clean = cleanText(text);
  if (clean.kind === "unreadable")
    return failed([fileProblem(file.path, clean.problem, clean.remedy)], undefined);
  const { tree, problems: syntax } = yamlTree(clean.value);
  const problems: Problem[] = syntax.map(({ at, ...problem }) => ({ path: file.path, ...at, ...problem }));
  if (!tree)
    return failed(
      problems.length > 0 ? problems : [nothingIn(file.path, clean.value, kind.begins)],
      undefined,
    );
  if (tree.kind !== "map") return failed([...problems, noKeys(file.path, tree, kind.begins)], tree);
  const checked = check(kind.schema, tree, file);
  const between = checked.right === undefined ? [] : (kind.rules?.(checked.right, checked.given) ?? []);
  const found = [...checked.problems, ...between];
  const locate = locator(tree);
  problems.push(
    ...found.map(({ path, at, problem, remedy }) => ({
      path: file.path,
      ...(at ?? locate(path)),
      field: fieldName(path),
      problem,
      remedy,
    })),
  );
  if (checked.value !== undefined && problems.length === 0)
    return { value: checked.value, problems, locate, tree };
  // Not reached as far as is known; but no file may be passed over in silence.
  const silent = fileProblem(file.path, "something in it does not fit", "compare it with a file that works");
  return failed(problems.length > 0 ? problems : [silent], tree);
}

function failed(problems: readonly Problem[], tree: Tree | undefined): DocumentReading<never> {
  return { value: undefined, problems: sortProblems(problems), locate: locator(tree), tree };
}

function nothingIn(path: string, text: string, begins: string): Problem {
  const what = text.trim() === "" ? "it is empty" : "there is nothing in it but comments";
  return fileProblem(path, what, `begin it with "${begins}"`);
}

function noKeys(path: string, tree: Tree, begins: string): Problem {
  const what =
    tree.kind === "list"
      ? "it holds a list where keys and values belong"
      : "there are no keys and values in it";
  return { ...fileProblem(path, what, `begin it with "${begins}"`), ...tree.at };
}

import { LineCounter, parseDocument, type Document } from "yaml";
import { Planter, TOO_DEEP, type TreeProblem } from "./planter.ts";
import type { Place } from "./problem.ts";
import type { Tree } from "./tree.ts";
import { yamlWords } from "./yamlWords.ts";

/** Lines with syntax errors that are told; later ones mostly follow from the first. */
const MAX_SYNTAX_LINES = 5;

export interface TreeReading {
  /** Absent where the file is empty or is not YAML. */
  readonly tree: Tree | undefined;
  readonly problems: readonly TreeProblem[];
}

/** Reads YAML 1.2 text as a tree with places. */
export function yamlTree(text: string): TreeReading {
  const lines = new LineCounter();
  // Equal keys are looked for while planting: the parser compares each with each, half a minute for a megabyte.
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, uniqueKeys: false });
  const place = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  const syntax = syntaxProblems(document, place);
  if (syntax.length > 0) return { tree: undefined, problems: syntax };
  if (!document.contents) return { tree: undefined, problems: [] };
  const planter = new Planter(document, place);
  const tree = planter.plant(document.contents, [], { line: 1, column: 1 });
  return planter.overgrown
    ? { tree: undefined, problems: [planter.overgrown] }
    : { tree, problems: planter.problems };
}

/** The first error of each line: the parser often finds several faults with one slip. */
function syntaxProblems(document: Document.Parsed, place: (offset: number) => Place): TreeProblem[] {
  const byLine = new Map<number, TreeProblem>();
  for (const { code, message, pos } of [...document.errors, ...document.warnings]) {
    // How deep the parser gets before its stack is full differs from run to run; the message must not.
    if (code === "RESOURCE_EXHAUSTION") return [TOO_DEEP];
    const at = place(pos[0]);
    if (!byLine.has(at.line)) byLine.set(at.line, { at, field: "file", ...yamlWords(code, message) });
  }
  return [...byLine.values()].slice(0, MAX_SYNTAX_LINES);
}

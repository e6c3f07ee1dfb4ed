import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { printProblems } from "../../src/input/problem.ts";
import { readPart } from "../../src/input/readPart.ts";

export const tables = loadCatalogue();

/** A part file with nothing wrong in it; the tests spoil one thing at a time. */
export const GOOD = `shape: eccentric-cone
title: Feed spout reducer
units: mm
material: s235
thickness: 4
largeEnd: { diameter: 900, measured: outside }
smallEnd: { diameter: 400, measured: outside, offset: [150, 0] }
height: 700
`;

/** The good file with one piece of text replaced; the piece must be there, or the test would test nothing. */
export function spoilt(piece: string | RegExp, by: string, text = GOOD): string {
  const changed = text.replace(piece, () => by);
  if (changed === text) throw new Error(`nothing to spoil: ${String(piece)}`);
  return changed;
}

/** What would be printed about a part file. */
export function linesOf(text: string, path = "a.yaml"): string[] {
  const { part, problems } = readPart(text, { path, ...tables });
  if (part && problems.length > 0) throw new Error("a part with problems was let through");
  return printProblems(problems);
}

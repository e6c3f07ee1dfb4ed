import type { Run } from "../../output/pdf/words.ts";
import { basisName } from "../words/sources.ts";
import { soft } from "./blocks.ts";

/** Where a source's entry stands, in a file that has the list of sources. */
export const sourcePlace = (id: string): string => `source ${id}`;

/** What a figure rests on, leading to its entry among the sources where there is one in the file. */
export const basisRun = (known: ReadonlyMap<string, string>, basis: string): Run => ({
  ...soft(basisName(known, basis)),
  ...(known.has(basis) && { to: sourcePlace(basis) }),
});

/** Several, one after the other. */
export const basisRuns = (known: ReadonlyMap<string, string>, bases: readonly string[]): Run[] =>
  bases.flatMap((basis, i) => [...(i > 0 ? [soft("; ")] : []), basisRun(known, basis)]);

import { siteHref } from "../bits/siteHref.ts";
import type { BenchTables } from "./start.ts";

/** Words that a sheet takes from the reference half of the binder. */
export interface PrintedWords {
  /** The short names of the sources, by id. */
  readonly known: ReadonlyMap<string, string>;
  /** What the glossary says of the words that a work sheet explains, by entry. */
  readonly glossary: ReadonlyMap<string, string>;
}

/** The same as the binder publishes them. */
export async function fetchPrintedWords(): Promise<PrintedWords> {
  const address = siteHref("/bench.json");
  const answer = await fetch(address);
  if (!answer.ok) throw new RangeError(`${address}: ${answer.status}`);
  const { known, glossary } = (await answer.json()) as BenchTables;
  return { known: new Map(known), glossary: new Map(glossary) };
}

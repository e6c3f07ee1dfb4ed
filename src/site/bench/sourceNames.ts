import { siteHref } from "../bits/siteHref.ts";
import type { BenchTables } from "./start.ts";

/** The short names of the sources, by id, as the binder publishes them. */
export async function fetchSourceNames(): Promise<ReadonlyMap<string, string>> {
  const address = siteHref("/bench.json");
  const answer = await fetch(address);
  if (!answer.ok) throw new RangeError(`${address}: ${answer.status}`);
  return new Map(((await answer.json()) as BenchTables).known);
}

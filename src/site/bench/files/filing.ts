import type { Tables } from "../../../input/context.ts";
import type { Bench } from "../bench.svelte.ts";
import { sharedTray } from "../tray/sharedTray.ts";
import { UNREAD } from "../tray/unread.ts";
import { BenchFiles } from "./files.svelte.ts";
import PartAway from "./PartAway.svelte";

/** All that takes parts from a bench and brings them there, loaded together. */
export function filingFor(bench: Bench, tables: Tables) {
  const files = new BenchFiles(bench, sharedTray(), tables);
  // The tray itself stands far down.
  if (files.tray.unread.length > 0) files.told = { words: UNREAD, isWrong: true };
  return { files, PartAway };
}

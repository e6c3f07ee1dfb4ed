import type { Tables } from "../../../input/context.ts";
import type { Bench } from "../bench.svelte.ts";
import { sharedTray } from "../tray/sharedTray.ts";
import { BenchFiles } from "./files.svelte.ts";
import PartAway from "./PartAway.svelte";

/** All that takes parts from a bench and brings them there, loaded together. */
export const filingFor = (bench: Bench, tables: Tables) => ({
  files: new BenchFiles(bench, sharedTray(), tables),
  PartAway,
});

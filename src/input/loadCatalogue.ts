import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import * as z from "zod/mini";
import { Material } from "../shapes/material.ts";
import type { Runnable } from "./check.ts";
import type { Tables } from "./context.ts";
import { readDocument } from "./document.ts";
import { Gauges } from "./gauge.ts";
import { printProblems } from "./problem.ts";

const Materials = z.record(z.string().check(z.regex(/^[a-z0-9][a-z0-9-]*$/)), Material);

/** The published tables, beside the sources of this project. */
const CONTENT = new URL("../../content/", import.meta.url);

const loaded = new Map<string, Tables>();

/**
 * Materials and gauges, read once for each folder.
 *
 * A mistake in these files is a mistake in the project, not in anybody's part: it throws, with every line.
 * @param folder where materials.yaml and gauges.yaml lie; to be given where this code runs out of a bundle
 */
export function loadCatalogue(folder: string | URL = CONTENT): Tables {
  const path = typeof folder === "string" ? folder : fileURLToPath(folder);
  const known = loaded.get(path);
  if (known) return known;
  const tables: Tables = {
    catalogue: { materials: table(join(path, "materials.yaml"), Materials) },
    gauges: table(join(path, "gauges.yaml"), Gauges),
  };
  loaded.set(path, tables);
  return tables;
}

function table<T>(path: string, schema: Runnable<T>): T {
  const file = { path, catalogue: { materials: {} }, gauges: NO_GAUGES };
  const { value, problems } = readDocument({ schema, begins: "# a table" }, readFileSync(path, "utf8"), file);
  if (value === undefined) throw new Error(printProblems(problems).join("\n"));
  return value;
}

const none = { name: "", rule: "", sources: [], rows: [] };
const NO_GAUGES: Gauges = { steel: none, galvanised: none, stainless: none, aluminium: none };

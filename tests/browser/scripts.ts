import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { gzipSync } from "node:zlib";
import { DIST } from "./site.ts";

/** A script of the built site. */
export const readScript = (script: string): string => readFileSync(join(DIST, script), "utf8");

/** A script with all that it loads at once. */
export function withLoaded(script: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(script)) return seen;
  seen.add(script);
  for (const [, target = ""] of readScript(script).matchAll(/(?:from|import)\s*"(\.\/[^"]+)"/g))
    withLoaded(join(dirname(script), target), seen);
  return seen;
}

/** What scripts weigh on their way to a reader, each once. [bytes, gzip] */
export const weight = (scripts: Iterable<string>): number =>
  [...new Set(scripts)].reduce((sum, script) => sum + gzipSync(readFileSync(join(DIST, script))).length, 0);

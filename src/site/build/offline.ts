import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

/** Digits of the version: enough to tell two builds apart. */
const DIGITS = 10;

const published = (root: string): string[] =>
  readdirSync(root, { recursive: true, encoding: "utf8" })
    .filter((file) => statSync(join(root, file)).isFile())
    .map((file) => file.replaceAll("\\", "/"))
    .sort();

/** The version of a folder: its files and all that stands in them. */
function versionOf(root: string, files: readonly string[]): string {
  const hash = createHash("sha256");
  for (const file of files)
    hash
      .update(file)
      .update("\0")
      .update(readFileSync(join(root, file)))
      .update("\0");
  return hash.digest("hex").slice(0, DIGITS);
}

/** Writes, beside the pages, the worker that keeps all files for use without a network. */
export function offline() {
  return {
    name: "offline",
    hooks: {
      "astro:build:done": ({ dir }: { dir: URL }) => {
        const root = fileURLToPath(dir);
        const files = published(root);
        const version = versionOf(root, files);
        const worker = readFileSync(resolve("src/site/offline/worker.js"), "utf8");
        const head = `const VERSION = ${JSON.stringify(version)};\nconst FILES = ${JSON.stringify(files)};\n`;
        writeFileSync(join(root, "sw.js"), head + worker);
      },
    },
  };
}

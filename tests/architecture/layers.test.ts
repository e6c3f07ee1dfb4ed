import { globSync, readFileSync } from "node:fs";
import { dirname, normalize } from "node:path";
import { expect, it } from "vitest";

/** What each folder of src/ may import besides itself: layers below it, then packages. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  geometry: [],
  shapes: ["geometry", "zod/mini"],
  forming: ["geometry", "shapes", "zod/mini"],
  input: ["geometry", "shapes", "forming", "yaml", "zod/mini", "node:"],
  report: ["geometry", "shapes", "forming"], // types only from input: see below
  nesting: ["geometry", "clipper2-ts"],
  drawing: ["geometry", "report", "d3"],
  tables: ["geometry", "shapes", "forming", "drawing"],
  output: ["geometry", "report", "drawing", "jspdf"],
  job: ["geometry", "forming", "report", "nesting", "drawing", "output"],
  cli: ["input", "report", "job", "output", "site", "node:"],
  site: [
    "geometry",
    "shapes",
    "forming",
    "input",
    "report",
    "nesting",
    "drawing",
    "tables",
    "output",
    "job",
    "svelte",
    "d3",
    "fflate",
    "parse5",
    "astro:",
    "node:",
  ],
  pages: ["site", "input", "report", "tables", "output", "job", "astro:"],
};
/** What stands behind `from` in a type or a sentence is no address: addresses have no spaces and no strokes. */
const IMPORT = /(import\s+type\b[^;]*?from|(?:from|import)\s*\(?)\s*["']([^"'\s|]+)["']/g;

it.each(globSync("src/*/**/*.{ts,svelte,astro}"))("%s imports only what its folder may", (file) => {
  const folder = file.split("/")[1] ?? "";
  const allowed = [folder, ...(MAY_IMPORT[folder] ?? [])];
  for (const [, keyword = "", target = ""] of readFileSync(file, "utf8").matchAll(IMPORT)) {
    const inside = target.startsWith(".") ? normalize(`${dirname(file)}/${target}`).split("/") : undefined;
    if (inside) expect(inside[0], `${file} leaves src/ for ${target}`).toBe("src");
    const name = inside ? (inside[1] ?? "") : target;
    if (folder === "report" && name === "input" && keyword.includes("type")) continue;
    const fits = allowed.some((one) => (one.endsWith(":") ? name.startsWith(one) : name === one));
    expect(fits, `${file} imports ${target}`).toBe(true);
  }
});

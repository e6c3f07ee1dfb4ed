import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { DIST } from "./site.ts";

const text = readFileSync(join(DIST, "licences.txt"), "utf8");

/** Packages whose code is known by words of their own in the finished scripts. */
const KNOWN = [
  ["jspdf", "addFileToVFS"],
  ["fflate", "unexpected EOF"],
  ["yaml", "Unresolved alias"],
  ["zod", "_zod"],
] as const;

it.each(KNOWN)("of %s, which is in the scripts, the binder has the notice", (name, sign) => {
  const scripts = readdirSync(join(DIST, "_astro")).filter((file) => file.endsWith(".js"));
  expect(scripts.some((file) => readFileSync(join(DIST, "_astro", file), "utf8").includes(sign))).toBe(true);
  const at = text.search(new RegExp(`^${name} \\d`, "m"));
  expect(at).toBeGreaterThan(0);
  expect(text.slice(at, at + 1500)).toMatch(/copyright/i);
});

it("is linked from the list of sources", () => {
  expect(readFileSync(join(DIST, "sources/index.html"), "utf8")).toContain('href="../licences.txt"');
});

import { MIN_SIZE_MM } from "./limits.ts";
import type { Loose } from "./loose.ts";
import type { Part } from "./part.ts";
import type { Refusal } from "./refusal.ts";
import { roundedIn, shown } from "./words.ts";

/** Every size that a shape may have. What is nought is judged by the schema: at a point it is right. */
const SIZES = [
  ["largeEnd", "diameter"],
  ["smallEnd", "diameter"],
  ["rectangularEnd", "length"],
  ["rectangularEnd", "width"],
  ["roundEnd", "diameter"],
  ["height"],
  ["slant"],
  ["seam", "lap"],
] as const;

function sizeAt(part: unknown, path: readonly string[]): number | undefined {
  let here = part;
  for (const key of path)
    here = typeof here === "object" && here !== null ? Reflect.get(here, key) : undefined;
  return typeof here === "number" ? here : undefined;
}

/** Sizes too small for any part that is made of plate, as far as the file is right. */
export function sizeProblems(part: Loose<Part>): Refusal[] {
  const units = part.units ?? "mm";
  const least = shown(roundedIn(MIN_SIZE_MM, units, "up"), units);
  return SIZES.flatMap((path) => {
    const size = sizeAt(part, path);
    if (size === undefined || size <= 0 || size >= MIN_SIZE_MM) return [];
    const point = path[0] === "smallEnd" ? ", or 0 for a point" : "";
    return {
      path,
      problem: "the size is smaller than the thinnest sheet that is formed",
      remedy: `give at least ${least}${point}, or check its units`,
    };
  });
}

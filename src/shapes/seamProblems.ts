import type { Seam } from "./fields.ts";
import type { Given, Loose } from "./loose.ts";
import type { Refusal } from "./refusal.ts";

/** What every shape's seam may hold, as far as it is right. */
interface Seamed {
  readonly seam?: Loose<Seam> | undefined;
}

/** Seam keys that do not go together. */
export function seamProblems({ seam }: Seamed, given: Given): Refusal[] {
  if (!seam) return [];
  const issues: Refusal[] = [];
  const lap = seam.joint === "lap";
  if (lap && !given(["seam", "lap"]))
    issues.push({
      path: ["seam", "lap"],
      problem: "a lap joint needs its width",
      remedy: "give lap, the width by which the plate runs on past the seam",
    });
  if ((seam.joint !== undefined || !given(["seam", "joint"])) && !lap && seam.lap !== undefined)
    issues.push({
      path: ["seam", "lap"],
      problem: "a lap width is given for a butt joint",
      remedy: "use joint: lap, or leave out lap",
    });
  if (lap && seam.gap !== undefined && seam.gap > 0)
    issues.push({
      path: ["seam", "gap"],
      problem: "a lap joint has no gap",
      remedy: "leave out gap, or use joint: butt",
    });
  return issues;
}

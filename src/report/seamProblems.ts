import { type Refusal } from "../shapes/refusal.ts";
import { type Part } from "../shapes/registry.ts";

/** Seam keys that do not go together. */
export function seamProblems(part: Part): Refusal[] {
  const { seam } = part;
  if (!seam) return [];
  const issues: Refusal[] = [];
  const lap = seam.joint === "lap";
  if (lap && seam.lap === undefined)
    issues.push({
      path: ["seam"],
      problem: "a lap joint needs its width",
      remedy: "give lap, the width by which the plate runs on past the seam",
    });
  if (!lap && seam.lap !== undefined)
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

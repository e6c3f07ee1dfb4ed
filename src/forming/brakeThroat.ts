import type { BrakeAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge, state } from "./judge.ts";

/**
 * The flat blank reaches behind the bend line by no more than half its length, when it is worked from both edges towards
 * the middle. Where the shop gives no depth behind the line, the depth wanted is told instead. [mm]
 */
export function brakeThroat({ item, brake, say }: Omit<BrakeAsked, "dieMm">): Check | null {
  if (item.blanks.length === 0) return null;
  const value = Math.max(...item.blanks.map(({ lengthMm, widthMm }) => Math.max(lengthMm, widthMm))) / 2;
  const words = {
    id: "brake-throat",
    title: "Depth behind the bend line",
    value,
    sense: "at most" as const,
    unit: "mm",
    basis: DERIVED,
    rule: "half the longest side of a blank ≤ depth behind the bend line, worked from both edges towards the middle",
  };
  const limit = brake.throat;
  if (limit === undefined)
    return state({
      ...words,
      verdict: "caution",
      advice: `The shop file gives no throat: see that up to ${say.length(value)} of plate find room behind the line.`,
    });
  return judge({
    ...words,
    limit,
    beyond: "caution",
    advice: (verdict) =>
      verdict === "pass"
        ? `Work from both edges towards the middle: up to ${say.length(value)} of plate lie behind the line, and there is room for ${say.length(limit)}.`
        : `Up to ${say.length(value)} of plate lie behind the line, and there is room for ${say.length(limit)}: let the blank hang out past the frame, or make more pieces.`,
  });
}

import type { BrakeAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge } from "./judge.ts";

/**
 * The flat blank reaches behind the bend line by no more than half its length, when it is worked from both edges towards
 * the middle. Asked where the shop gives the depth behind the line. [mm]
 */
export function brakeThroat({ item, brake, say }: Omit<BrakeAsked, "dieMm">): Check | null {
  if (brake.throat === undefined || item.blanks.length === 0) return null;
  const limit = brake.throat;
  const value = Math.max(...item.blanks.map(({ lengthMm, widthMm }) => Math.max(lengthMm, widthMm))) / 2;
  return judge({
    id: "brake-throat",
    title: "Depth behind the bend line",
    value,
    limit,
    sense: "at most",
    unit: "mm",
    beyond: "caution",
    basis: DERIVED,
    rule: "half the longest side of a blank ≤ depth behind the bend line, worked from both edges towards the middle",
    advice: (verdict) =>
      verdict === "pass"
        ? `Work from both edges towards the middle: up to ${say.length(value)} of plate lie behind the line, and there is room for ${say.length(limit)}.`
        : `Up to ${say.length(value)} of plate lie behind the line, and there is room for ${say.length(limit)}: let the blank hang out past the frame, or make more pieces.`,
  });
}

import type { BrakeAsked } from "./asked.ts";
import type { FormingCase } from "./case.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge } from "./judge.ts";
import { ofShop } from "./ofShop.ts";

/** The longest line a brake has to bend: the longest bend line, or the longest element where none are laid out yet. [mm] */
export function longestLineMm({ bendLines, slantMm }: FormingCase): number {
  return bendLines && bendLines.length > 0
    ? Math.max(...bendLines.map((line) => line.lengthMm))
    : slantMm.longest;
}

/** Does the longest bend line go on the bed? [mm] */
export function brakeBed({ item, brake, say }: Omit<BrakeAsked, "dieMm">): Check {
  const value = longestLineMm(item);
  const limit = brake.bedLength;
  return judge({
    id: "brake-bed",
    title: "Longest bend line",
    value,
    limit,
    ...ofShop(say, "limit"),
    sense: "at most",
    unit: "mm",
    beyond: "fail",
    basis: DERIVED,
    rule: "longest bend line ≤ bed length",
    advice: (verdict) =>
      verdict === "pass"
        ? `The longest bend line, ${say.length(value)}, leaves ${say.length(limit - value)} of the bed free.`
        : `The longest bend line is ${say.length(value - limit)} longer than the bed: make the part in ${Math.ceil(value / limit)} courses with a ring seam, or use a longer brake.`,
  });
}

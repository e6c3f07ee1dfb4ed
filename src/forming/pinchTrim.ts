import type { RollAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge, state } from "./judge.ts";
import type { PlateRoll } from "./machine.ts";
import { isPipe } from "./skin.ts";

/** Above this share of the working width the crown of the rolls no longer lets the small end go free. [-] */
const CROWN_SHARE = 0.5;

/** Longest slant whose small end the crown of the rolls lets go free; null where nothing pinches. [mm] */
export function crownSlantMm({ arrangement, workingWidth }: PlateRoll): number | null {
  return arrangement === "pyramid" ? null : CROWN_SHARE * workingWidth;
}

/**
 * A cone is gripped at its large end only. Up to half the working width the crown of the rolls usually sees to that;
 * above it the pinch roll has to be trimmed out of parallel. A pyramid has no pinch, a pipe is gripped all along. [mm]
 */
export function pinchTrim({ item, roll, say }: RollAsked): Check | null {
  const half = crownSlantMm(roll);
  if (isPipe(item) || half === null) return null;
  const value = item.slantMm.longest;
  const words = {
    id: "pinch-trim",
    title: "Slant that the pinch can let go",
    value,
    sense: "at most" as const,
    unit: "mm",
    basis: COMMON_PRACTICE,
    rule: "slant ≤ half the working width, unless the pinch roll can be trimmed out of parallel",
  };
  const long = `The slant takes more than half the rolls (${say.length(half)})`;
  if (value > half && roll.pinchTrim === true)
    return state({
      ...words,
      verdict: "pass",
      advice: `${long}: trim the pinch roll out of parallel so that it grips the large end only.`,
    });
  const advice = {
    pass: `The slant takes no more than half the rolls, where their crown usually lets the small end go free: set the pinch parallel.`,
    caution: `${long}: find out whether the pinch roll can be trimmed out of parallel, and trim it to grip the large end only.`,
    fail: `${long} and the pinch roll cannot be trimmed out of parallel: make shorter courses, or use a roll with pinch trim.`,
  };
  return judge({
    ...words,
    limit: half,
    beyond: roll.pinchTrim === undefined || roll.arrangement === undefined ? "caution" : "fail",
    advice: (verdict) => advice[verdict],
  });
}

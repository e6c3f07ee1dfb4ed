import type { RollAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, DERIVED, judge, state } from "./judge.ts";
import { tightestRadiusMm } from "./skin.ts";

/**
 * Tightest middle radius square to an element against the machine's least. Where the machine states only the smallest
 * inside diameter it closes, it is known to bend to D/2 + t/2; beyond that nothing is known. [mm]
 */
export function bendRadius({ item, roll, say }: RollAsked): Check | null {
  const value = tightestRadiusMm(item);
  if (value === null) return null;
  const stated = roll.smallestRadius;
  const closes = roll.smallestDiameter;
  const limit = stated ?? (closes === undefined ? undefined : (closes + item.thicknessMm) / 2);
  const words = {
    id: "bend-radius",
    title: "Tightest bend",
    sense: "at least" as const,
    unit: "mm",
    basis: stated === undefined ? DERIVED : COMMON_PRACTICE,
    rule:
      stated === undefined && limit !== undefined
        ? "middle radius square to the element ≥ half of the smallest diameter it closes and half the thickness, to which it is known to bend"
        : "middle radius square to the element ≥ the smallest that the machine bends, by its handbook",
  };
  if (limit === undefined)
    return state({
      ...words,
      value,
      verdict: "caution",
      advice: `Ask the maker, or find by a trial strip, the smallest radius this roll bends at ${say.length(item.thicknessMm)}: the part needs ${say.length(value)}.`,
    });
  const advice = {
    pass: `The tightest bend, ${say.length(value)}, is no tighter than the ${say.length(limit)} this roll bends.`,
    caution: `Tighter than the ${say.length(limit)} that the smallest closed diameter proves: bend a trial strip to ${say.length(value)} first.`,
    fail: `Tighter than the ${say.length(limit)} this roll bends: use a roll with a smaller top roll, or the press brake.`,
  };
  return judge({
    ...words,
    value,
    limit,
    beyond: stated === undefined ? "caution" : "fail",
    advice: (verdict) => advice[verdict],
  });
}

import type { RollAsked } from "./asked.ts";
import { capacityLimit } from "./capacity.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge, NEAR_LIMIT } from "./judge.ts";
import type { PlateRoll } from "./machine.ts";
import { type Strength, strengthRatio } from "./ratedThickness.ts";
import { isPipe } from "./skin.ts";

/** Greatest thickness that the roll takes as a cone in plate of this strength: the rating's, scaled. [mm] */
export function greatestThicknessMm(plate: Strength, roll: PlateRoll): number {
  const rated = roll.coneRating?.thickness ?? roll.rating.thickness;
  return rated * (strengthRatio(plate, roll)?.factor ?? 1);
}

/**
 * However short the cone, its plate may not be thicker than the rating's: t ≤ T, or t ≤ t₀ of the maker's cone rating,
 * scaled for strength like the capacity. For a pipe the capacity says this already. Where the strength of the rating
 * is not known the plain rating is compared, and being within it is not yet enough. Near the limit it is asked about like
 * the capacity. [mm]
 */
export function thicknessLimit({ item, roll, say }: RollAsked): Check | null {
  if (isPipe(item)) return null;
  const strength = strengthRatio(item, roll);
  const limit = greatestThicknessMm(item, roll);
  return judge({
    id: "thickness",
    title: "Thickness",
    value: item.thicknessMm,
    limit,
    sense: "at most",
    unit: "mm",
    beyond: "fail",
    nearShare: strength ? capacityLimit(item, roll).nearShare : 0,
    basis: COMMON_PRACTICE,
    rule: "thickness ≤ rated thickness × √(rated strength / plate strength), the root at most 1, however short the cone",
    advice: (verdict) =>
      verdict === "caution"
        ? !strength
          ? `Within the rating of ${say.length(limit)}, but for which yield strength that holds is not known: ask the maker of the roll, for stronger plate must be thinner.`
          : item.thicknessMm > NEAR_LIMIT * limit
            ? `Near the limit, at ${say.percent(item.thicknessMm / limit)} of the ${say.length(limit)} that the roll takes in this material however short the cone: ask its maker for a calculation before rolling.`
            : `Within the ${say.length(limit)} that the roll takes by the certificate's yield, but beyond what it takes by the grade's, which hardens as it bends: ask the maker of the roll for a calculation.`
        : verdict === "pass"
          ? `Within the ${say.length(limit)} that the roll takes in this material.`
          : `Thicker than the ${say.length(limit)} that the roll takes in this material, however short the cone: use a larger roll, or have it rolled.`,
  });
}

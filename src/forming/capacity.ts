import type { RollAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge, NEAR_LIMIT } from "./judge.ts";
import type { PlateRoll } from "./machine.ts";
import { gradeRatio, type Strength, strengthRatio, type StrengthRatio } from "./ratedThickness.ts";
import { number } from "./say.ts";
import type { Say } from "./say.ts";
import { isPipe } from "./skin.ts";

/** A cone takes about half of what the same roll takes as a cylinder: only the side of the large end is gripped. */
const CONE_SHARE = 0.5;

/** What a roll takes of plate of one strength. */
export interface CapacityLimit {
  /** Greatest thickness times slant of a cone. [mm²] */
  readonly coneMm2: number;
  /** Greatest thickness of a cylinder. [mm] */
  readonly cylinderMm: number;
  /** Above this share of either it is near the limit. [-] */
  readonly nearShare: number;
  /** Null where the strength of the rating is not known: then all of it is near. */
  readonly strength: StrengthRatio | null;
}

/**
 * The rating scaled for the strength of the plate, and how much of it is near the limit.
 *
 * @see common practice, as for the check below
 */
export function capacityLimit(plate: Strength, roll: PlateRoll): CapacityLimit {
  const strength = strengthRatio(plate, roll);
  const scale = strength?.factor ?? 1;
  const { coneRating: own, rating } = roll;
  // A certificate shows the yield of this plate, not how much it hardens: within it but beyond the grade's is near.
  const byGrade = (gradeRatio(plate, roll)?.factor ?? 0) / scale;
  return {
    coneMm2: scale * (own ? own.thickness * own.slant : CONE_SHARE * rating.thickness * roll.workingWidth),
    cylinderMm: scale * rating.thickness,
    nearShare: Math.min(NEAR_LIMIT, byGrade),
    strength,
  };
}

/** What was compared, of which two strengths each mean was taken, and where they come from. */
function strengthWords({ plateMPa, ratedMPa, from, of }: StrengthRatio, say: Say): string {
  const [plate, rated] = [plateMPa, ratedMPa].map((one) => say.strength(one));
  if (from === "certificate") return `plate ${plate} by its certificate against ${rated}, yields`;
  const mean = (two: readonly number[]) => `(${two.map((one) => say.strength(one)).join(" + ")})/2`;
  return `means of yield and tensile: plate ${mean(of.plate)} = ${plate} by the materials page, rating ${mean(of.rated)} = ${rated} as structural plate`;
}

/**
 * Does the roll have the strength?
 *
 *   cone      t·L ≤ ½ T·W, or t·L ≤ t₀·L₀ where the maker gave a cone rating
 *   cylinder  t ≤ T
 *
 * T the rated thickness and t₀ that of the cone rating, both scaled for the strength of the plate (ratedThickness.ts);
 * W the working width, L the slant. Where the strength of the rating is not known the plain rating is compared, and
 * being within it is not yet enough. That t ≤ T and L ≤ W stands in checks of its own. [mm², for a pipe mm]
 *
 * @see common practice: a roll good for 1/4 in × 5 ft takes a cone of 1/8 in × 5 ft or of 1/4 in × 2 1/2 ft
 */
export function capacity({ item, roll, say }: RollAsked): Check {
  const pipe = isPipe(item);
  const thickness = item.thicknessMm;
  const slant = item.slantMm.longest;
  const { coneMm2, cylinderMm, nearShare, strength } = capacityLimit(item, roll);
  const scale = strength?.factor ?? 1;
  const limit = pipe ? cylinderMm : coneMm2;
  const value = pipe ? thickness : thickness * slant;

  const scaled =
    strength && scale < 1 ? ` (rating times ${number(scale, 2)}: ${strengthWords(strength, say)})` : "";
  const kind = pipe ? "a cylinder" : "a cone";
  const slantAt = say.length(Math.min(limit / thickness, roll.workingWidth));
  const advice = {
    pass: pipe
      ? `Within the cylinder rating of ${say.length(limit)}${scaled}.`
      : `Goes: at this thickness the roll takes a slant of ${slantAt} as a cone, and this one has ${say.length(slant)}${scaled}.`,
    caution:
      value > NEAR_LIMIT * limit
        ? `Near the limit, at ${say.percent(value / limit)} of what the roll takes as ${kind}${scaled}: ask its maker for a calculation before rolling.`
        : !strength
          ? `Within the rating, but for which yield strength that holds is not known: ask the maker of the roll, and give that strength beside the rating.`
          : `Within the rating by the certificate's yield, but beyond it by the grade's, which hardens as it bends: ask the maker of the roll for a calculation.`,
    fail: pipe
      ? `Too thick for this roll, which takes ${say.length(limit)} as a cylinder${scaled}: use a larger roll, or have it rolled.`
      : `Too heavy for this roll as a cone${scaled}: at ${say.length(thickness)} it takes a slant of ${slantAt}, and this one has ${say.length(slant)}; make it in shorter courses, or use a larger roll.`,
  };
  return judge({
    id: "capacity",
    title: pipe ? "Thickness against the cylinder rating" : "Thickness times slant",
    value,
    limit,
    sense: "at most",
    unit: pipe ? "mm" : "mm²",
    beyond: "fail",
    nearShare,
    basis: COMMON_PRACTICE,
    rule: pipe
      ? "thickness ≤ rated thickness × √(rated strength / plate strength), the root at most 1"
      : roll.coneRating
        ? "thickness × slant ≤ the maker's cone rating, its thickness × its slant, × √(rated strength / plate strength), the root at most 1"
        : "thickness × slant ≤ half of rated thickness × working width, × √(rated strength / plate strength), the root at most 1",
    advice: (verdict) => advice[verdict],
  });
}

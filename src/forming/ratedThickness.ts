import type { FormingCase } from "./case.ts";
import type { PlateRoll } from "./machine.ts";
import { nominalTensileMPa } from "./nominalTensile.ts";

/** What the strength of a plate is known by. */
export type Strength = Pick<FormingCase, "material" | "certificateYieldMPa">;

/** How the plate's strength compares with the strength that a roll is rated for. */
export interface StrengthRatio {
  /** Multiplies a rated thickness; never above 1. */
  readonly factor: number;
  /** Strengths compared. [MPa] */
  readonly plateMPa: number;
  readonly ratedMPa: number;
  readonly from: "certificate" | "grade";
  /** Yield and tensile strength that each mean is taken of; the yields alone where the certificate is asked. [MPa] */
  readonly of: { readonly plate: readonly number[]; readonly rated: readonly number[] };
}

const mean = (a: number, b: number) => (a + b) / 2;

/** Two yield strengths that differ by less are one: the standards give one grade as 36 ksi and as 250 MPa, 0.7 % apart. [-] */
export const SAME_GRADE_REL = 0.01;

/** The rated yield strength, in the figure that the plate has where both are one grade. [MPa] */
const ratedYieldMPa = (ratedMPa: number, plateMPa: number): number =>
  Math.abs(ratedMPa / plateMPa - 1) < SAME_GRADE_REL ? plateMPa : ratedMPa;

/** Compare by grade: the mean of yield and tensile strength on both sides, the rating's tensile as of structural plate. */
export function gradeRatio({ material }: Strength, { rating }: PlateRoll): StrengthRatio | null {
  if (rating.yieldMPa === undefined) return null;
  const plate = [material.yieldMPa, material.tensileMPa] as const;
  const yieldMPa = ratedYieldMPa(rating.yieldMPa, material.yieldMPa);
  const rated = [yieldMPa, nominalTensileMPa(yieldMPa)] as const;
  const [plateMPa, ratedMPa] = [mean(...plate), mean(...rated)];
  const factor = Math.min(1, Math.sqrt(ratedMPa / plateMPa));
  return { factor, plateMPa, ratedMPa, from: "grade", of: { plate, rated } };
}

/**
 * Factor on a rated thickness for the strength of the plate at hand:
 *
 *   factor = min(1, √(f_rated/f))
 *
 * since the bending moment of a full section goes as f·t². With a mill certificate f and f_rated are both yield
 * strengths. Without one both are the mean of yield and tensile strength: nominal yields alone would rate stainless,
 * whose nominal yield is below that of carbon plate but which hardens as it bends, better than carbon plate.
 * Plate softer than the rating does not raise it: gears, bearings and frame are rated too.
 *
 * @returns null where the shop does not know which strength the rating is for
 * @see common practice, no source, for the rule; the choice of strengths is derived here
 */
export function strengthRatio(item: Strength, roll: PlateRoll): StrengthRatio | null {
  const plateMPa = item.certificateYieldMPa;
  if (plateMPa === undefined || roll.rating.yieldMPa === undefined) return gradeRatio(item, roll);
  const ratedMPa = ratedYieldMPa(roll.rating.yieldMPa, plateMPa);
  const factor = Math.min(1, Math.sqrt(ratedMPa / plateMPa));
  return { factor, plateMPa, ratedMPa, from: "certificate", of: { plate: [plateMPa], rated: [ratedMPa] } };
}

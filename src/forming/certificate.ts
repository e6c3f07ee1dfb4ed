import type { PartAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge } from "./judge.ts";
import { SAME_GRADE_REL } from "./ratedThickness.ts";

/** Grades are told in rounded numbers: nearer to the grade's than this is the grade's. [-] */
const ROUNDED = 1 - SAME_GRADE_REL;

/**
 * Has the plate the strength that its grade promises, by its certificate? Asked only where there is one that says less:
 * then the number was copied wrongly, or the plate is not of this grade. [MPa]
 */
export function certificate({ item, say }: PartAsked): Check | null {
  const value = item.certificateYieldMPa;
  const { name, yieldMPa } = item.material;
  const limit = ROUNDED * yieldMPa;
  if (value === undefined || value >= limit) return null;
  return judge({
    id: "certificate",
    title: "Certificate against the grade",
    value,
    limit,
    sense: "at least",
    unit: "MPa",
    beyond: "caution",
    basis: DERIVED,
    rule: "yield strength of the certificate ≥ 0.99 × that of the grade, as the materials page has it",
    advice: () =>
      `The certificate says ${say.strength(value)}, and ${name} has at least ${say.strength(yieldMPa)}: look at the number and its unit on the certificate; plate as weak as that is not of this grade.`,
  });
}

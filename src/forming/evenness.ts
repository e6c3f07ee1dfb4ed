import type { FormingCase } from "./case.ts";
import { DERIVED } from "./judge.ts";
import { number } from "./say.ts";
import { isPointed } from "./skin.ts";
import { MOST_ZONES, zonesOf } from "./zones.ts";

/** How unevenly a round skin is curved, and what that means for the way it is made. */
export interface Evenness {
  /** Slackest over tightest radius square to the element, all round; null at a point. [-] */
  readonly spread: { readonly large: number; readonly small: number | null };
  /** Zones of one setting each that it takes; 0 where it cannot be rolled. */
  readonly zones: number;
  readonly recommendation: "roll" | "roll in zones" | "brake";
  readonly reason: string;
  /** Radius square to the element against plan angle, from the seam round, not repeated at the end. */
  readonly samples: readonly {
    readonly planDeg: number;
    readonly largeRadiusMm: number;
    readonly smallRadiusMm: number;
  }[];
  readonly basis: string;
}

const spread = (radii: readonly number[]) => Math.max(...radii) / Math.min(...radii);

/**
 * Measure of unevenness for a skin that is curved unevenly (eccentric cones, leaning pipes), with a recommendation and
 * its reason; null for all others.
 *
 * @see derived here
 */
export function evennessOf(item: FormingCase): Evenness | null {
  const { curvature } = item;
  if (!curvature || curvature.length === 0) return null;
  const large = spread(curvature.map(({ largeRadiusMm }) => largeRadiusMm));
  const small = isPointed(item) ? null : spread(curvature.map(({ smallRadiusMm }) => smallRadiusMm));
  const zones = zonesOf(item).length;
  const times = number(Math.max(large, small ?? 1), 2);
  const answer = (recommendation: Evenness["recommendation"], reason: string): Evenness => ({
    spread: { large, small },
    zones,
    recommendation,
    reason,
    samples: curvature.map(({ planDeg, largeRadiusMm, smallRadiusMm }) => ({
      planDeg,
      largeRadiusMm,
      smallRadiusMm,
    })),
    basis: DERIVED,
  });
  if (zones === 0)
    return answer(
      "brake",
      "It runs to a point, which no stop holds: bend it along its elements on the press brake.",
    );
  if (zones === 1)
    return answer(
      "roll",
      `The slackest radius is ${times} times the tightest, within what one setting and re-rounding serve: roll it like a right cone, each end by its template.`,
    );
  if (zones <= MOST_ZONES)
    return answer(
      "roll in zones",
      `The slackest radius is ${times} times the tightest: mark ${zones} zones on the blank and change radius and tilt from one to the next, each by its own template.`,
    );
  return answer(
    "brake",
    `The slackest radius is ${times} times the tightest, and one turn would take ${zones} settings: bend it along its elements on the press brake.`,
  );
}

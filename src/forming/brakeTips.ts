import { airBendForceN, V_DIE_HIGHEST } from "./airBend.ts";
import type { PartAsked } from "./asked.ts";
import { type BrakeBends, brakeBends } from "./brakeBends.ts";
import { middleLinesOf } from "./brakeLines.ts";
import type { PressBrake } from "./machine.ts";
import { wideDieFor } from "./sharpFold.ts";
import { tensileMostMPa } from "./tensileMost.ts";

/** The folds at the tips of corners that want a wider die than the lines. */
export interface BrakeTips {
  /** Least opening for the least inside radius advised. [mm] */
  readonly leastDieMm: number;
  /** Opening of the rack's narrowest die that has it; null where no rack is known, or none has. [mm] */
  readonly dieMm: number | null;
  /** The longest fold: what the middle line of a corner leaves at its tip. [mm] */
  readonly longestMm: number;
  /** What to set the force limit to for it, by the highest constant and the least strength; no more than the brake has. [kN] */
  readonly forceLimitKN: number;
  /** What that may be raised to for the strongest plate of the grade; null where that is not known. [kN] */
  readonly forceLimitMostKN: number | null;
  /** Why this die does not serve the lines: how far they would stop short over it, and how far its facets stand off. [mm] */
  readonly throughout: { readonly stopsShortMm: number; readonly facetMm: number };
}

const N_PER_KN = 1000;

const shortest = (hits: BrakeBends["hits"]): number =>
  Math.max(0, ...hits.map(({ stopsShortMm }) => stopsShortMm));

/**
 * How the tips are folded over a wider die of their own.
 *
 * @param bends the lines over their own die, which leave the tips
 * @see groover-memory for the force
 */
export function brakeTips(
  asked: PartAsked,
  { bends, brake }: { readonly bends: BrakeBends; readonly brake: PressBrake | undefined },
): BrakeTips {
  const { item } = asked;
  const { leastMm, wideMm } = wideDieFor(asked, brake);
  const dieMm = wideMm ?? leastMm;
  const longestMm = shortest(bends.zones.flatMap((zone) => middleLinesOf(bends.hits, zone)));
  const limit = (tensileMPa: number) =>
    Math.min(
      brake?.forceKN ?? Infinity,
      airBendForceN({
        tensileMPa,
        lineMm: longestMm,
        thicknessMm: item.thicknessMm,
        dieMm,
        constant: V_DIE_HIGHEST,
      }) / N_PER_KN,
    );
  const strongest = tensileMostMPa(asked);
  const over = brakeBends(item, dieMm) ?? bends;
  return {
    leastDieMm: leastMm,
    dieMm: wideMm,
    longestMm,
    forceLimitKN: limit(item.material.tensileMPa),
    forceLimitMostKN: strongest === null ? null : limit(strongest),
    throughout: {
      stopsShortMm: shortest(over.hits),
      facetMm: Math.max(0, ...over.zones.map(({ facetMm }) => facetMm)),
    },
  };
}

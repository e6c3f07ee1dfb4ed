import type { PartAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { judge, state } from "./judge.ts";
import { number } from "./say.ts";
import { isPointed, tightestRadiusMm } from "./skin.ts";

/** Elongation of the outermost fibre from which the code asks whether to heat-treat. [%] */
const ASK_ABOVE_PCT = 5;
/** As much as it lets such steel be formed cold to at the most without heat treatment, under conditions of its own. [%] */
const MOST_PCT = 40;
/** 100 × half the thickness over the radius; half as much again for a dish, which is curved both ways. */
const SINGLE_PCT = 50;
const DOUBLE_PCT = 75;

/** Metals that the limit is written for: carbon and low-alloy steel. */
const LIMITED: ReadonlySet<string> = new Set(["steel", "galvanised"]);

export interface ColdForming {
  readonly thicknessMm: number;
  /** Radius of the middle of the wall, formed. */
  readonly radiusMm: number;
  /** The same before; left out for flat plate. */
  readonly fromRadiusMm?: number;
  readonly doubly?: boolean;
}

/**
 * Elongation of the outermost fibre in cold forming: ε = 50 (t/R_f)(1 − R_f/R_o) %, 75 in place of 50 where curved both ways.
 *
 * @param forming thickness and middle radii [mm]; above 0
 * @returns [%]
 * @see asme-viii-1-ucs-79, as worked in published calculation sheets
 * @example formingStrainPct({ thicknessMm: 8, radiusMm: 204 }) // → 1.960784
 */
export function formingStrainPct({ thicknessMm, radiusMm, fromRadiusMm, doubly }: ColdForming): number {
  const relief = fromRadiusMm === undefined ? 1 : 1 - radiusMm / fromRadiusMm;
  return (doubly === true ? DOUBLE_PCT : SINGLE_PCT) * (thicknessMm / radiusMm) * relief;
}

/**
 * Strain at the tightest place, the radius taken square to the element. Up to the most that the code knows of it is a matter
 * for the code in force; beyond that no cold bend is made of it. [%]
 */
export function strain({ item, say }: PartAsked): Check {
  const words = {
    id: "strain",
    title: "Cold-forming strain",
    sense: "at most" as const,
    unit: "%",
    basis: "asme-viii-1-ucs-79",
    rule: "50 × thickness / middle radius square to the element ≤ 5 %",
  };
  const radius = tightestRadiusMm(item);
  if (radius === null)
    return state({
      ...words,
      verdict: "pass",
      advice: `Folded along lines, it is strained by punch and die rather than by its own radius: where a code governs the part, ask it for the least bend radius of this plate at ${say.length(item.thicknessMm)}.`,
    });
  if (isPointed(item)) {
    // The radius grows in proportion along the element from the point, so 10 t is reached at this share of it.
    const least = (SINGLE_PCT / ASK_ABOVE_PCT) * item.thicknessMm;
    const near = item.slantMm.longest * Math.min(1, least / radius);
    return state({
      ...words,
      verdict: "caution",
      advice: `Towards the point the strain has no limit: it passes 5 % within ${say.length(near)} of it; leave a small end there and cap it, and ask the code in force about the rest.`,
    });
  }
  const value = formingStrainPct({ thicknessMm: item.thicknessMm, radiusMm: radius });
  const pct = number(value, 1);
  if (!LIMITED.has(item.material.family))
    return state({
      ...words,
      rule: "50 × thickness / middle radius square to the element; the 5 % of the code is for carbon and low-alloy steel",
      value,
      verdict: value > ASK_ABOVE_PCT ? "caution" : "pass",
      advice: `At ${pct} % at the tightest bend ask the code in force what it allows ${item.material.name}: the 5 % of carbon steel is not its limit, and none is known here.`,
    });
  const leastMm = (limitPct: number) => say.length((item.thicknessMm * SINGLE_PCT) / limitPct);
  if (value > MOST_PCT)
    return judge({
      ...words,
      rule: "50 × thickness / middle radius square to the element ≤ 40 %",
      value,
      limit: MOST_PCT,
      beyond: "fail",
      advice: () =>
        `At ${pct} % it is beyond the 40 % that the code lets such steel be formed cold to at the most without heat treatment, and no cold bend: take thinner plate or a radius of at least ${leastMm(MOST_PCT)}, or have it formed warm by a written procedure.`,
    });
  return judge({
    ...words,
    value,
    limit: ASK_ABOVE_PCT,
    beyond: "caution",
    advice: (verdict) =>
      verdict === "pass"
        ? `At ${pct} % the tightest bend stays below the 5 % at which heat treatment becomes a question; the code in force decides.`
        : `At ${pct} % the plate may have to be heat-treated after forming, or formed warm: ask the code in force, or use thinner plate or a radius of at least ${leastMm(ASK_ABOVE_PCT)}.`,
  });
}

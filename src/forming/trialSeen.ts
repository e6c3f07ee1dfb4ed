import type { BearingsRead } from "./bearingsRead.ts";
import type { FormingCase } from "./case.ts";
import { closedOfGap } from "./closedOfGap.ts";
import { settable } from "./rollPlaces.ts";
import type { Say } from "./say.ts";

/** How the roll was set for a trial. */
export interface RollSet {
  /** Raise at the large edge, from the flat plate, along the slide. [mm] */
  readonly settingMm: number;
  /** What it was worked out from, where the scales at the bearings were read. */
  readonly bearings?: BearingsRead;
  /** By how much the drop end stood higher above the fixed end than the plan has it; left out where the tilt is the plan's. [mm] */
  readonly tiltMm?: number;
  /** The same by which half the slant stood higher above the large edge. [mm] */
  readonly middleMoreMm?: number;
}

/** What came out. */
export type TrialOutcome =
  /** Straight across at the large end, inside corner to inside corner; below 0 by how far the edges overlap. */
  | { readonly gapMm: number }
  /** Share of the turn; above 1 where the edges overlap. */
  | { readonly closed: number }
  | { readonly flat: true };

/** What was set, and what came out. */
export type TrialSeen = RollSet & TrialOutcome;

/** No blank is rolled further than this past the turn: a slip of the pen. [-] */
export const MOST_TOLD = 1.5;

type Cone = NonNullable<FormingCase["cone"]>;

/**
 * Share of the turn that came out, from that of the flat blank on, by the part that is bent.
 *
 * @param leadMm what the first pass leaves straight at one seam edge
 */
export function closedSeen(seen: TrialSeen, item: FormingCase, cone: Cone, leadMm: number): number {
  const flat = Math.sin(cone.halfAngleRad);
  if ("closed" in seen) return Math.max(flat, seen.closed);
  return "gapMm" in seen ? closedOfGap(item, cone, { gapMm: seen.gapMm, leadMm }) : flat;
}

interface SlideAsked {
  readonly item: FormingCase;
  readonly say: Say;
  /** From the flat plate to the end of the slide. [mm] */
  readonly travelMm: number;
}

/** Half of the least that a roll is set by, as it is told. */
const LEAST_SET = { mm: "0.05 mm", in: "0.0005 in" } as const;

/** Why a raise is none, so small that a roll set to it stands where the flat plate touches it; null where it is one. */
export const noRaise = ({ settingMm }: Pick<RollSet, "settingMm">, { units }: Say): string | null =>
  settable(settingMm, units) > 0 ? null : `a raise of less than ${LEAST_SET[units]} is none that can be set`;

/** What cannot have been: a raise that none is set to or beyond the slide, a gap or an overlap longer than its edge; null where it can. */
export function impossible(seen: TrialSeen, { item, say, travelMm }: SlideAsked): string | null {
  const flat = noRaise(seen, say);
  if (flat !== null) return flat;
  if (seen.settingMm > travelMm)
    return `a setting of ${say.length(seen.settingMm)} lies beyond the slide, which goes to ${say.length(travelMm)} above the flat plate`;
  if ("closed" in seen && seen.closed > MOST_TOLD)
    return `closed ${say.percent(seen.closed)} is further round than any blank goes`;
  const { cone, pieces } = item;
  if (!("gapMm" in seen) || !cone) return null;
  // A gap runs straight from end to end of an edge, so it is never longer than the edge.
  const edgeMm = (2 * Math.PI * cone.largeRadiusMm) / pieces;
  if (seen.gapMm > edgeMm)
    return `a gap of ${say.length(seen.gapMm)} is longer than the edge itself, ${say.length(edgeMm)}`;
  return seen.gapMm < -edgeMm
    ? `an overlap of ${say.length(-seen.gapMm)} is longer than the edge itself, ${say.length(edgeMm)}`
    : null;
}

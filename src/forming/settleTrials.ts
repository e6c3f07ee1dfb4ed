import type { RollAsked } from "./asked.ts";
import { type SetAt, type SetProblem, settleSet } from "./bearingsRead.ts";
import type { TrialOutcome, TrialSeen } from "./trialSeen.ts";
import type { ZoneOutcome, ZoneSeen } from "./zoneSeen.ts";

/** A trial of a first pass: of a right cone or pipe as a whole, or of one zone of an uneven skin. */
export type AnySeen = TrialSeen | ZoneSeen;

/** A trial as it is written down: set by the raise at the large edge, by those at the two bearings, or told by both. */
export type AnyTold = SetAt & (TrialOutcome | ZoneOutcome);

export type SettledTrials =
  | { readonly kind: "settled"; readonly seen: readonly AnySeen[] }
  /** Which of them, from 0, and what stands in the way of taking it. */
  | { readonly kind: "wrong"; readonly at: number; readonly why: SetProblem };

/** Counted from 1. */
export const zoneOf = (one: AnyTold): number => ("zone" in one ? one.zone : 1);

/**
 * How the roll was set for every trial, worked out. Where a trial tells the large edge alone, the roll stood at the tilt of
 * the last one before it of the same zone that told both bearings: a correction keeps the tilt.
 */
export function settleTrials(asked: RollAsked, told: readonly AnyTold[]): SettledTrials {
  const tilts = new Map<number, { readonly tiltMm: number; readonly middleMoreMm: number }>();
  const seen: AnySeen[] = [];
  for (const [at, one] of told.entries()) {
    const zone = zoneOf(one);
    const settled = settleSet(asked, one, zone);
    if (typeof settled === "string") return { kind: "wrong", at, why: settled };
    const { settingMm, tiltMm, middleMoreMm } = settled;
    if (one.bearings) tilts.set(zone, { tiltMm, middleMoreMm });
    seen.push({ ...one, settingMm, ...tilts.get(zone) } as AnySeen);
  }
  return { kind: "settled", seen };
}

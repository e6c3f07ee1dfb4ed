import type { RollAsked } from "./asked.ts";
import { type SetAt, settleSet, type SetWrong } from "./bearingsRead.ts";
import type { TrialOutcome, TrialSeen } from "./trialSeen.ts";
import type { ZoneOutcome, ZoneSeen } from "./zoneSeen.ts";

/** A trial of a first pass: of a right cone or pipe as a whole, or of one zone of an uneven skin. */
export type AnySeen = TrialSeen | ZoneSeen;

/** A trial as it is written down: set by the raise at the large edge, by those at the two bearings, or told by both. */
export type AnyTold = SetAt & (TrialOutcome | ZoneOutcome);

/** What is wrong with how one of them was set. */
export interface TrialSetWrong extends SetWrong {
  /** Which of them, from 0. */
  readonly at: number;
}

export type SettledTrials =
  | { readonly kind: "settled"; readonly seen: readonly AnySeen[] }
  | { readonly kind: "wrong"; readonly wrong: TrialSetWrong };

const zoneOf = (one: AnyTold): number => ("zone" in one ? one.zone : 1);

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
    if ("problem" in settled) return { kind: "wrong", wrong: { at, ...settled } };
    const { settingMm, tiltMm, middleMoreMm } = settled;
    if (one.bearings) tilts.set(zone, { tiltMm, middleMoreMm });
    seen.push({ ...one, settingMm, ...tilts.get(zone) } as AnySeen);
  }
  return { kind: "settled", seen };
}

/** "trial 2: 25 mm is not what …: leave out …", in a sentence without its full stop. */
export const wrongSet = ({ at, problem, remedy }: TrialSetWrong): string =>
  `trial ${at + 1}: ${problem}; ${remedy}`;

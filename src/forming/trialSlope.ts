import type { Trial } from "./trialCorrection.ts";

/** A machine answers its setting by no less and no more than this against the model. [-] */
export const LEAST_SLOPE = 0.67;
export const MOST_SLOPE = 1.5;

/** A roll is set no closer than this: two settings nearer than that are one. Derived here. [mm] */
export const SAME_SETTING_MM = 0.5;
/**
 * From here on two settings tell a slope: each is off by up to half of what a roll is set to, and 0.25 mm · √2 over 1.5 mm
 * is about the quarter by which slopes of machines differ. Derived here. [mm]
 */
const APART_MM = 3 * SAME_SETTING_MM;

type Setting = Pick<Trial, "settingMm">;
type Point = Pick<Trial, "settingMm" | "modelMm" | "sprangFlat">;

/** From 1 up to the first distance to 0 from the second on, smoothly. */
function fading(apartMm: number, fromMm: number, toMm: number): number {
  const share = Math.min(1, Math.max(0, (apartMm - fromMm) / (toMm - fromMm)));
  return 1 - share * share * (3 - 2 * share);
}

const apart = (one: Setting, other: Setting): number => Math.abs(one.settingMm - other.settingMm);

/** How far two trials are one and the same setting: 1 up to what a roll is set to, 0 where a slope can be told, smoothly between. [-] */
const alikeSet = (one: Setting, other: Setting): number =>
  fading(apart(one, other), SAME_SETTING_MM, APART_MM);

/** What each of these trials weighs beside one: alike as far as it was set alike, and written down twice no more than once. */
function weightsBeside(one: Point, trials: readonly Point[]): number[] {
  const told = trials.filter(({ sprangFlat }) => !sprangFlat);
  const times = (trial: Point) =>
    told.reduce((sum, other) => sum + fading(apart(trial, other), 0, SAME_SETTING_MM), 0);
  return trials.map((trial) => (trial.sprangFlat ? 0 : alikeSet(one, trial) / times(trial)));
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/**
 * A trial with its repeats as one: setting and model's setting are the mean of all that were set alike and took set, each
 * as far as it was.
 *
 * @param trials that it is one of
 */
export function withRepeats<T extends Point>(one: T, trials: readonly Point[]): T {
  if (one.sprangFlat) return one;
  const weights = weightsBeside(one, trials);
  const mean = (of: (trial: Point) => number) =>
    sumOf(trials.map((trial, i) => (weights[i] ?? 0) * of(trial))) / sumOf(weights);
  return { ...one, settingMm: mean(({ settingMm }) => settingMm), modelMm: mean(({ modelMm }) => modelMm) };
}

/** What a trial that took set counts for, so that it counts for one with all its repeats. [-] */
export function countOf(one: Point, trials: readonly Point[]): number {
  const weights = weightsBeside(one, trials);
  return (weights[trials.indexOf(one)] ?? 0) / sumOf(weights);
}

/** Setting asked for each millimetre of the model's, from two trials that both took set; null where they do not differ. */
function slopeOf(before: Point, last: Point): number | null {
  const model = last.modelMm - before.modelMm;
  if (before.sprangFlat || last.sprangFlat || model === 0) return null;
  return Math.min(MOST_SLOPE, Math.max(LEAST_SLOPE, (last.settingMm - before.settingMm) / model));
}

/** The slope of this machine, and how far its own trials have shown it: 0 where not at all and it is taken for 1. [-] */
export interface OwnSlope {
  readonly slope: number;
  readonly known: number;
}

/**
 * The slope of one trial and the one before it, repeats of each being one. What was set much like it tells none, and the
 * one before that is asked, as far as it was: nothing jumps where a trial is repeated.
 *
 * @param at place of the trial in the list, from 0
 */
export function ownSlope(trials: readonly Point[], at: number): OwnSlope {
  const last = trials[at];
  if (!last) throw new RangeError(`trial ${at} of ${trials.length}`);
  const mean = withRepeats(last, trials);
  let [slope, rest] = [0, 1];
  for (let i = at - 1; i >= 0 && rest > 0; i--) {
    const before = trials[i];
    if (!before) continue;
    const share = rest * (1 - alikeSet(before, last));
    if (share === 0) continue;
    const own = slopeOf(withRepeats(before, trials), mean);
    // What sprang flat in between says nothing, and nothing is asked beyond it.
    if (own === null) break;
    slope += share * own;
    rest -= share;
  }
  return { slope: slope + rest, known: 1 - rest };
}

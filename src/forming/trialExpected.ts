import { endRolled } from "./closure.ts";
import type { FormingCase } from "./case.ts";
import type { NextSetting, Trial } from "./trialCorrection.ts";
import type { TrialModel } from "./trialModel.ts";
import { ownSlope, withRepeats } from "./trialSlope.ts";

/**
 * Model's setting for what comes out of this setting, by the last trial with its repeats and by the slope that is known:
 * the way back of the correction.
 *
 * @param learned slope of this machine that other zones of the same plate have shown; null where nothing has
 * @returns null after a blank that took no set: it says too little
 * @see derived here
 */
export function expectedModelMm(
  trials: readonly Trial[],
  settingMm: number,
  learned: number | null = null,
): number | null {
  const last = trials.at(-1);
  if (!last || last.sprangFlat) return null;
  const mean = withRepeats(last, trials);
  const slope = learned ?? ownSlope(trials, trials.length - 1).slope;
  return mean.modelMm + (settingMm - mean.settingMm) / slope;
}

const HALVINGS = 50;

/** Where something that grows comes to a value, between two ends. */
export function whereReached(
  value: number,
  of: (at: number) => number,
  ends: readonly [number, number],
): number {
  let [low, high] = ends;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (of(middle) < value) low = middle;
    else high = middle;
  }
  return low;
}

interface Expecting {
  readonly model: TrialModel;
  readonly trials: readonly Trial[];
  readonly next: NextSetting;
  readonly disagrees: readonly number[];
}

/** Gap at the large end that the setting named for the next blank is to leave; null where trials say too little. [mm] */
export function expectedGapMm(
  item: FormingCase,
  { model, trials, next, disagrees }: Expecting,
): number | null {
  const last = trials.at(-1);
  if (!last || disagrees.length > 0 || next.kind === "check") return null;
  const settingMm =
    next.kind === "done" ? last.settingMm : next.kind === "raise" ? next.settingMm : next.nextBlankMm;
  const modelMm = expectedModelMm(trials, settingMm);
  if (modelMm === null) return null;
  const { cone, read, leadMm } = model;
  const closed = whereReached(modelMm, (at) => read({ settingMm, closed: at }).modelMm, [
    Math.sin(cone.halfAngleRad),
    1,
  ]);
  return endRolled(item, cone, { radiusMm: cone.largeRadiusMm, closed, leadMm }).insideGapMm;
}

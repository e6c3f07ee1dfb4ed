import { LEAST_SLOPE, MOST_SLOPE, ownSlope, SAME_SETTING_MM, withRepeats } from "./trialSlope.ts";

/** One trial: where the roll was set, how far it closed, and where the model would set it for that. */
export interface Trial {
  /** At the large edge; of a roll that was tilted otherwise, what comes to the same at half the slant with the plan's tilt. */
  readonly settingMm: number;
  /** What was set at the large edge, where that is another. */
  readonly atMm?: number;
  /** Share of the turn that came out; above 1 where the edges overlap. */
  readonly closed: number;
  readonly modelMm: number;
  /** Less raise than this brings no plate on any roll as far, in terms of `settingMm`; not present where nobody knows. */
  readonly leastMm?: number;
  /** Did the blank spring back flat, so that the trial only says "more than this"? */
  readonly sprangFlat: boolean;
}

/** Where what came out of a trial lies: to the window of the pass and its cap. */
export type Place = "open" | "in the window" | "past the window" | "past the cap";

/** Bent less than this share of the final bend a trial took no set that a slope could be read from. Derived here. [-] */
export const TOOK_SET = 0.05;

/** The model's settings for the closure aimed at, for the ends of the window, and for the cap. */
export interface Aim {
  readonly aimMm: number;
  readonly fromMm: number;
  readonly toMm: number;
  readonly capMm: number;
  /** The plan's own "high" at the large edge for the end of the window: no blank that took no set is raised past it. */
  readonly highMm: number;
}

/** By what a setting is corrected: the model's difference, the slope of two trials, that of other zones, a short step after a flat blank, or the more careful of trials that do not agree. */
export type By = "offset" | "slope" | "learned" | "short" | "careful";

export type NextSetting =
  /** The blank lies in the window: this pass is done. */
  | { readonly kind: "done" }
  /** Raise to this and roll again. */
  | { readonly kind: "raise"; readonly settingMm: number; readonly by: By }
  /** It is closed too far: no further raise on this blank in this pass; set this for the next blank. */
  | { readonly kind: "overshot"; readonly nextBlankMm: number; readonly by: By }
  /** No setting is safe to name before something is looked at: a reading, or the roll and the plate. */
  | { readonly kind: "check"; readonly why: "flat" | "disagree" | "reading" };

/** A raise that brought less than this share of the model's set is a reading that is wrong, not a machine: twice as slow as the slowest. [-] */
const HARDLY = 1 / (2 * MOST_SLOPE);
/** After a blank that took no set the raise grows by this share of itself at most. Derived here. [-] */
const SHORT_STEP = 0.25;
/** By one trial that took set it grows by this share at most: where more seems wanted, nought or the plate is likelier wrong. Derived here. [-] */
const LONG_STEP = 0.5;
/** Closures of one setting may differ by this from blank to blank. Derived here. [-] */
const SCATTER = 0.05;

/**
 * A raise this many times the plan's own high, which holds for strong plate bent as if to the end, is rather a reading of the
 * machine's scale. On simulated rolls no honest raise comes to 1.2 times it. Derived here. [-]
 */
const READING = 1.25;

/**
 * A raise under this share of what the model asks for what came out was not counted from the flat plate. On simulated rolls
 * no honest one comes down to 0.75 of it. Derived here. [-]
 */
const SHORT = 0.6;

/** The least that an honest raise is, for what the model asks at half the slant, told for the large edge at the plan's tilt. [mm] */
export const leastRaiseMm = (modelMm: number, middleHigherMm: number): number =>
  SHORT * modelMm - middleHigherMm;

/** Is this less than any plate is bent so far by? */
export const isTooLittle = ({
  settingMm,
  leastMm,
  sprangFlat,
}: Pick<Trial, "settingMm" | "leastMm" | "sprangFlat">): boolean =>
  !sprangFlat && leastMm !== undefined && settingMm < leastMm;

/** Is this rather what the machine's scale shows than a raise counted from the flat plate, as it is too much or too little? */
export const likeReading = (
  trial: Pick<Trial, "settingMm" | "leastMm" | "sprangFlat">,
  { highMm }: Pick<Aim, "highMm">,
): boolean => trial.settingMm > READING * highMm || isTooLittle(trial);

/** What was set at the large edge. [mm] */
export const atLargeEdge = ({ settingMm, atMm }: Pick<Trial, "settingMm" | "atMm">): number =>
  atMm ?? settingMm;

/** What is odd about two trials: the higher raise left the blank less closed, hardly further closed, or the same raise left blanks unlike. */
export type Odd = "less" | "hardly" | "unlike";

/**
 * Do two trials contradict each other, and in what? More raise never leaves a blank less closed, hardly ever as it was, and the
 * same raise leaves blanks much alike; where trials say otherwise, one of them was read or written wrong, or the plate differs.
 *
 * @returns null where they agree
 */
export function oddOf(one: Trial, other: Trial): Odd | null {
  const [low, high] = one.settingMm <= other.settingMm ? [one, other] : [other, one];
  if (low.sprangFlat && high.sprangFlat) return null;
  const apartMm = high.settingMm - low.settingMm;
  if (apartMm > 0 && high.closed < low.closed) return "less";
  if (apartMm <= SAME_SETTING_MM) return Math.abs(high.closed - low.closed) > SCATTER ? "unlike" : null;
  return !low.sprangFlat && high.modelMm - low.modelMm < HARDLY * apartMm ? "hardly" : null;
}

/** Which of the earlier trials contradict the last one: their places in the list, from 0. */
export function disagreeing(trials: readonly Trial[]): number[] {
  const last = trials.at(-1);
  if (!last) return [];
  return trials.slice(0, -1).flatMap((one, i) => (oddOf(one, last) ? [i] : []));
}

/**
 * The next setting by one trial alone: the model's difference, but no further than the liveliest machine (m = 0.67) may
 * go without passing the cap, nor by more than half the raise itself. A blank that took no set says little: a quarter of its raise more at most, and never past
 * the plan's own high.
 *
 * @param slope of this machine, where something else than this trial has shown it
 */
export function careful(
  { settingMm, modelMm, sprangFlat }: Trial,
  { aimMm, capMm, highMm }: Aim,
  slope = 1,
): number {
  const wanted = slope * (aimMm - modelMm);
  if (wanted < 0) return settingMm + wanted;
  const safe = Math.min(wanted, LEAST_SLOPE * (capMm - modelMm));
  if (!sprangFlat) return settingMm + Math.min(safe, LONG_STEP * settingMm);
  return Math.min(settingMm + Math.min(safe, SHORT_STEP * settingMm), highMm);
}

/** Trials that do not agree: the lowest that any of them asks, so that no blank passes the cap as long as one of them is right. */
function afterDisagreement(last: Trial, others: readonly Trial[], aim: Aim): NextSetting {
  const lowest = Math.min(...[last, ...others].map((one) => careful(one, aim)));
  if (!last.sprangFlat && last.modelMm > aim.toMm)
    return { kind: "overshot", nextBlankMm: lowest, by: "careful" };
  return lowest > last.settingMm
    ? { kind: "raise", settingMm: lowest, by: "careful" }
    : { kind: "check", why: "disagree" };
}

/**
 * Correct the setting after a trial. What the model does not know is mostly an offset (give of the pinch, deflection of
 * the frame), so the first correction moves by the model's difference; from two trials that both took set the slope is known:
 *
 *   offset  s₂ = s₁ + (aim − model₁)
 *   slope   s₃ = s₂ + m (aim − model₂),   m = Δs/Δmodel, held within 0.67 … 1.5
 *
 * Where the slope is not known yet, the step is kept so short that even the liveliest machine (m = 0.67) stays below
 * the cap: a blank closed too far cannot be opened by rolling on. Repeats of one setting are one trial, their mean. A raise
 * far beyond the plan's own high, or far under what such a bend takes, is asked about first. After a blank that took no set
 * the step is shorter still, and where trials contradict each other the lowest setting that any of them asks is taken.
 *
 * @param trials in order, at least one; settings and model settings [mm]
 * @param learned slope of this machine that other zones of the same plate have shown; null where nothing has
 * @throws RangeError without a trial
 * @see derived here
 */
export function nextSetting(trials: readonly Trial[], aim: Aim, learned: number | null = null): NextSetting {
  const last = trials.at(-1);
  if (!last) throw new RangeError(`trials: ${trials.length}`);
  const { modelMm, settingMm, sprangFlat } = last;
  if (trials.some((one) => likeReading(one, aim))) return { kind: "check", why: "reading" };
  if (!sprangFlat && modelMm >= aim.fromMm && modelMm <= aim.toMm) return { kind: "done" };

  const others = trials.filter((_, i) => disagreeing(trials).includes(i));
  if (others.length > 0) return afterDisagreement(last, others, aim);
  if (sprangFlat) {
    const next = careful(last, aim);
    return next > settingMm
      ? { kind: "raise", settingMm: next, by: "short" }
      : { kind: "check", why: "flat" };
  }
  const mean = withRepeats(last, trials);
  const own = ownSlope(trials, trials.length - 1);
  const slope = learned ?? own.slope;
  const by = learned !== null ? "learned" : own.known > 0 ? "slope" : "offset";
  // What is measured of one setting scatters; the blank in hand is further open, or further closed, all the same.
  const least = LEAST_SLOPE * (modelMm > aim.toMm ? aim.toMm - modelMm : aim.fromMm - modelMm);
  const wantedMm = mean.settingMm + slope * (aim.aimMm - mean.modelMm);
  if (modelMm > aim.toMm) return { kind: "overshot", nextBlankMm: Math.min(wantedMm, settingMm + least), by };
  const shortMm = Math.min(careful(mean, aim, slope), careful(last, aim, MOST_SLOPE));
  const nextMm = shortMm + own.known * (wantedMm - shortMm);
  return { kind: "raise", settingMm: Math.max(nextMm, Math.min(settingMm + least, careful(last, aim))), by };
}

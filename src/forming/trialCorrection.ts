/** One trial: where the roll was set, and where the model would set it for the closure that came out. */
export interface Trial {
  readonly settingMm: number;
  readonly modelMm: number;
  /** Did the blank spring back flat, so that the trial only says "more than this"? */
  readonly sprangFlat: boolean;
}

/** The model's settings for the closure aimed at, for the ends of the window, and for the cap. */
export interface Aim {
  readonly aimMm: number;
  readonly fromMm: number;
  readonly toMm: number;
  readonly capMm: number;
}

export type NextSetting =
  /** The blank lies in the window: this pass is done. */
  | { readonly kind: "done" }
  /** Raise to this and roll again. */
  | { readonly kind: "raise"; readonly settingMm: number; readonly by: "offset" | "slope" }
  /** It is closed too far: no further raise on this blank in this pass; set this for the next blank. */
  | { readonly kind: "overshot"; readonly nextBlankMm: number; readonly by: "offset" | "slope" };

/** A machine answers its setting by no less and no more than this against the model. [-] */
const LEAST_SLOPE = 0.67;
const MOST_SLOPE = 1.5;

/** Setting asked for each millimetre of the model's, from two trials that both took set; null where they do not differ. */
function slopeOf(before: Trial, last: Trial): number | null {
  const model = last.modelMm - before.modelMm;
  if (before.sprangFlat || last.sprangFlat || model === 0) return null;
  return Math.min(MOST_SLOPE, Math.max(LEAST_SLOPE, (last.settingMm - before.settingMm) / model));
}

/**
 * Correct the setting after a trial. What the model does not know is mostly an offset (give of the pinch, deflection of
 * the frame), so the first correction moves by the model's difference; from two trials that both took set the slope is known:
 *
 *   offset  s₂ = s₁ + (aim − model₁)
 *   slope   s₃ = s₂ + m (aim − model₂),   m = Δs/Δmodel, held within 0.67 … 1.5
 *
 * Where the slope is not known yet, the step is kept so short that even the liveliest machine (m = 0.67) stays below
 * the cap: a blank closed too far cannot be opened by rolling on.
 *
 * @param trials in order, at least one; settings and model settings [mm]
 * @throws RangeError without a trial
 * @see derived here
 */
export function nextSetting(trials: readonly Trial[], aim: Aim): NextSetting {
  const last = trials.at(-1);
  if (!last) throw new RangeError(`trials: ${trials.length}`);
  const { modelMm, settingMm, sprangFlat } = last;
  if (!sprangFlat && modelMm >= aim.fromMm && modelMm <= aim.toMm) return { kind: "done" };

  const before = trials.at(-2);
  const slope = before ? slopeOf(before, last) : null;
  const by = slope === null ? "offset" : "slope";
  const wanted = (slope ?? 1) * (aim.aimMm - modelMm);
  if (wanted < 0) return { kind: "overshot", nextBlankMm: settingMm + wanted, by };
  const safe = slope === null ? LEAST_SLOPE * (aim.capMm - modelMm) : wanted;
  return { kind: "raise", settingMm: settingMm + Math.min(wanted, safe), by };
}

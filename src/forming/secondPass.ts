import { movedBy, type RollPlaces } from "./rollPlaces.ts";
import type { Place, Trial } from "./trialCorrection.ts";
import type { TrialModel } from "./trialModel.ts";
import { ownSlope, withRepeats } from "./trialSlope.ts";

/** Where the second pass starts, by what the first one taught. */
export interface SecondPass extends RollPlaces {
  /** Moved from the plan's own start for the closed part by so much. [mm] */
  readonly movedMm: number;
  /** Is that held back by the plan's own high for the closed part? */
  readonly held: boolean;
}

interface Placed extends Trial {
  readonly place: Place;
}

/**
 * Start of the second pass after a trial in the window of the first, or past it and not past the cap, whose blank is kept: the plan's start for the closed part, moved by what
 * this roll asked beyond the model, the tilt being the plan's:
 *
 *   moved = (s + (model middle − model large) at the trial's tilt − model(k)) + (m − 1)(model(1) − model(k)),
 *
 * m the slope of the last two trials where both took set, else 1; repeats of one setting are one trial, their mean. Held below the plan's own high at both ends: the
 * templates and the gap decide the rest.
 *
 * @param trials in order; the last of those within the window counts
 * @param learned slope of this machine that other zones of the same plate have shown; null where nothing has
 * @returns null where there is none such, or the plan has no start
 * @see derived here
 */
export function secondPass(
  trials: readonly Placed[],
  { aim, pass }: Pick<TrialModel, "aim" | "pass">,
  learned: number | null = null,
): SecondPass | null {
  const at = trials.findLastIndex(
    ({ modelMm, sprangFlat, place }) =>
      !sprangFlat && modelMm >= aim.fromMm && modelMm <= aim.capMm && place !== "past the cap",
  );
  const kept = trials[at];
  const [first, finished] = [pass("trial")?.start, pass("finished")];
  if (!kept || !first || !finished?.start || finished.middle.bestMm === null) return null;
  const last = withRepeats(kept, trials);
  const slope = learned ?? ownSlope(trials, at).slope;
  const offsetMm = last.settingMm + first.middleMm - first.largeMm - last.modelMm;
  const wantedMm = offsetMm + (slope - 1) * (finished.middle.bestMm - last.modelMm);
  const { start, large, small } = finished;
  const mostMm = Math.min(
    (large.highMm ?? Infinity) - start.largeMm,
    (small.highMm ?? Infinity) - start.smallMm,
  );
  const movedMm = Math.min(wantedMm, Math.max(0, mostMm));
  return { ...movedBy(start, movedMm), movedMm, held: movedMm < wantedMm };
}

import { likeReading } from "./trialCorrection.ts";
import { countOf, LEAST_SLOPE, MOST_SLOPE, withRepeats } from "./trialSlope.ts";
import type { ZoneModel, ZoneRead } from "./zoneModel.ts";

/** A trial as every zone may learn from it: setting and model's setting at half the slant, where the plan aims. [mm] */
interface Point {
  readonly zone: number;
  readonly settingMm: number;
  readonly modelMm: number;
  /** Repeats of one setting of one zone weigh as much as one trial together. [-] */
  readonly weight: number;
}

/** What the trials of all zones have taught about the machine and the plate, which are the same for every zone. */
export interface Learned {
  readonly points: readonly Point[];
  /** Setting asked for each millimetre of the model's; null where fewer than two zones took set. [-] */
  readonly slope: number | null;
}

/**
 * How firmly the slope is held to 1 before trials say otherwise: one trial is off by about this share of what the model
 * asks (plate, template, the change from zone to zone), over what slopes of machines differ by. Derived here. [-]
 */
export const TRIAL_OFF = 0.03;
const SLOPES_DIFFER = 0.25;

const isDoubtful = (models: readonly ZoneModel[], read: ZoneRead): boolean => {
  const model = models[read.zone - 1];
  return model !== undefined && likeReading(read, model.aim);
};

/**
 * The pinch's give, the frame and the springback of one plate on one roll make one curve, setting over model's setting,
 * for all zones. Its slope from all trials that took set, by least squares, drawn towards 1 as firmly as the trials lie
 * near each other; repeats of one setting are one trial, their mean:
 *
 *   m = (Σ Δx Δy + w)/(Σ Δx² + w),   w = (mean x · 0.03/0.25)²,   held within 0.67 … 1.5
 *
 * @param reads of all zones, in order; what is rather a reading of the scale teaches nothing
 * @see derived here (ridge regression)
 */
export function learnedOf(models: readonly ZoneModel[], reads: readonly ZoneRead[]): Learned {
  const points = reads.filter((read) => !read.sprangFlat && !isDoubtful(models, read)).map(pointIn(models));
  if (new Set(points.map(({ zone }) => zone)).size < 2) return { points, slope: null };
  const x = meanOf(points, ({ modelMm }) => modelMm);
  const y = meanOf(points, ({ settingMm }) => settingMm);
  const firm = ((x * TRIAL_OFF) / SLOPES_DIFFER) ** 2;
  let [xy, xx] = [firm, firm];
  for (const { modelMm, settingMm, weight } of points) {
    xy += weight * (modelMm - x) * (settingMm - y);
    xx += weight * (modelMm - x) ** 2;
  }
  return { points, slope: Math.min(MOST_SLOPE, Math.max(LEAST_SLOPE, xy / xx)) };
}

/** Mean over points, repeats counted as one. */
export function meanOf(points: readonly Point[], of: (point: Point) => number): number {
  const sum = (value: (point: Point) => number) => points.reduce((all, one) => all + value(one), 0);
  return sum((one) => one.weight * of(one)) / sum(({ weight }) => weight);
}

/** A trial of a zone as a point, its repeats in the same zone taken into it. */
const pointIn =
  (models: readonly ZoneModel[]) =>
  (read: ZoneRead, _: number, all: readonly ZoneRead[]): Point => {
    const own = all.filter(({ zone }) => zone === read.zone);
    const { zone, settingMm, modelMm } = withRepeats(read, own);
    return {
      zone,
      settingMm: settingMm + (models[zone - 1]?.middleHigherMm ?? 0),
      modelMm,
      weight: countOf(read, own),
    };
  };

/** Where a zone that has no trial of its own starts, by what the others taught. */
export interface TaughtStart {
  /** At the large edge. [mm] */
  readonly settingMm: number;
  /** The zones whose trials it is taken from. */
  readonly from: readonly number[];
}

/** How far from the start of the window to its middle a zone that has no trial yet is set. Derived here, by simulated rolls. [-] */
const WITHIN = 0.25;
/** How many trials a start is taken from: the nearest ones, and of these the lowest that one asks. */
const NEAREST = 2;

/**
 * First setting of a zone that has no trial: from the trials whose bend lies nearest, moved by the slope to just
 * within the window (what another zone taught says less than a trial of its own would), but never so far that a
 * machine of slope 0.67 to 1.5 would pass this zone's cap; of two trials the lower.
 *
 * @returns null where no trial took set, or the start lies below the flat plate
 * @see derived here
 */
export function taughtStart(
  { aim, middleHigherMm, number }: ZoneModel,
  { points, slope }: Learned,
): TaughtStart | null {
  const targetMm = aim.fromMm + WITHIN * (aim.aimMm - aim.fromMm);
  const latest = points.filter((one, i) => points.findLastIndex(({ zone }) => zone === one.zone) === i);
  const near = latest
    .filter(({ zone }) => zone !== number)
    .sort((a, b) => Math.abs(a.modelMm - targetMm) - Math.abs(b.modelMm - targetMm))
    .slice(0, NEAREST);
  if (near.length === 0) return null;
  const asked = near.map(({ settingMm, modelMm }) => {
    const wanted = (slope ?? 1) * (targetMm - modelMm);
    const room = aim.capMm - modelMm;
    return settingMm + Math.min(wanted, room > 0 ? LEAST_SLOPE * room : MOST_SLOPE * room);
  });
  const settingMm = Math.min(...asked) - middleHigherMm;
  return settingMm > 0 ? { settingMm, from: near.map(({ zone }) => zone).sort((a, b) => a - b) } : null;
}

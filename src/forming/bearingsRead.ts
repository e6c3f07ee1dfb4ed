import type { RollAsked } from "./asked.ts";
import { rollSettings } from "./rollSettings.ts";
import { isPipe } from "./skin.ts";
import { SAME_SETTING_MM } from "./trialSlope.ts";

/**
 * What the scales at the two bearings showed in the first pass, drop end and fixed end, and what they show on the flat
 * plate; where that is left out they were read from their own 0. [mm]
 */
export interface BearingsRead {
  readonly dropMm: number;
  readonly fixedMm: number;
  readonly dropAt0Mm?: number;
  readonly fixedAt0Mm?: number;
}

/** How the roll was set for a trial, as it is written down: the raise at the large edge, those at the two bearings, or both. [mm] */
export interface SetAt {
  readonly settingMm?: number | undefined;
  readonly bearings?: BearingsRead | undefined;
}

/** Where a straight roll stands between two bearings: the drop end's share at each place; that of the fixed end is what is left to 1. [-] */
interface BearingShares {
  readonly large: number;
  readonly middle: number;
  readonly small: number;
}

/** How the roll was set, worked out. */
export interface Settled {
  /** Raise at the large edge. [mm] */
  readonly settingMm: number;
  /** By how much the drop end stood higher above the fixed end than the plan has it; 0 where only the large edge was told. [mm] */
  readonly tiltMm: number;
  /** The same by which half the slant stood higher above the large edge. [mm] */
  readonly middleMoreMm: number;
}

/**
 * What stands in the way of taking a setting: nothing told, no bearings in the shop file, a pipe askew, raise and bearings that
 * disagree, no raise, a cone's small end lower than its large one.
 */
export type SetProblem = "nothing" | "no bearings" | "askew" | "disagree" | "no raise" | "swapped";

/** The geometry that raises at bearings are worked out by, for one zone. */
export interface BearingsOf {
  readonly shares: BearingShares;
  /** Plan's raise at the drop end less that at the fixed end, at the first trial. [mm] */
  readonly planSpanMm: number;
}

/** Raise and raise told beside it may differ by this: both bearings are read to a half of what a roll is set to. Derived here. [mm] */
const ROUNDING_MM = SAME_SETTING_MM;

/** A tilt the other way than the plan's is no slip in setting it from this share of the plan's on. Derived here. [-] */
const SWAPPED = 0.5;

/** How many digits of a share are told, and reckoned with, so that whoever does the sum again gets the same. */
export const SHARE_DIGITS = 3;
const shareOf = (value: number): number => Number(value.toFixed(SHARE_DIGITS));

/** Raises from their own 0. [mm] */
export function raisesOf({ dropMm, fixedMm, dropAt0Mm = 0, fixedAt0Mm = 0 }: BearingsRead) {
  return { dropMm: dropMm - dropAt0Mm, fixedMm: fixedMm - fixedAt0Mm };
}

/**
 * Shares of the two bearings at the edges and at half the slant in the first pass, the small edge on the stop at the drop end.
 *
 * @returns null where the shop gives no bearings, or there is no plan
 * @see derived here: the roll is straight
 */
export function bearingsOf(asked: RollAsked, zone = 1): BearingsOf | null {
  const { roll } = asked;
  const answer = rollSettings(asked);
  if (answer.kind === "none" || !roll.bearings) return null;
  const { stopMm, zones } = answer.settings;
  const own = zones[zone - 1];
  const start = own?.passes.find(({ id }) => id === "trial")?.start;
  if (!own || start?.smallBearingMm == null || start.largeBearingMm === null) return null;
  const [drop, fixed] = roll.bearings;
  const lengthMm = roll.workingWidth + drop + fixed;
  const at = (fromDropEndMm: number) => shareOf((roll.workingWidth + fixed - fromDropEndMm) / lengthMm);
  const small = stopMm ?? 0;
  return {
    shares: { small: at(small), middle: at(small + own.slantMm / 2), large: at(small + own.slantMm) },
    planSpanMm: start.smallBearingMm - start.largeBearingMm,
  };
}

/**
 * The raise at the large edge, and the tilt, of a trial as it is written down.
 *
 * @param zone counted from 1
 * @returns what stands in the way where the bearings cannot be taken, or do not agree with the raise told beside them
 */
export function settleSet(asked: RollAsked, { settingMm, bearings }: SetAt, zone = 1): Settled | SetProblem {
  if (!bearings) return settingMm === undefined ? "nothing" : { settingMm, tiltMm: 0, middleMoreMm: 0 };
  const of = bearingsOf(asked, zone);
  if (!of) return "no bearings";
  const { dropMm, fixedMm } = raisesOf(bearings);
  const spanMm = dropMm - fixedMm;
  const pipe = isPipe(asked.item);
  // A pipe stands square: both bearings have one raise.
  if (pipe && Math.abs(spanMm) > ROUNDING_MM) return "askew";
  const { shares, planSpanMm } = of;
  const largeMm = fixedMm + (pipe ? 1 / 2 : shares.large) * spanMm;
  if (settingMm !== undefined && Math.abs(settingMm - largeMm) > ROUNDING_MM) return "disagree";
  if (largeMm <= 0) return "no raise";
  // Nobody rolls a cone with the small end lower: the blank would be left the more open where it is to be bent the most.
  if (!pipe && -spanMm * Math.sign(planSpanMm) > Math.max(2 * ROUNDING_MM, SWAPPED * Math.abs(planSpanMm)))
    return "swapped";
  const tiltMm = pipe ? 0 : spanMm - planSpanMm;
  return { settingMm: largeMm, tiltMm, middleMoreMm: tiltMm * (shares.middle - shares.large) };
}

import type { RollAsked } from "./asked.ts";
import { rollSettings } from "./rollSettings.ts";
import { settable } from "./rollPlaces.ts";
import { number, type Say } from "./say.ts";
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
export interface BearingShares {
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
  /** The sum that was done, in words; null where there was none. */
  readonly sum: string | null;
}

/** What is wrong with how a trial was set: the key of its row, what, and what would be right. */
export interface SetWrong {
  readonly key: "setting" | "drop" | "fixed";
  readonly problem: string;
  readonly remedy: string;
}

/** The geometry that raises at bearings are worked out by, for one zone. */
export interface BearingsOf {
  readonly shares: BearingShares;
  /** Plan's raise at the drop end less that at the fixed end, at the first trial. [mm] */
  readonly planSpanMm: number;
}

/** Raise and raise told beside it may differ by this: both bearings are read to a half of what a roll is set to. Derived here. [mm] */
const ROUNDING_MM = SAME_SETTING_MM;

/** How many digits of a share are told, and reckoned with, so that whoever does the sum again gets the same. */
const SHARE_DIGITS = 3;
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

/** "drop end 190 − 150 = 40 mm, fixed end 18 mm": the raises, from what the scales showed. */
function raisesSaid(read: BearingsRead, say: Say): string {
  const one = (name: string, at: number, at0: number | undefined) =>
    at0 === undefined
      ? `${name} ${say.length(settable(at, say.units))}`
      : `${name} ${say.bare(settable(at, say.units))} − ${say.bare(settable(at0, say.units))} = ${say.length(settable(at - at0, say.units))}`;
  return `${one("drop end", read.dropMm, read.dropAt0Mm)}, ${one("fixed end", read.fixedMm, read.fixedAt0Mm)}`;
}

/** "0.412 × 40 + 0.588 × 18 = 27.1 mm at the large edge". */
function sumSaid(read: BearingsRead, { shares }: BearingsOf, largeMm: number, say: Say): string {
  const { dropMm, fixedMm } = raisesOf(read);
  const bare = (mm: number) => say.bare(settable(mm, say.units));
  const [drop, fixed] = [number(shares.large, SHARE_DIGITS), number(1 - shares.large, SHARE_DIGITS)];
  const scales = read.dropAt0Mm === undefined && read.fixedAt0Mm === undefined;
  const head = scales ? "" : `${raisesSaid(read, say)}; `;
  return `${head}${drop} × ${bare(dropMm)} + ${fixed} × ${bare(fixedMm)} = ${say.length(settable(largeMm, say.units))} at the large edge`;
}

const wrong = (key: SetWrong["key"], problem: string, remedy: string): SetWrong => ({ key, problem, remedy });

/** A pipe stands square: both bearings have one raise. */
function squarely(read: BearingsRead, say: Say): number | SetWrong {
  const { dropMm, fixedMm } = raisesOf(read);
  if (Math.abs(dropMm - fixedMm) <= ROUNDING_MM) return (dropMm + fixedMm) / 2;
  return wrong(
    "drop",
    `the drop end at ${say.length(dropMm)} and the fixed end at ${say.length(fixedMm)} do not stand alike, and a pipe wants the roll square`,
    "set both bearings alike and roll the trial again, or give setting alone, the raise of both",
  );
}

/**
 * The raise at the large edge, and the tilt, of a trial as it is written down.
 *
 * @param zone counted from 1
 * @returns what is wrong where the bearings cannot be taken, or do not agree with the raise told beside them
 */
export function settleSet(asked: RollAsked, set: SetAt, zone = 1): Settled | SetWrong {
  const { item, say } = asked;
  const { settingMm, bearings } = set;
  if (!bearings)
    return settingMm === undefined
      ? wrong("setting", "there is neither a raise nor two bearings", "give setting, or drop and fixed")
      : { settingMm, tiltMm: 0, middleMoreMm: 0, sum: null };
  const of = bearingsOf(asked, zone);
  if (!of)
    return wrong(
      "drop",
      "the shop file gives no bearings of this roll, so that the raise at the large edge cannot be worked out from them",
      "give bearings in the shop file, from each end of the roll face to its bearing, or setting, the raise at the large edge",
    );
  const { dropMm, fixedMm } = raisesOf(bearings);
  const pipe = isPipe(item);
  const square = pipe ? squarely(bearings, say) : null;
  if (square !== null && typeof square !== "number") return square;
  const largeMm = square ?? of.shares.large * dropMm + (1 - of.shares.large) * fixedMm;
  const sum = pipe ? `${raisesSaid(bearings, say)}: one raise` : sumSaid(bearings, of, largeMm, say);
  if (settingMm !== undefined && Math.abs(settingMm - largeMm) > ROUNDING_MM)
    return wrong(
      "setting",
      `${say.length(settingMm)} is not what the two bearings come to (${sum})`,
      "leave out whichever was not read at the roll: setting, or drop and fixed",
    );
  if (largeMm <= 0)
    return wrong(
      "drop",
      `the two bearings come to no raise at the large edge (${sum})`,
      "write the raises from each bearing's own 0, or what the scales show together with dropAt0 and fixedAt0",
    );
  const tiltMm = pipe ? 0 : dropMm - fixedMm - of.planSpanMm;
  return {
    settingMm: largeMm,
    tiltMm,
    middleMoreMm: tiltMm * (of.shares.middle - of.shares.large),
    sum,
  };
}

import { degrees } from "../geometry/angle.ts";
import type { RollAsked } from "./asked.ts";
import { bearingsOf, type BearingsRead, raisesOf } from "./bearingsRead.ts";
import { type RollPlaces, setting } from "./rollPlaces.ts";
import { number } from "./say.ts";
import { sumOf } from "./setWords.ts";
import { isPipe } from "./skin.ts";
import type { RollSet } from "./trialSeen.ts";
import { SAME_SETTING_MM } from "./trialSlope.ts";

/** Where both bearings are set: raises from their own 0, and what the scales then show where that at 0 is known. [mm] */
export interface BearingsSet {
  readonly dropMm: number;
  readonly fixedMm: number;
  readonly dropScaleMm: number | null;
  readonly fixedScaleMm: number | null;
}

/** What there is to say to whoever read the bearings. */
export interface BearingsNext {
  /** By how much the drop end stood higher above the fixed end than the plan has it. [mm] */
  readonly tiltMm: number;
  /** What the last trial's bearings came to at the large edge, as a sum in words. */
  readonly sum: string;
  /** First pass; null where something is to be looked at first. */
  readonly set: BearingsSet | null;
  /** Start of the second pass, the job turned round; null where there is none yet. */
  readonly secondPass: BearingsSet | null;
  /** The same in sentences. */
  readonly words: string;
}

/** Where both bearings go: the small edge lies towards the drop end in the first pass, towards the fixed end in the second. */
function bearingsAt(places: RollPlaces | null, read: BearingsRead, turned: boolean): BearingsSet | null {
  if (places?.smallBearingMm == null || places.largeBearingMm === null) return null;
  const { smallBearingMm: small, largeBearingMm: large } = places;
  const [dropMm, fixedMm] = turned ? [large, small] : [small, large];
  const { dropAt0Mm, fixedAt0Mm } = read;
  return {
    dropMm,
    fixedMm,
    dropScaleMm: dropAt0Mm === undefined ? null : dropAt0Mm + dropMm,
    fixedScaleMm: fixedAt0Mm === undefined ? null : fixedAt0Mm + fixedMm,
  };
}

function setSaid({ say }: RollAsked, set: BearingsSet, when: string): string {
  const { dropMm, fixedMm, dropScaleMm, fixedScaleMm } = set;
  const scales =
    dropScaleMm === null || fixedScaleMm === null
      ? ""
      : `; the scales then show ${setting(dropScaleMm, say)} and ${setting(fixedScaleMm, say)}`;
  return `${when}, from 0: drop end ${setting(dropMm, say)}, fixed end ${setting(fixedMm, say)}${scales}.`;
}

/** "The drop end stood 24 mm above the fixed end, and the plan has 21.7 mm: …"; nothing where the tilt is the plan's. */
function tiltSaid(
  asked: RollAsked,
  read: BearingsRead,
  { tiltMm, zone, second }: { readonly tiltMm: number; readonly zone: number; readonly second: boolean },
): string {
  const { roll, say } = asked;
  const of = bearingsOf(asked, zone);
  if (!of || !roll.bearings || Math.abs(tiltMm) <= SAME_SETTING_MM) return "";
  const { dropMm, fixedMm } = raisesOf(read);
  const spanMm = dropMm - fixedMm;
  const lengthMm = roll.workingWidth + roll.bearings[0] + roll.bearings[1];
  const apart = (mm: number) => `${setting(Math.abs(mm), say)} ${mm < 0 ? "below" : "above"} the fixed end`;
  const angle = (mm: number) => `${number(degrees(Math.atan(Math.abs(mm) / lengthMm)), 2)}°`;
  const more = Math.abs(spanMm) > Math.abs(of.planSpanMm) && spanMm * of.planSpanMm >= 0 ? "more" : "less";
  const how =
    spanMm * of.planSpanMm < 0 ? "a tilt the other way than the plan's" : `${more} tilt than the plan's`;
  const off = setting(Math.abs(tiltMm), say);
  return ` The drop end stood ${apart(spanMm)}; in the plan it stands ${apart(of.planSpanMm)}. That is ${how}, by ${off} from bearing to bearing: ${angle(spanMm)} was set, ${angle(of.planSpanMm)} is planned. The next setting keeps the tilt that was set${second ? "; the second pass starts at the plan's" : ""}.`;
}

/**
 * The next numbers for both bearings, and how their tilt compares with the plan's.
 *
 * @param last how the roll was set for the last trial; null where nobody read the bearings
 */
export function bearingsNext(
  asked: RollAsked,
  last: RollSet | undefined,
  {
    set,
    secondPass,
    zone = 1,
  }: { readonly set: RollPlaces | null; readonly secondPass: RollPlaces | null; readonly zone?: number },
): BearingsNext | null {
  const read = last?.bearings;
  if (!read || isPipe(asked.item)) return null;
  const tiltMm = last.tiltMm ?? 0;
  const [first, second] = [bearingsAt(set, read, false), bearingsAt(secondPass, read, true)];
  const sum = sumOf(asked, read, zone);
  const words = [
    sum === "" ? "" : ` Read at the bearings: ${sum}.`,
    first ? ` ${setSaid(asked, first, "At the bearings")}` : "",
    second ? ` ${setSaid(asked, second, "At the bearings in the second pass, the job turned round")}` : "",
    tiltSaid(asked, read, { tiltMm, zone, second: second !== null }),
  ].join("");
  return { tiltMm, sum, set: first, secondPass: second, words };
}

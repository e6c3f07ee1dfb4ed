import type { RollAsked } from "./asked.ts";
import { bearingsOf } from "./bearingsRead.ts";
import { type RollPlaces, setting } from "./rollPlaces.ts";
import { rollSetting, sectionOf } from "./rollSetting.ts";
import { isPipe } from "./skin.ts";
import { plateOf } from "./springback.ts";
import { whereReached } from "./trialExpected.ts";
import { LEAST_SLOPE, SAME_SETTING_MM } from "./trialSlope.ts";
import type { ZoneModel, ZoneRead } from "./zoneModel.ts";

type End = "large" | "small";

/** How a zone's roll is to be tilted otherwise, so that both ends come round together. */
export interface ZoneTilt {
  /** The end that came out behind the other. */
  readonly behind: End;
  /** Where the roll is set with that tilt. [mm] */
  readonly set: RollPlaces;
  /** By how much each place moves for it, beside the raise that is named. [mm] */
  readonly more: RollPlaces;
}

/** The ends are apart where their bends differ by more than this share of themselves: a template or a depth is read to about half of it. Derived here. [-] */
const APART = 0.05;

interface BothEnds extends ZoneRead {
  readonly largeModelMm: number;
  readonly smallModelMm: number;
  readonly largeShare: number;
  readonly smallShare: number;
}

const hasBoth = (read: ZoneRead): read is BothEnds =>
  !read.sprangFlat &&
  read.largeModelMm !== null &&
  read.smallModelMm !== null &&
  read.largeShare !== null &&
  read.smallShare !== null;

/** Which end came out behind the other, by the bend at both; null where they differ by no more than is read. */
function endBehind({ largeShare, smallShare }: BothEnds): End | null {
  if (Math.abs(largeShare - smallShare) <= (APART * (largeShare + smallShare)) / 2) return null;
  return largeShare < smallShare ? "large" : "small";
}

interface TiltAsked {
  readonly model: ZoneModel;
  readonly last: ZoneRead;
  /** Where the roll stood for the last trial. */
  readonly stood: RollPlaces;
  /** Where both ends would be raised to alike; null where one of them is at its limit and stays where it is. */
  readonly set: RollPlaces | null;
}

/**
 * How much higher the small end is to stand above the large one than it would, by the model's settings for one bend at both
 * ends, each moved by what its own end asked beyond the model in the trial. [mm]
 */
function turnedMm(
  { item, roll }: RollAsked,
  read: BothEnds,
  { model, stood, set, behind }: TiltAsked & { readonly behind: End },
): number | null {
  const section = sectionOf(roll);
  if (!section) return null;
  const modelMm = (finalMm: number, share: number) => {
    const answer = rollSetting(section, plateOf(item), finalMm / share);
    return answer.kind === "setting" ? answer.bestMm : Infinity;
  };
  const endsAt = (share: number) => ({
    large: modelMm(model.zone.largeRadiusMm, share),
    small: modelMm(model.zone.smallRadiusMm, share),
  });
  const asks = { large: stood.largeMm - read.largeModelMm, small: stood.smallMm - read.smallModelMm };
  const from = set ?? stood;
  const middle = ({ largeMm, smallMm }: RollPlaces) => (largeMm + smallMm) / 2;
  const wanted = (read.largeModelMm + read.smallModelMm) / 2 + middle(from) - middle(stood);
  const mean = (share: number) => {
    const { large, small } = endsAt(share);
    return (large + small) / 2;
  };
  const share = set
    ? whereReached(wanted, mean, [Number.EPSILON, 1])
    : read[behind === "small" ? "largeShare" : "smallShare"];
  const ends = endsAt(share);
  if (!Number.isFinite(ends.large + ends.small)) return null;
  if (set) return ends.small + asks.small - (ends.large + asks.large) - (from.smallMm - from.largeMm);
  return behind === "small"
    ? ends.small + asks.small - from.smallMm
    : -(ends.large + asks.large - from.largeMm);
}

/**
 * The tilt by which both ends of a zone come round together: turned about half the slant, which stays where the correction
 * has it; about the end that is at its limit where no raise of both helps. Held so short that the end which is raised
 * stays below its cap on the liveliest machine.
 *
 * @returns null where both ends came out alike as far as they are read, the shop gives no bearings, a pipe is rolled, or
 * there is no room for it
 * @see derived here: each end by the model for itself, the roll straight
 */
export function zoneTilt(asked: RollAsked, tilt: TiltAsked): ZoneTilt | null {
  const { model, last, stood, set } = tilt;
  const of = bearingsOf(asked, model.number);
  if (!of || isPipe(asked.item) || !hasBoth(last)) return null;
  const behind = endBehind(last);
  const turned = behind && turnedMm(asked, last, { ...tilt, behind });
  if (behind === null || turned === null || turned > 0 !== (behind === "small")) return null;
  const { shares } = of;
  const from = set ?? stood;
  const still = set ? shares.middle : behind === "small" ? shares.large : shares.small;
  /** For each part of the drop end's share that a place lies from where it stays. */
  const slope = turned / (shares.small - shares.large);
  const raised = slope * (shares[behind] - still) + from[`${behind}Mm`] - stood[`${behind}Mm`];
  const room = LEAST_SLOPE * (model[behind].capMm - last[`${behind}ModelMm`]);
  const before = from[`${behind}Mm`] - stood[`${behind}Mm`];
  const kept = raised > room ? Math.max(0, room - before) / (raised - before) : 1;
  if (kept * Math.abs(turned) < 2 * SAME_SETTING_MM) return null;
  const at = (share: number) => kept * slope * (share - still);
  const more = {
    largeMm: at(shares.large),
    smallMm: at(shares.small),
    smallBearingMm: at(1),
    largeBearingMm: at(0),
  };
  return {
    behind,
    more,
    set: {
      largeMm: from.largeMm + more.largeMm,
      smallMm: from.smallMm + more.smallMm,
      smallBearingMm: (from.smallBearingMm ?? 0) + more.smallBearingMm,
      largeBearingMm: (from.largeBearingMm ?? 0) + more.largeBearingMm,
    },
  };
}

/** "The small end came out behind the large end: …": the tilt in numbers, at both bearings. */
export function tiltWords({ say }: RollAsked, { behind, set, more }: ZoneTilt, alone: boolean): string {
  const by = (mm: number | null) =>
    `${setting(Math.abs(mm ?? 0), say)} ${(mm ?? 0) < 0 ? "lower" : "higher"}`;
  const at = (mm: number | null) => setting(mm ?? 0, say);
  const other = behind === "small" ? "large" : "small";
  const how = alone
    ? `To raise the ${behind} end alone, the ${other} edge staying where it is`
    : "To bring both round together, half the slant staying as named";
  return ` The ${behind} end came out behind the ${other} end. ${how}, set the drop end ${by(more.smallBearingMm)} and the fixed end ${by(more.largeBearingMm)}, in all ${at(set.smallBearingMm)} and ${at(set.largeBearingMm)}. With the next trial write down both bearings.`;
}

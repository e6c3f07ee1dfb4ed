import type { RollAsked } from "./asked.ts";
import { type AnySeen, type AnyTold, settleTrials, type TrialSetWrong, wrongSet } from "./settleTrials.ts";
import { correctTrials, impossibleTrial, type TrialAnswer } from "./trials.ts";
import type { ZoneSeen } from "./zoneSeen.ts";
import { correctZones, impossibleZoneTrial, type ZonesAnswer } from "./zoneTrials.ts";

const BY_GAP =
  "a right cone or pipe is corrected as a whole: give the gap at the large end, or how far it closed";
const BY_ZONES =
  "an eccentric cone has no one closure to correct by: give the zone, and the inside radius that came out at both ends, square to the element line";

/** A trial as the zones take it: one that names no zone and has neither gap nor closure is of the first. */
function inZone(seen: AnySeen): ZoneSeen | null {
  if ("zone" in seen) return seen;
  return "flat" in seen ? { zone: 1, ...seen } : null;
}

export type AnyAnswer =
  | Exclude<TrialAnswer | ZonesAnswer, { readonly kind: "none" }>
  /** With what is wrong, where it is how one of the trials was set. */
  | { readonly kind: "none"; readonly why: string; readonly wrong?: TrialSetWrong };

/** The next setting by the trials of a part on this roll: as a whole, or zone by zone. */
export function correctAny(asked: RollAsked, told: readonly AnyTold[]): AnyAnswer {
  const settled = settleTrials(asked, told);
  if (settled.kind === "wrong") return { kind: "none", why: wrongSet(settled.wrong), wrong: settled.wrong };
  const { seen } = settled;
  if (asked.item.cone) {
    const whole = seen.flatMap((one) => ("zone" in one ? [] : [one]));
    return whole.length === seen.length ? correctTrials(asked, whole) : { kind: "none", why: BY_GAP };
  }
  const zoned = seen.map(inZone).filter((one) => one !== null);
  return zoned.length === seen.length ? correctZones(asked, zoned) : { kind: "none", why: BY_ZONES };
}

/** Why a trial cannot have been of this part on this roll, to be told before it is kept; null where it can. */
export function impossibleAny(asked: RollAsked, told: AnyTold): string | null {
  const settled = settleTrials(asked, [told]);
  if (settled.kind === "wrong") return `${settled.wrong.problem}; ${settled.wrong.remedy}`;
  const [seen] = settled.seen;
  if (!seen) return null;
  if (asked.item.cone) return "zone" in seen ? BY_GAP : impossibleTrial(asked, seen);
  const zoned = inZone(seen);
  return zoned ? impossibleZoneTrial(asked, zoned) : BY_ZONES;
}

import type { RollAsked } from "./asked.ts";
import type { AnySeen } from "./settleTrials.ts";
import { correctTrials, type TrialAnswer } from "./trials.ts";
import type { ZoneSeen } from "./zoneSeen.ts";
import { correctZones, type ZonesAnswer } from "./zoneTrials.ts";

export const BY_GAP =
  "a right cone or pipe is corrected as a whole: give the gap at the large end, or how far it closed";
export const BY_ZONES =
  "an eccentric cone has no one closure to correct by: give the zone, and the inside radius that came out at both ends, square to the element line";

/** A trial as the zones take it: one that names no zone and has neither gap nor closure is of the first. */
export function inZone(seen: AnySeen): ZoneSeen | null {
  if ("zone" in seen) return seen;
  return "flat" in seen ? { zone: 1, ...seen } : null;
}

/** The next setting by the trials of a part on this roll: as a whole, or zone by zone. */
export function correctAny(asked: RollAsked, seen: readonly AnySeen[]): TrialAnswer | ZonesAnswer {
  if (asked.item.cone) {
    const whole = seen.flatMap((one) => ("zone" in one ? [] : [one]));
    return whole.length === seen.length ? correctTrials(asked, whole) : { kind: "none", why: BY_GAP };
  }
  const zoned = seen.map(inZone).filter((one) => one !== null);
  return zoned.length === seen.length ? correctZones(asked, zoned) : { kind: "none", why: BY_ZONES };
}

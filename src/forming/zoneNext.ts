import { nextSetting, type NextSetting } from "./trialCorrection.ts";
import { LEAST_SLOPE, ownSlope } from "./trialSlope.ts";
import type { Learned } from "./zoneLearned.ts";
import type { ZoneModel, ZoneRead } from "./zoneModel.ts";

/** Where one end stands against its own limits. */
type End = "large" | "small";

export type ZoneNext =
  | NextSetting
  /** The middle is still open and an end has come to its limit: no raise of both ends helps, the tilt has to change. */
  | { readonly kind: "check"; readonly why: "tilt"; readonly end: End };

/** Of what kind the answer for a zone is; "taught" where only other zones were tried, "plan" where nothing has been learned for it. */
export type ZoneKind = ZoneNext["kind"] | "taught" | "plan";

/** What both ends were measured to ask by the model, against their limits. [mm] */
function endsOf({ large, small }: ZoneModel, { largeModelMm, smallModelMm }: ZoneRead) {
  const ends = [
    { end: "large", at: largeModelMm, ...large },
    { end: "small", at: smallModelMm, ...small },
  ] as const;
  return ends.flatMap((one) => (one.at === null ? [] : [{ ...one, at: one.at }]));
}

/** The end that is bent furthest past the cap, or null. */
export function endPastCap(model: ZoneModel, read: ZoneRead): End | null {
  const past = endsOf(model, read)
    .filter(({ at, capMm }) => at > capMm)
    .sort((a, b) => b.at - b.capMm - (a.at - a.capMm));
  return past[0]?.end ?? null;
}

/**
 * Next setting of one zone after its own trials: as for a right cone, by what half the slant asks, with the slope that all
 * zones taught; no end is raised further than half-way from the end of its window to its cap, nor so far that a machine of
 * slope 0.67 would pass it while the slope is not known.
 *
 * @param reads of this zone, in order, at least one
 * @see derived here
 */
export function zoneNext(model: ZoneModel, reads: readonly ZoneRead[], { slope }: Learned): ZoneNext {
  const last = reads.at(-1);
  if (!last) throw new RangeError(`trials of zone ${model.number}: none`);
  const next = nextSetting(reads, model.aim, slope);
  const ends = endsOf(model, last);
  const past = Math.max(0, ...ends.map(({ at, toMm, capMm }) => (at > capMm ? at - toMm : 0)));
  if (past > 0) {
    const lower = Math.min(
      last.settingMm - LEAST_SLOPE * past,
      next.kind === "overshot" ? next.nextBlankMm : Infinity,
    );
    return { kind: "overshot", nextBlankMm: lower, by: "careful" };
  }
  if (next.kind !== "raise") return next;
  const wanted = next.settingMm - last.settingMm;
  const told = slope === null ? ownSlope(reads, reads.length - 1) : { slope, known: 1 };
  // Trials that contradict each other show no slope.
  const known = next.by === "careful" || next.by === "short" ? 0 : told.known;
  const limits = ends.map(({ end, at, toMm, capMm }) => {
    const lively = LEAST_SLOPE * (capMm - at);
    return { end, room: lively + known * (told.slope * ((toMm + capMm) / 2 - at) - lively) };
  });
  const tightest = limits.sort((a, b) => a.room - b.room)[0];
  if (!tightest || tightest.room >= wanted) return next;
  if (tightest.room <= 0) return { kind: "check", why: "tilt", end: tightest.end };
  return { ...next, settingMm: last.settingMm + tightest.room, by: "careful" };
}

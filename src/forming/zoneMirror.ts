import type { By } from "./trialCorrection.ts";
import { LEAST_SLOPE } from "./trialSlope.ts";
import { TRIAL_OFF } from "./zoneLearned.ts";
import type { SecondPass } from "./secondPass.ts";
import type { ZoneModel, ZoneRead } from "./zoneModel.ts";
import type { ZoneKind, ZoneNext } from "./zoneNext.ts";
import { alikeNumbers } from "./zoneWords.ts";

/** What one zone's own trials, or those of others, came to. */
export interface ZoneCame {
  readonly next: ZoneNext | null;
  readonly kind: ZoneKind;
  /** At the large edge; null where something is to be looked at first. [mm] */
  readonly settingMm: number | null;
  readonly by: By | null;
  readonly from: readonly number[];
  readonly disagrees: readonly number[];
  readonly secondPass: SecondPass | null;
}

interface One extends ZoneCame {
  readonly model: ZoneModel;
  /** Of this zone's own trials. */
  readonly last: ZoneRead | undefined;
}

interface ZoneSet extends One {
  /** Did it come out unlike its mirror, so that it is set by itself? */
  readonly apart: boolean;
}

/** How high a zone may be set: where its trials say; one in its window as far as the liveliest machine stays within it. [mm] */
function most({ kind, settingMm, last, model }: One): number {
  if (settingMm === null) return Infinity;
  const room = kind === "done" && last ? model.aim.toMm - last.modelMm : 0;
  return settingMm + LEAST_SLOPE * Math.max(0, room);
}

/** The one setting of zones that were tried: while all lie in their windows the mean, else the highest that suits each. [mm] */
function commonOf(tried: readonly One[]): number {
  if (tried.every(({ kind }) => kind === "done"))
    return tried.reduce((sum, { settingMm }) => sum + (settingMm ?? 0), 0) / tried.length;
  return Math.min(...tried.map(most));
}

/** The lowest of the second passes, which none of the zones overshoots. */
const lowest = (tried: readonly One[]): SecondPass | null =>
  tried
    .flatMap(({ secondPass }) => (secondPass ? [secondPass] : []))
    .sort((a, b) => a.movedMm - b.movedMm)[0] ?? null;

/** What one zone asks beyond the model, and what it asks by it, at half the slant. [mm] */
const askedIn = ({ last, model }: One) =>
  last && !last.sprangFlat
    ? [{ beyondMm: last.settingMm + model.middleHigherMm - last.modelMm, modelMm: last.modelMm }]
    : [];

/**
 * Did zones of the same radii come out further apart than two trials of one plate are read? Then plate or roll is another
 * there, and set alike they would be lopsided again.
 */
function cameApart(tried: readonly One[]): boolean {
  const all = tried.flatMap(askedIn);
  const beyond = all.map(({ beyondMm }) => beyondMm);
  const readMm = 2 * TRIAL_OFF * Math.max(0, ...all.map(({ modelMm }) => modelMm));
  return all.length > 1 && Math.max(...beyond) - Math.min(...beyond) > readMm;
}

function agreed(group: readonly One[]): ZoneSet[] {
  const own = (apart: boolean) => group.map((one) => ({ ...one, apart: apart && one.last !== undefined }));
  const tried = group.filter(({ last }) => last);
  if (tried.length === 0 || group.length === 1) return own(false);
  const from = tried.map(({ model }) => model.number);
  // Where one is to be looked at first the other is not raised either: they would come out unlike.
  if (tried.some(({ kind }) => kind === "check"))
    return own(false).map((one) =>
      one.kind === "check"
        ? { ...one, secondPass: null }
        : { ...one, next: null, kind: "check", settingMm: null, by: null, from, secondPass: null },
    );
  const [settingMm, secondPass] = [commonOf(tried), lowest(tried)];
  if (cameApart(tried)) return own(true);
  return own(false).map((one) => ({
    ...one,
    settingMm,
    secondPass,
    ...(one.last ? {} : { kind: "taught" as const, from }),
  }));
}

/**
 * Zones that mirror each other are bent to the same radii, and a part of which one half was set unlike the other would be
 * lopsided: they get one and the same setting, learned from the trials of both. Where they came out apart each is corrected
 * by itself.
 *
 * @returns in the order of the zones
 * @see derived here
 */
export function mirroredAlike(zones: readonly One[]): ZoneSet[] {
  return alikeNumbers(zones.map(({ model }) => model.zone))
    .flatMap((numbers) => agreed(numbers.flatMap((number) => zones[number - 1] ?? [])))
    .sort((a, b) => a.model.number - b.model.number);
}

/** The other zones of the same radii, counted from 1. */
export const mirrorsOf = (models: readonly ZoneModel[], { number }: ZoneModel): readonly number[] =>
  (alikeNumbers(models.map(({ zone }) => zone)).find((group) => group.includes(number)) ?? []).filter(
    (one) => one !== number,
  );

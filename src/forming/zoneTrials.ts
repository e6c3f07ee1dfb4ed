import type { RollAsked } from "./asked.ts";
import { belowZero, warned } from "./belowZero.ts";
import type { FirstPass } from "./firstPass.ts";
import { DERIVED } from "./judge.ts";
import { edgesOnly, type RollPlaces } from "./rollPlaces.ts";
import { secondPass as secondOf, type SecondPass } from "./secondPass.ts";
import { isPipe } from "./skin.ts";
import { expectedModelMm, whereReached } from "./trialExpected.ts";
import { type By, disagreeing, type Place } from "./trialCorrection.ts";
import { learnedSaid, zoneAdvice } from "./zoneAdvice.ts";
import { type Learned, learnedOf, meanOf, taughtStart } from "./zoneLearned.ts";
import { mirroredAlike, mirrorsOf, type ZoneCame } from "./zoneMirror.ts";
import { type ZoneModel, zoneModels, type ZoneRead } from "./zoneModel.ts";
import { endPastCap, type ZoneKind, type ZoneNext, zoneNext } from "./zoneNext.ts";
import { impossibleInZone, type ZoneSeen } from "./zoneSeen.ts";

/** One trial of a zone as it is understood. */
export interface ZoneTrial extends ZoneRead {
  readonly place: Place;
}

/** Where one zone is set next. */
export interface ZoneCorrection {
  /** Counted from 1. */
  readonly zone: number;
  readonly fromDeg: number;
  readonly toDeg: number;
  readonly trials: readonly ZoneTrial[];
  /** As after the trials of a right cone; "taught" where only other zones were tried, "plan" where nothing has been learned for it. */
  readonly kind: ZoneKind;
  /** Where it is set now; null where something is to be looked at first. */
  readonly set: RollPlaces | null;
  readonly by: By | null;
  /** The zones from whose trials a zone that has none starts. */
  readonly from: readonly number[];
  /** Earlier trials of this zone that contradict its last one, counted from 1. */
  readonly disagrees: readonly number[];
  /** Where its second pass starts; null before a trial of it lies in the window. */
  readonly secondPass: SecondPass | null;
  /** The other zones of the same radii, which are set alike. */
  readonly mirrors: readonly number[];
  /** The end that has come to its limit while half the slant is still open; else null. */
  readonly endAtLimit: "large" | "small" | null;
  /** Is the blank in hand set aside because a zone of it is past its cap, so that every setting is for the next one? */
  readonly nextBlank: boolean;
  /** What stands in the way of `set` on this machine, in sentences. */
  readonly problems: readonly string[];
  readonly advice: string;
}

/** What to do after trials of the first pass of a skin that is curved unevenly. */
export interface ZonesCorrection {
  readonly machine: string;
  /** The window of the first pass and its cap, as shares of the finished bend. */
  readonly window: FirstPass;
  readonly zones: readonly ZoneCorrection[];
  /** What all trials taught about this plate on this roll; null before one took set. */
  readonly learned: {
    /** Raise that it asks beyond the model, on the mean of the trials. [mm] */
    readonly offsetMm: number;
    /** Raise for each millimetre of the model's; null where fewer than two zones tell. [-] */
    readonly slope: number | null;
    /** The zones that tell. */
    readonly zones: readonly number[];
  } | null;
  /** The same in a sentence; empty before one took set. */
  readonly taught: string;
  readonly advice: string;
  readonly rule: string;
  readonly basis: string;
}

export type ZonesAnswer =
  | { readonly kind: "zones"; readonly correction: ZonesCorrection }
  | { readonly kind: "none"; readonly why: string };

const RULE =
  "as for a right cone, by what half the slant asks: the mean of the model's settings for what came out at both ends; next setting = last setting + slope × (model's setting wanted − model's setting for what came out); plate and machine are the same for all zones, so the slope comes from the trials of all of them (drawn towards 1 where they lie near each other, held within 0.67 to 1.5), and a zone without a trial starts from the two nearest, the lower of both; zones that mirror each other get one setting, learned from the trials of both, unless they came out further apart than they are read: then each its own; no end is raised past the middle between its window's end and its cap";

function placeOf(model: ZoneModel, read: ZoneRead): Place {
  const { modelMm } = read;
  const { fromMm, toMm, capMm } = model.aim;
  if (modelMm > capMm || endPastCap(model, read)) return "past the cap";
  if (modelMm > toMm) return "past the window";
  return read.sprangFlat || modelMm < fromMm ? "open" : "in the window";
}

const withPlace = (model: ZoneModel, read: ZoneRead): ZoneTrial => ({ ...read, place: placeOf(model, read) });

/** The setting at the large edge where a zone is set now; null where something is to be looked at first. [mm] */
function settingOf(next: ZoneNext, last: ZoneRead): number | null {
  switch (next.kind) {
    case "done":
      return last.settingMm;
    case "raise":
      return next.settingMm;
    case "overshot":
      return next.nextBlankMm;
    case "check":
      return null;
  }
}

function tried(model: ZoneModel, trials: readonly ZoneTrial[], learned: Learned): ZoneCame {
  const last = trials.at(-1) as ZoneTrial;
  const next = zoneNext(model, trials, learned);
  return {
    next,
    kind: next.kind,
    settingMm: settingOf(next, last),
    by: "by" in next ? next.by : null,
    from: [],
    disagrees: disagreeing(trials).map((i) => i + 1),
    // Where nothing is safe to name for this pass, nothing is for the next.
    secondPass: next.kind === "check" ? null : secondOf(trials, model, learned.slope),
  };
}

function untried(model: ZoneModel, learned: Learned): ZoneCame {
  const start = taughtStart(model, learned);
  return {
    next: null,
    kind: start ? "taught" : "plan",
    settingMm: start?.settingMm ?? model.startMm,
    by: null,
    from: start?.from ?? [],
    disagrees: [],
    secondPass: null,
  };
}

/**
 * Next setting of every zone of a skin that is curved unevenly after trials of some of them. The tilt of each zone stays
 * the plan's; what one zone taught about plate and machine serves the others.
 *
 * @param seen in order, at least one
 * @see derived here
 */
export function correctZones(asked: RollAsked, seen: readonly ZoneSeen[]): ZonesAnswer {
  const { roll, say } = asked;
  const answer = zoneModels(asked);
  if (answer.kind === "none") return answer;
  const { models, window, travelMm, lowestMm } = answer;
  const slip = seen.map((one) => slipIn(asked, answer, one)).find((why) => why !== null);
  if (slip) return { kind: "none", why: slip };

  const reads = seen.map((one) => (models[one.zone - 1] as ZoneModel).read(one));
  const learned = learnedOf(models, reads);
  const zones: ZoneCorrection[] = [];
  const trialsOf = new Map(
    models.map((model) => [
      model,
      reads.filter(({ zone }) => zone === model.number).map((read) => withPlace(model, read)),
    ]),
  );
  const came = mirroredAlike(
    models.map((model) => {
      const trials = trialsOf.get(model) ?? [];
      const own = trials.length > 0 ? tried(model, trials, learned) : untried(model, learned);
      return { ...own, model, last: trials.at(-1) };
    }),
  );
  const pastCap = models
    .filter((model) => trialsOf.get(model)?.at(-1)?.place === "past the cap")
    .map(({ number }) => number);
  for (const { model, settingMm, next, kind, by, from, disagrees, secondPass, apart } of came) {
    const rest = { kind, by, from, disagrees, secondPass };
    const trials = trialsOf.get(model) ?? [];
    if (settingMm !== null && (settingMm <= 0 || settingMm > travelMm))
      return {
        kind: "none",
        why: `by these trials zone ${model.number} would be set to ${say.length(settingMm)}, and the slide goes from 0 to ${say.length(travelMm)} above the flat plate: look at what was written down, and ask the machine's manual before more is set`,
      };
    const alike = mirrorsOf(models, model);
    const mirrors = apart ? [] : alike;
    const unlike = apart ? alike : [];
    // Zones that mirror each other are set alike, in tilt too.
    const last = seen.findLast(({ zone }) => zone === model.number || mirrors.includes(zone));
    const set = settingMm === null ? null : model.placesAt(settingMm, last?.tiltMm);
    const problems = set && rest.kind !== "done" && rest.kind !== "plan" ? model.problemsAt(set) : [];
    // On a sheet the second pass has its own step, and one zone has room for what it is to leave.
    const below = belowZero(say, asked.onSheet ? [set] : [set, secondPass], lowestMm);
    const expectMm =
      settingMm !== null && models.length === 1 ? expectedInside(model, trials, settingMm, learned) : null;
    const words = last?.bearings && !asked.onSheet ? edgesOnly(set) : set;
    const told = { ...rest, next, set: words, trials, model, window, pastCap, mirrors, unlike, expectMm };
    zones.push({
      zone: model.number,
      fromDeg: model.zone.fromDeg,
      toDeg: model.zone.toDeg,
      trials,
      ...rest,
      set,
      mirrors,
      endAtLimit: next?.kind === "check" && next.why === "tilt" ? next.end : null,
      nextBlank: pastCap.length > 0,
      problems: problems.map(({ words }) => words),
      advice: `${zoneAdvice(asked, told, models.length)}${warned(below, problems)}`,
    });
  }
  const figures = learnedFigures(learned);
  const taught = learnedSaid(asked, figures, { several: models.length > 1 });
  return {
    kind: "zones",
    correction: {
      machine: roll.name,
      window,
      zones,
      learned: figures,
      taught,
      advice: [taught, ...zones.map(({ advice }) => advice)].filter(Boolean).join(" "),
      rule: RULE,
      basis: DERIVED,
    },
  };
}

/** Inside radius at the large end that this setting is to leave, both ends bent alike; null where trials say too little. [mm] */
function expectedInside(
  model: ZoneModel,
  trials: readonly ZoneTrial[],
  settingMm: number,
  { slope }: Learned,
): number | null {
  const modelMm = disagreeing(trials).length > 0 ? null : expectedModelMm(trials, settingMm, slope);
  if (modelMm === null) return null;
  const { zone: radii, thicknessMm } = model;
  const inside = (middleMm: number, share: number) => middleMm / share - thicknessMm / 2;
  const read = (share: number) =>
    model.settingFor({
      largeMm: inside(radii.largeRadiusMm, share),
      smallMm: inside(radii.smallRadiusMm, share),
    });
  return inside(radii.largeRadiusMm, whereReached(modelMm, read, [Number.EPSILON, 1]));
}

function learnedFigures({ points, slope }: Learned): ZonesCorrection["learned"] {
  if (points.length === 0) return null;
  const offsetMm = meanOf(points, ({ settingMm, modelMm }) => settingMm - modelMm);
  const zones = [...new Set(points.map(({ zone }) => zone))].sort((a, b) => a - b);
  return { offsetMm, slope, zones };
}

type Models = Extract<ReturnType<typeof zoneModels>, { kind: "models" }>;

export const slipIn = (
  { item, say }: RollAsked,
  { models, travelMm }: Models,
  seen: ZoneSeen,
): string | null =>
  impossibleInZone(seen, {
    pipe: isPipe(item),
    zones: models.map(({ zone }) => zone),
    thicknessMm: item.thicknessMm,
    say,
    travelMm,
  });

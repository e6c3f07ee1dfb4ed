import type { RollAsked } from "./asked.ts";
import { type FirstPass, firstPassShares } from "./firstPass.ts";
import type { PassPoint } from "./passPoints.ts";
import type { PassSettings } from "./passSettings.ts";
import { movedBy, type RollPlaces, tiltedBy } from "./rollPlaces.ts";
import { lowerEndMm, rollSetting, sectionOf } from "./rollSetting.ts";
import { rollSettings } from "./rollSettings.ts";
import { meanHalfAngleRad } from "./skin.ts";
import type { SettingProblem } from "./settingProblem.ts";
import { problemsOf } from "./startProblems.ts";
import { plateOf } from "./springback.ts";
import { type Aim, leastRaiseMm, TOOK_SET, type Trial } from "./trialCorrection.ts";
import { ownTiltDeg, settingRead } from "./trialModel.ts";
import { alongZoneMm, MOST_ZONES, type RollZone } from "./zones.ts";
import { MOST_BENT, type ZoneSeen } from "./zoneSeen.ts";

/** One trial of a zone as the correction takes it: bend and model's setting at half the slant, the setting at the large edge. */
export interface ZoneRead extends Trial {
  readonly zone: number;
  /** Model's setting for what came out at each end; null where it was not measured. [mm] */
  readonly largeModelMm: number | null;
  readonly smallModelMm: number | null;
  /** Share of the finished bend at each end; null where it was not measured. [-] */
  readonly largeShare: number | null;
  readonly smallShare: number | null;
}

/** How far one end may go: the model's settings there for the end of the window and for the cap. [mm] */
interface EndLimit {
  readonly toMm: number;
  readonly capMm: number;
}

/** What the trials of one zone are held against. */
export interface ZoneModel {
  /** Counted from 1. */
  readonly number: number;
  readonly zone: RollZone;
  readonly thicknessMm: number;
  /** At half the slant. */
  readonly aim: Aim;
  readonly large: EndLimit;
  readonly small: EndLimit;
  /** By how much the roll stands higher at half the slant than at the large edge. [mm] */
  readonly middleHigherMm: number;
  /** Raise at the large edge that the plan begins with. [mm] */
  readonly startMm: number;
  readonly pass: (id: PassPoint["id"]) => PassSettings | undefined;
  /** The plan's first setting of this zone moved so that the large edge stands here, then turned about half the slant by so much more tilt from bearing to bearing. */
  readonly placesAt: (largeMm: number, tiltMm?: number) => RollPlaces;
  /** What stands in the way of the roll standing there. */
  readonly problemsAt: (places: RollPlaces) => readonly SettingProblem[];
  readonly read: (seen: ZoneSeen) => ZoneRead;
  /** The model's setting at half the slant for inside radii that came out at both ends, as `read` takes it. [mm] */
  readonly settingFor: (ends: EndRadii) => number;
}

/** Inside radii that came out at the ends, where they were measured. [mm] */
interface EndRadii {
  readonly largeMm?: number;
  readonly smallMm?: number;
}

export type ZoneModelsAnswer =
  | {
      readonly kind: "models";
      readonly models: readonly ZoneModel[];
      /** Window and cap as shares of the finished bend. */
      readonly window: FirstPass;
      /** From the flat plate to the end of the slide. [mm] */
      readonly travelMm: number;
      /** The lower end of the slide, from the flat plate: 0 or less. [mm] */
      readonly lowestMm: number;
    }
  | { readonly kind: "none"; readonly why: string };

const HALVINGS = 50;

/** A zone shorter than this share of the roll's arm is bent by its neighbours' settings as much as by its own. Derived here, by simulated rolls. [-] */
const SHORTEST = 0.5;

/** Why zones cannot be corrected one by one; null where they can. */
function unsound({ item, say }: RollAsked, zones: readonly RollZone[], armMm: number): string | null {
  if (zones.length > MOST_ZONES)
    return `one turn would take ${zones.length} settings, each too short to be corrected by itself: bend it on the press brake`;
  if (zones.length === 1) return null;
  const lengths = zones.map((zone) => alongZoneMm(zone, item.rimsMm.small));
  const short = lengths.findIndex((length) => length < SHORTEST * armMm);
  return short < 0
    ? null
    : `zone ${short + 1} is only ${say.length(lengths[short] ?? 0)} long at the small edge, less than half of what lies between the pinch and the bending roll (${say.length(armMm)}): its neighbours bend it as much as its own setting does, so roll it by its templates alone, or bend the part on the press brake`;
}

/** What a trial of a zone is read by. */
interface ReadBy {
  readonly zone: RollZone;
  /** The model's setting at half the slant for the cap. [mm] */
  readonly middleCapMm: number;
  /** By how much the roll stands higher there than at the large edge. [mm] */
  readonly middleHigherMm: number;
  readonly large: EndLimit;
  readonly small: EndLimit;
  readonly thicknessMm: number;
  /** The model's setting for a share of a finished radius; null where it gives none. */
  readonly modelMm: (finalMm: number, share: number) => number | null;
}

/**
 * How a trial of one zone is read: by the model's setting at half the slant for the share of the bend that the ends came out
 * with, as a right cone is by its closure. A skin that stays developable along the same elements has one share from end to
 * end, its curvature square to an element running as 1/distance from the apex; where two are measured, theirs are averaged.
 *
 * @see derived here, from the equation of Codazzi for a surface with straight elements
 */
function readIn({
  zone,
  middleCapMm,
  middleHigherMm,
  large,
  small,
  thicknessMm,
  modelMm,
}: ReadBy): Pick<ZoneModel, "read" | "settingFor"> {
  const middle = (zone.largeRadiusMm + zone.smallRadiusMm) / 2;
  const flatMm = modelMm(middle, 0) ?? 0;
  /** Bent past the roll's reach it is at the cap at least. */
  const cameOut = (insideMm: number | undefined, finalMm: number, { capMm }: EndLimit) => {
    if (insideMm === undefined) return null;
    const share = finalMm / (insideMm + thicknessMm / 2);
    return { share, mm: modelMm(finalMm, share) ?? capMm, atMiddleMm: modelMm(middle, share) ?? middleCapMm };
  };
  /** The way back, by halving: the share at half the slant that the model sets so. */
  const shareAt = (mm: number): number => {
    let [gentle, tight] = [0, MOST_BENT];
    for (let j = 0; j < HALVINGS; j++) {
      const at = (gentle + tight) / 2;
      if ((modelMm(middle, at) ?? Infinity) < mm) gentle = at;
      else tight = at;
    }
    return gentle;
  };
  const endsRead = ({ largeMm, smallMm }: EndRadii) => {
    const l = cameOut(largeMm, zone.largeRadiusMm, large);
    const s = cameOut(smallMm, zone.smallRadiusMm, small);
    const ends = [l, s].flatMap((one) => (one ? [one.atMiddleMm] : []));
    const at = ends.length === 0 ? flatMm : ends.reduce((sum, mm) => sum + mm, 0) / ends.length;
    return { l, s, at };
  };
  const read = (seen: ZoneSeen): ZoneRead => {
    const { l, s, at } = endsRead("flat" in seen ? {} : seen);
    const closed = shareAt(at);
    return {
      zone: seen.zone,
      ...settingRead(seen),
      closed,
      modelMm: at,
      leastMm: leastRaiseMm(at, middleHigherMm),
      sprangFlat: closed < TOOK_SET,
      largeModelMm: l?.mm ?? null,
      smallModelMm: s?.mm ?? null,
      largeShare: l?.share ?? null,
      smallShare: s?.share ?? null,
    };
  };
  return { read, settingFor: (ends) => endsRead(ends).at };
}

const none = (why: string): ZoneModelsAnswer => ({ kind: "none", why });

/** The models that trials of the zones of an uneven skin are held against on this roll, or why there are none. */
export function zoneModels(asked: RollAsked): ZoneModelsAnswer {
  const { item, roll } = asked;
  const section = sectionOf(roll);
  if (!section)
    return none("only an initial-pinch roll whose slide the shop file gives has settings to correct");
  const answer = rollSettings(asked);
  if (answer.kind === "none") return answer;
  const { travelMm, zones, stopMm, flat } = answer.settings;
  const why = unsound(asked, zones, flat.acrossMm);
  if (why !== null) return none(why);
  const plate = plateOf(item);
  const window = firstPassShares(meanHalfAngleRad(item));
  /** The model's setting for a share of a finished radius; null where it gives none. */
  const modelMm = (finalMm: number, share: number): number | null => {
    const setting = rollSetting(section, plate, share > 0 ? finalMm / share : Infinity);
    return setting.kind === "setting" ? setting.bestMm : null;
  };

  const models = zones.map((zone, i): ZoneModel | null => {
    const pass = (id: PassPoint["id"]) => zone.passes.find((one) => one.id === id);
    const start = pass("trial")?.start;
    const middle = (zone.largeRadiusMm + zone.smallRadiusMm) / 2;
    const aimMm = pass("aim")?.middle.bestMm ?? null;
    const [fromMm, toMm, capMm] = [
      modelMm(middle, window.from),
      modelMm(middle, window.to),
      modelMm(middle, window.cap),
    ];
    const limit = (finalMm: number) => ({
      toMm: modelMm(finalMm, window.to),
      capMm: modelMm(finalMm, window.cap),
    });
    const [large, small] = [limit(zone.largeRadiusMm), limit(zone.smallRadiusMm)];
    if (!start || aimMm === null || fromMm === null || toMm === null || capMm === null) return null;
    if (!isLimit(large) || !isLimit(small)) return null;
    const middleHigherMm = start.middleMm - start.largeMm;
    return {
      number: i + 1,
      zone,
      thicknessMm: plate.thicknessMm,
      aim: { aimMm, fromMm, toMm, capMm, highMm: pass("end")?.large.highMm ?? travelMm },
      large,
      small,
      middleHigherMm,
      startMm: start.largeMm,
      pass,
      placesAt: (largeMm, tiltMm = 0) => tiltedBy(movedBy(start, largeMm - start.largeMm), tiltMm),
      problemsAt: (places) =>
        problemsOf({ ...asked, section, plate, zone, stopMm: stopMm ?? 0 }, [], {
          ...start,
          ...places,
          tiltDeg: ownTiltDeg(start, places, zone.slantMm),
        }),
      ...readIn({
        zone,
        middleCapMm: capMm,
        middleHigherMm,
        large,
        small,
        thicknessMm: plate.thicknessMm,
        modelMm,
      }),
    };
  });
  const whole = models.filter((one) => one !== null);
  return whole.length === models.length
    ? {
        kind: "models",
        models: whole,
        window,
        travelMm,
        lowestMm: lowerEndMm(section, plate.thicknessMm),
      }
    : none("the model gives no setting for a zone of this part on this roll");
}

const isLimit = (limit: { toMm: number | null; capMm: number | null }): limit is EndLimit =>
  limit.toMm !== null && limit.capMm !== null;

import { degrees } from "../geometry/angle.ts";
import type { RollAsked } from "./asked.ts";
import type { FormingCase } from "./case.ts";
import { closureSetting } from "./closureSetting.ts";
import { isGapTold, TOLD_APART_MM } from "./gapTold.ts";
import { type FirstPass, firstPass, shareOfClosure } from "./firstPass.ts";
import type { PassPoint } from "./passPoints.ts";
import type { PassSettings } from "./passSettings.ts";
import { movedBy, type RollPlaces, tiltedBy } from "./rollPlaces.ts";
import { lowerEndMm, type RollSection, sectionOf } from "./rollSetting.ts";
import { rollSettings } from "./rollSettings.ts";
import type { SettingProblem } from "./settingProblem.ts";
import { plateOf } from "./springback.ts";
import { problemsOf } from "./startProblems.ts";
import { type Aim, leastRaiseMm, TOOK_SET, type Trial } from "./trialCorrection.ts";
import { closedSeen, type RollSet, type TrialSeen } from "./trialSeen.ts";

/** What trials of one part on one roll are held against. */
export interface TrialModel {
  readonly cone: NonNullable<FormingCase["cone"]>;
  readonly window: FirstPass;
  /** What the first pass leaves straight at one seam edge: gaps are told with it. */
  readonly leadMm: number;
  readonly aim: Aim;
  /** From the flat plate to the end of the slide. [mm] */
  readonly travelMm: number;
  /** The lower end of the slide, from the flat plate: 0 or less. [mm] */
  readonly lowestMm: number;
  /** The plan's settings for one moment. */
  readonly pass: (id: PassPoint["id"]) => PassSettings | undefined;
  /**
   * The plan's first setting moved so that the large edge stands here, then turned about half the slant by so much more tilt
   * from bearing to bearing; null where the plan has none.
   */
  readonly placesAt: (largeMm: number, tiltMm?: number) => RollPlaces | null;
  /** What stands in the way of the roll standing there. */
  readonly problemsAt: (places: RollPlaces) => readonly SettingProblem[];
  /** One trial as the correction takes it. */
  readonly read: (seen: TrialSeen) => Trial;
}

export type TrialModelAnswer =
  { readonly kind: "model"; readonly model: TrialModel } | { readonly kind: "none"; readonly why: string };

/** The model's setting at half the slant for a closure; null where it gives none. [mm] */
function settingFor(item: FormingCase, section: RollSection, cone: TrialModel["cone"]) {
  const plate = plateOf(item);
  const radiusMm = (cone.largeRadiusMm + cone.smallRadiusMm) / 2;
  return (closed: number): number | null => {
    const answer = closureSetting(section, plate, { radiusMm, halfAngleRad: cone.halfAngleRad, closed });
    return answer.kind === "setting" ? answer.bestMm : null;
  };
}

/** Bearings are read no closer: a tilt within this of the plan's was told with the plan. [mm] */
const SAME_TILT_MM = 0.05;

/** The tilt of a roll that does not stand as the plan has it; 0 where it does, for that was told with the plan. */
export function ownTiltDeg(start: RollPlaces, { largeMm, smallMm }: RollPlaces, slantMm: number): number {
  const moreMm = smallMm - largeMm - (start.smallMm - start.largeMm);
  return Math.abs(moreMm) < SAME_TILT_MM ? 0 : degrees(Math.atan((smallMm - largeMm) / slantMm));
}

/** A trial's setting as the correction takes it: what half the slant stood at, told for the large edge at the plan's tilt. */
export const settingRead = ({ settingMm, middleMoreMm = 0 }: RollSet): Pick<Trial, "settingMm" | "atMm"> =>
  middleMoreMm === 0 ? { settingMm } : { settingMm: settingMm + middleMoreMm, atMm: settingMm };

const none = (why: string): TrialModelAnswer => ({ kind: "none", why });

/** The model that trials on this roll are held against, or why there is none. */
export function trialModel(asked: RollAsked): TrialModelAnswer {
  const { item, roll, say } = asked;
  const { cone } = item;
  const section = sectionOf(roll);
  if (!section)
    return none("only an initial-pinch roll whose slide the shop file gives has settings to correct");
  if (!cone) return none("only right cones and pipes have one closure to correct by");
  const answer = rollSettings(asked);
  if (answer.kind === "none") return answer;
  const { travelMm, zones, stopMm, flat } = answer.settings;
  const leadMm = flat.acrossMm;
  const pass = (id: PassPoint["id"]) => zones[0]?.passes.find((one) => one.id === id);
  const start = pass("trial")?.start ?? null;
  const window = firstPass(cone.halfAngleRad);
  if (!isGapTold(item, leadMm))
    return none(
      `over the window of the first pass its gap does not grow narrower by ${say.length(TOLD_APART_MM)} or more, so that no tape tells how far it is bent: go by the templates`,
    );
  const model = settingFor(item, section, cone);
  const [fromMm, toMm, capMm] = [model(window.from), model(window.to), model(window.cap)];
  const aimMm = model((window.from + window.to) / 2);
  if (fromMm === null || toMm === null || capMm === null || aimMm === null)
    return none("the model gives no setting for this part on this roll");
  const highMm = pass("end")?.large.highMm ?? travelMm;
  /** Past closed nobody can tell how far it would have gone on: what closes it is the least. Past the roll's reach its cap is the nearest that is known. */
  const modelOf = (closed: number) => {
    const own = model(closed);
    return closed > 1 ? Math.max(own ?? 0, model(1) ?? capMm) : (own ?? capMm);
  };
  return {
    kind: "model",
    model: {
      cone,
      window,
      leadMm,
      aim: { aimMm, fromMm, toMm, capMm, highMm },
      travelMm,
      lowestMm: lowerEndMm(section, item.thicknessMm),
      pass,
      placesAt(largeMm, tiltMm = 0) {
        const moved = start && movedBy(start, largeMm - start.largeMm);
        return moved && tiltedBy(moved, tiltMm);
      },
      problemsAt(places) {
        const [zone] = zones;
        if (!zone || !start) return [];
        const there = { ...asked, section, plate: plateOf(item), zone, stopMm: stopMm ?? 0 };
        return problemsOf(there, [], {
          ...start,
          ...places,
          tiltDeg: ownTiltDeg(start, places, zone.slantMm),
        });
      },
      read(seen) {
        const closed = closedSeen(seen, item, cone, leadMm);
        const share = shareOfClosure({ halfAngleRad: cone.halfAngleRad, closed }) ?? 0;
        return {
          ...settingRead(seen),
          closed,
          modelMm: modelOf(closed),
          ...(start && { leastMm: leastRaiseMm(modelOf(closed), start.middleMm - start.largeMm) }),
          sprangFlat: share < TOOK_SET,
        };
      },
    },
  };
}

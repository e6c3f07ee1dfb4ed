import { degrees } from "../geometry/angle.ts";
import { type LessTilt, lessTilt } from "./lessTilt.ts";
import type { PlateRoll } from "./machine.ts";
import type { PassPoint } from "./passPoints.ts";
import { flatContact, type Refused, type RollSection, rollSetting } from "./rollSetting.ts";
import { rollTilt } from "./rollTilt.ts";
import type { Say } from "./say.ts";
import type { SettingProblem } from "./settingProblem.ts";
import { pinchClearance, problemsOf, standsOf } from "./startProblems.ts";
import type { Elastic } from "./springback.ts";
import type { RollZone } from "./zones.ts";

/** What one place along the slant asks by itself: raise of the bending roll from where it touches the flat plate. [mm] */
export interface PlaceSetting {
  /** Middle radius square to the element that the plate is to spring back to. */
  readonly freeMm: number;
  /** Null, with the reason in `refused`, where the roll cannot do it. */
  readonly lowMm: number | null;
  readonly bestMm: number | null;
  readonly highMm: number | null;
  readonly refused: Refused | null;
}

/** Where to set the straight roll: the line through both ends, carried to the bearings. Raises from the flat plate. [mm] */
export interface RollStart {
  readonly largeMm: number;
  readonly middleMm: number;
  readonly smallMm: number;
  /** How many times too high a straight roll set for both ends by themselves would stand at half the slant. [-] */
  readonly middleOverbend: number;
  readonly tiltDeg: number;
  /** At the bearing beyond the small edge, and at that beyond the large edge; null where the shop gives no bearings. */
  readonly smallBearingMm: number | null;
  readonly largeBearingMm: number | null;
}

export interface PassSettings extends PassPoint {
  readonly large: PlaceSetting;
  readonly middle: PlaceSetting;
  readonly small: PlaceSetting;
  readonly start: RollStart | null;
  /** Where the start's tilt does not go on this machine: the most that does, the raise at the large edge kept. */
  readonly lessTilt: LessTilt | null;
  /** Travel that is left at the higher end. [mm] */
  readonly travelLeftMm: number | null;
  /** Least clear distance between bending roll and pinch roll on the way up; null where no pinch roll is given. [mm] */
  readonly pinchClearMm: number | null;
  /** What stands in the way of these settings on this machine. */
  readonly problems: readonly SettingProblem[];
}

export interface PassAsked {
  readonly section: RollSection;
  readonly roll: PlateRoll;
  readonly plate: Elastic;
  readonly zone: RollZone;
  /** From the end of the roll face to the small edge. */
  readonly stopMm: number;
  readonly say: Say;
}

function placeSetting({ section, plate }: PassAsked, finalMm: number, share: number): PlaceSetting {
  const freeMm = finalMm / share;
  const setting = rollSetting(section, plate, freeMm);
  return setting.kind === "setting"
    ? { freeMm, lowMm: setting.lowMm, bestMm: setting.bestMm, highMm: setting.highMm, refused: null }
    : { freeMm, lowMm: null, bestMm: null, highMm: null, refused: setting.why };
}

function startOf(
  { roll, zone, stopMm }: PassAsked,
  places: { large: PlaceSetting; middle: PlaceSetting; small: PlaceSetting; turned: boolean },
): RollStart | null {
  const { large, middle, small, turned } = places;
  if (large.bestMm === null || small.bestMm === null) return null;
  const { bearings } = roll;
  // For the second pass the job has been turned round: the small edge stands as far in from the fixed end as it stood from the drop end.
  const [drop, fixed] = bearings ?? [0, 0];
  const tilt = rollTilt({
    raiseMm: { large: large.bestMm, middle: middle.bestMm, small: small.bestMm },
    ratio: zone.largeRadiusMm / zone.smallRadiusMm,
    slantMm: zone.slantMm,
    stopMm,
    rollFaceMm: roll.workingWidth,
    bearingsMm: turned ? [fixed, drop] : [drop, fixed],
  });
  return {
    largeMm: tilt.largeMm,
    middleMm: tilt.middleMm,
    smallMm: tilt.smallMm,
    middleOverbend: tilt.overbend,
    tiltDeg: degrees(tilt.tiltRad),
    smallBearingMm: bearings ? tilt.bearingMm.small : null,
    largeBearingMm: bearings ? tilt.bearingMm.large : null,
  };
}

/**
 * Settings of the bending roll for one moment of rolling: what the large end, half the slant and the small end ask by
 * themselves, the straight line to start with, and what stands in its way on this machine.
 *
 * @see derived here
 */
export function passSettings(asked: PassAsked, point: PassPoint): PassSettings {
  const { section, plate, zone } = asked;
  const at = (radiusMm: number) => placeSetting(asked, radiusMm, point.share);
  const [large, small] = [at(zone.largeRadiusMm), at(zone.smallRadiusMm)];
  const middle = at((zone.largeRadiusMm + zone.smallRadiusMm) / 2);
  const start = startOf(asked, { large, middle, small, turned: point.id === "finished" });
  const problems = problemsOf(asked, [large, middle, small], start);
  const stands = start && standsOf(asked, start);
  return {
    ...point,
    large,
    middle,
    small,
    start,
    lessTilt: start && problems.length > 0 ? lessTilt(asked, start) : null,
    travelLeftMm:
      stands && section.travelMm - flatContact(section, plate.thicknessMm).upMm - stands.bearingMm,
    pinchClearMm: stands && pinchClearance(asked, stands.faceMm),
    problems,
  };
}

import { degrees } from "../geometry/angle.ts";
import type { PlateRoll } from "./machine.ts";
import type { PassPoint } from "./passPoints.ts";
import { flatContact, type RollSection, rollSetting } from "./rollSetting.ts";
import { rollTilt } from "./rollTilt.ts";
import type { Say } from "./say.ts";
import type { SettingProblem } from "./settingProblem.ts";
import type { Elastic } from "./springback.ts";
import type { RollZone } from "./zones.ts";

/** What one place along the slant asks by itself: raise of the bending roll from where it touches the flat plate. [mm] */
interface PlaceSetting {
  /** Middle radius square to the element that the plate is to spring back to. */
  readonly freeMm: number;
  /** Null, with the reason in `refused`, where the roll cannot do it. */
  readonly lowMm: number | null;
  readonly bestMm: number | null;
  readonly highMm: number | null;
  readonly refused: string | null;
}

/** Where to set the straight roll: the line through both ends, carried to the bearings. Raises from the flat plate. [mm] */
interface RollStart {
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
  /** Travel that is left at the higher end. [mm] */
  readonly travelLeftMm: number | null;
  /** Clear distance between bending roll and pinch roll at the higher end; null where no pinch roll is given. [mm] */
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

/** Clear distance between the bending roll, raised so far from the flat plate, and the pinch roll under the plate. [mm] */
function pinchClearance(
  { section, roll, plate }: Pick<PassAsked, "section" | "roll" | "plate">,
  raise: number,
): number | null {
  const { pinchDiameter } = roll.rolls;
  if (pinchDiameter === undefined) return null;
  const { topRadiusMm, bendingRadiusMm, originMm, angleRad } = section;
  const up = flatContact(section, plate.thicknessMm).upMm + raise;
  const pinch = pinchDiameter / 2;
  const x = originMm[0] - up * Math.cos(angleRad);
  const y = originMm[1] + up * Math.sin(angleRad) + topRadiusMm + plate.thicknessMm + pinch;
  return Math.hypot(x, y) - bendingRadiusMm - pinch;
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

/** What stands in the way of a start on this machine. */
export function problemsOf(
  { section, roll, plate, say }: PassAsked,
  places: readonly PlaceSetting[],
  start: RollStart | null,
): SettingProblem[] {
  const refused = [...new Set(places.flatMap(({ refused: why }) => (why === null ? [] : [why])))];
  const problems = refused.map((why): SettingProblem => ({
    id: "refused",
    by: 0,
    words: `No setting: the bend is ${why}.`,
  }));
  const tell = (id: SettingProblem["id"], by: number, words: string) => problems.push({ id, by, words });
  if (!start) return problems;
  const { upMm } = flatContact(section, plate.thicknessMm);
  const highest = Math.max(
    start.smallMm,
    start.largeMm,
    start.smallBearingMm ?? 0,
    start.largeBearingMm ?? 0,
  );
  const lowest = Math.min(start.smallBearingMm ?? 0, start.largeBearingMm ?? 0);
  const beyond = upMm + highest - section.travelMm;
  const below = -(upMm + lowest);
  const clear = pinchClearance({ section, roll, plate }, highest);
  const tiltMost = roll.slide?.greatestTilt;
  const tilt = Math.abs(start.tiltDeg);
  if (beyond > 0)
    tell(
      "travel",
      beyond,
      `The higher end of the roll would stand ${say.length(beyond)} beyond the slide's travel.`,
    );
  if (below > 0)
    tell(
      "origin",
      below,
      `The lower bearing would stand ${say.length(below)} below the origin of the slide: find out whether it goes so low.`,
    );
  if (tiltMost !== undefined && tilt > tiltMost)
    tell(
      "tilt",
      tilt,
      `The tilt is more than the roll's greatest, ${say.angle((tiltMost * Math.PI) / 180)}: make two courses, or set less tilt and bring the small end round by re-rolling.`,
    );
  if (clear !== null && clear < 0)
    tell("pinch", -clear, `The bending roll would run into the pinch roll by ${say.length(-clear)}.`);
  return problems;
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
  const higher = start && Math.max(start.smallMm, start.largeMm, start.smallBearingMm ?? 0);
  return {
    ...point,
    large,
    middle,
    small,
    start,
    travelLeftMm:
      higher === null ? null : section.travelMm - flatContact(section, plate.thicknessMm).upMm - higher,
    pinchClearMm: higher === null ? null : pinchClearance(asked, higher),
    problems: problemsOf(asked, [large, middle, small], start),
  };
}

import { radians } from "../geometry/angle.ts";
import type { PassAsked, PlaceSetting, RollStart } from "./passSettings.ts";
import { flatContact } from "./rollSetting.ts";
import type { SettingProblem } from "./settingProblem.ts";

/**
 * Least clear distance between bending roll and pinch roll, the one under the plate, while the bending roll is raised so far
 * from the flat plate: on a slide that leans towards the pinch it comes nearest on the way.
 */
export function pinchClearance(
  { section, roll, plate }: Pick<PassAsked, "section" | "roll" | "plate">,
  raise: number,
): number | null {
  const { pinchDiameter } = roll.rolls;
  if (pinchDiameter === undefined) return null;
  const { bendingRadiusMm, angleRad } = section;
  const pinch = pinchDiameter / 2;
  // From the pinch roll's centre; both touch the underside of the same plate.
  const { acrossMm } = flatContact(section, plate.thicknessMm);
  const up = pinch - bendingRadiusMm;
  const [cos, sin] = [Math.cos(angleRad), Math.sin(angleRad)];
  const at = Math.min(Math.max(raise, 0), Math.max(0, acrossMm * cos - up * sin));
  return Math.hypot(acrossMm - at * cos, up + at * sin) - bendingRadiusMm - pinch;
}

/** The highest and the lowest that a straight roll stands anywhere: over the plate, at the ends of its face, at its bearings. [mm] */
export function standsOf(
  { roll, zone, stopMm }: Pick<PassAsked, "roll" | "zone" | "stopMm">,
  start: Pick<RollStart, "smallMm" | "largeMm" | "smallBearingMm" | "largeBearingMm">,
) {
  const { smallMm, largeMm } = start;
  const slope = (smallMm - largeMm) / zone.slantMm;
  const faceMm = [smallMm + slope * stopMm, largeMm - slope * (roll.workingWidth - stopMm - zone.slantMm)];
  const bearingMm = [start.smallBearingMm ?? 0, start.largeBearingMm ?? 0];
  const plateMm = Math.max(smallMm, largeMm);
  return {
    plateMm,
    faceMm: Math.max(plateMm, ...faceMm),
    bearingMm: Math.max(plateMm, ...bearingMm),
    lowestMm: Math.min(...bearingMm),
  };
}

const LESS_TILT = "set less tilt and bring the small end round by re-rolling";

/** What stands in the way of a start on this machine. */
export function problemsOf(
  asked: PassAsked,
  places: readonly PlaceSetting[],
  start: RollStart | null,
): SettingProblem[] {
  const { section, roll, plate, say } = asked;
  const refused = [...new Set(places.flatMap(({ refused: why }) => (why === null ? [] : [why])))];
  const problems = refused.map((why): SettingProblem => ({
    id: "refused",
    // How far plate springs back is known too badly to refuse it for that: what the roll closes at the least is asked elsewhere.
    stops: why === "out of reach of the slide" ? "part" : "setting",
    by: 0,
    words: `No setting: the bend is ${why}.`,
  }));
  if (!start) return problems;
  const tell = (one: SettingProblem) => problems.push(one);
  const { upMm } = flatContact(section, plate.thicknessMm);
  const stands = standsOf(asked, start);
  const beyond = upMm + stands.bearingMm - section.travelMm;
  const below = -(upMm + stands.lowestMm);
  const { belowMm } = section;
  const tiltMost = roll.slide?.greatestTilt;
  const tilt = Math.abs(start.tiltDeg);
  if (beyond > 0)
    tell({
      id: "travel",
      stops: "setting",
      by: beyond,
      words: `The higher end of the roll would stand ${say.length(beyond)} beyond the slide's travel: ${LESS_TILT}.`,
    });
  if (below > (belowMm ?? 0))
    tell(
      belowMm === undefined
        ? {
            id: "origin",
            stops: "nothing known",
            by: below,
            words: `The lower bearing would stand ${say.length(below)} below the origin of the slide: find out whether it goes so low.`,
          }
        : {
            id: "origin",
            stops: "setting",
            by: below - belowMm,
            words: `The lower bearing would stand ${say.length(below - belowMm)} below the lower end of the slide: ${LESS_TILT}.`,
          },
    );
  if (tiltMost !== undefined && tilt > tiltMost)
    tell({
      id: "tilt",
      stops: "setting",
      by: tilt,
      words: `The tilt is more than the roll's greatest, ${say.angle(radians(tiltMost))}: make two courses, or ${LESS_TILT}.`,
    });
  const [overPlate, overFace] = [stands.plateMm, stands.faceMm].map((mm) => pinchClearance(asked, mm) ?? 0);
  if (overPlate !== undefined && overPlate < 0)
    tell({
      id: "pinch",
      stops: "part",
      by: -overPlate,
      words: `The bending roll would run into the pinch roll by ${say.length(-overPlate)}.`,
    });
  else if (overFace !== undefined && overFace < 0)
    tell({
      id: "pinch",
      stops: "setting",
      by: -overFace,
      words: `Beyond the small edge the bending roll would run into the pinch roll by ${say.length(-overFace)}: ${LESS_TILT}.`,
    });
  return problems;
}

import { plain } from "../../../drawing/format.ts";
import type { FormingCase } from "../../../forming/case.ts";
import { firstPass, shareOfClosure } from "../../../forming/firstPass.ts";
import { type PassPoint, trialShare } from "../../../forming/passPoints.ts";
import { meanHalfAngleRad } from "../../../forming/skin.ts";
import { MOST_ZONES, type RollZone, WITHIN_ZONE } from "../../../forming/zones.ts";
import { degrees as inDegrees } from "../../../geometry/angle.ts";
import { closely } from "../girth.ts";
import { degrees, type Numbers } from "../numbers.ts";
import type { Worked } from "../worked.ts";

/** Figures of a share: enough for a raise to come out by it. */
const PLACES = 4;

/** Which share of the finished bend a moment of rolling is, and why that one. */
export function momentWorked({ id, share }: PassPoint, item: FormingCase, zones: number): Worked {
  const halfAngleRad = meanHalfAngleRad(item);
  const { from, to } = firstPass(halfAngleRad);
  const half = degrees(inDegrees(halfAngleRad), 3);
  const closed = { trial: from, start: from, aim: (from + to) / 2, end: to, finished: 1 }[id];
  const told = (value: number) => plain(value, PLACES);
  const root = `√(${told(closed)}² − sin(${half})²) / cos(${half})`;
  const at = shareOfClosure({ halfAngleRad, closed }) ?? 0;
  return {
    rule: `How much of the finished bend the plate has at this moment. The first pass ends in a window: common practice for steep cones is 65 to 80 % of the way round. For wide cones it is as much further round as the same share of the bend is there. Share of the bend = √(closed² − sin² of the half angle) / cos of the half angle${item.cone ? "" : ", the half angle that of a right cone of the same rims and mean slant"}. The first trial stays below the window, so that a lively machine does not bend too far.`,
    numbers:
      id === "finished"
        ? "The second pass bends all of it: the share is 1."
        : id === "trial"
          ? `Window begins at ${told(closed)} of the way round: ${root} = ${told(at)} of the bend\nFirst trial: ${plain(trialShare(zones), 2)} × ${told(at)} = ${told(share)}`
          : `${told(closed)} of the way round: ${root} = ${told(share)} of the bend`,
    basis: "derived here",
  };
}

/** Where a zone begins and ends, and how far the bend differs within it. */
export function zoneWorked(
  { fromDeg, toDeg, spread, largeRadiusMm, smallRadiusMm, slantMm }: RollZone,
  count: number,
  say: Numbers,
): Worked {
  const middle = `Middle radii square to the lines: ${closely(say, largeRadiusMm)}\u00a0${say.unit} at the large end and ${closely(say, smallRadiusMm)}\u00a0${say.unit} at the small end; mean slant ${closely(say, slantMm)}\u00a0${say.unit}.`;
  if (count === 1)
    return {
      rule: "One setting serves all round where the plate is bent alike all round.",
      numbers: middle,
      basis: "derived here",
    };
  return {
    rule: `The plate is cut from its seam on into as few zones as keep the radii within each nearly alike: the slackest at most ${plain(WITHIN_ZONE, 2)} times the tightest, at both ends; evenly shared out. Each is rolled with one setting, for the mean of its bends; more than ${MOST_ZONES} are not worth setting up for.`,
    numbers: `From ${degrees(fromDeg, 1)} to ${degrees(toDeg, 1)} in plan: the slackest radius is ${plain(spread, 2)} times the tightest. ${middle}`,
    basis: "derived here",
  };
}

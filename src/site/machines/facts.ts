import type { PlateRoll, PressBrake } from "../../forming/machine.ts";
import { isTurnedRound } from "../../forming/stopRoom.ts";
import { strengthText } from "../../drawing/format.ts";
import { degrees, type Numbers } from "../words/numbers.ts";
import type { Fact } from "../words/partSize.ts";

const given = <T>(value: T | undefined, name: string, say: (value: T) => string): Fact[] =>
  value === undefined ? [] : [{ name, value: say(value) }];

/** A roll as its file gives it: what it is rated for, then its geometry. */
export function rollFacts(roll: PlateRoll, say: Numbers): Fact[] {
  const { rating, coneRating, rolls, slide, coneAttachment: stop } = roll;
  const pair = ([from, to]: readonly [number, number]) => `${say.bare(from)} to ${say.length(to)}`;
  return [
    {
      name: "Rated thickness",
      value: say.length(rating.thickness),
      beside:
        rating.yieldMPa === undefined
          ? "as a cylinder, for which yield is not known"
          : `as a cylinder, yield ${strengthText(rating.yieldMPa, say.unit)}`,
    },
    ...given(
      coneRating,
      "Maker’s cone rating",
      (own) => `${say.length(own.thickness)} × ${say.length(own.slant)} slant`,
    ),
    { name: "Working width", value: say.length(roll.workingWidth) },
    { name: "Top roll", value: `Ø${say.length(rolls.topDiameter)}` },
    ...given(rolls.pinchDiameter, "Pinch roll", (d) => `Ø${say.length(d)}`),
    ...given(rolls.bendingDiameter, "Bending roll", (d) => `Ø${say.length(d)}`),
    ...given(
      slide,
      "Bending roll’s slide",
      ({ origin: [across, up], angle, travel, below }) =>
        `${say.bare(across)} across, ${say.bare(Math.abs(up))} ${up < 0 ? "down" : "up"}; ${degrees(angle)}; travel ${below === undefined ? "" : `${say.bare(below)} down, `}${say.length(travel)}${below === undefined ? "" : " up"}`,
    ),
    ...given(slide?.greatestTilt, "Greatest tilt", (tilt) => degrees(tilt)),
    ...given(roll.dropEnd, "Drop end", (hand) => `at the ${hand} hand`),
    ...given(
      roll.bearings,
      "Roll face to bearings",
      ([drop, fixed]) => `drop end ${say.bare(drop)}, fixed end ${say.length(fixed)}`,
    ),
    ...given(stop?.range, "Reach of the stop", pair),
    ...given(stop?.clearRoom, "Clear room beyond the stop", (room) => say.length(room)),
    ...given(stop?.clearRoomFixedEnd, "Clear room, fixed end", (room) => say.length(room)),
    ...given(roll.pinchTrim, "Pinch trim", (trim) => (trim ? "yes" : "no")),
    ...given(roll.smallestDiameter, "Closes to an inside diameter of", (d) => say.length(d)),
    ...given(roll.smallestRadius, "Bends to a radius of", (r) => say.length(r)),
  ];
}

/** What the shop file does not say of a roll, and what is lost by it. */
export function rollGaps({
  arrangement,
  coneRating,
  rolls,
  slide,
  bearings,
  coneAttachment: stop,
  ...roll
}: PlateRoll): string[] {
  const pinches = arrangement === "initial-pinch";
  const turned = isTurnedRound(arrangement);
  const gaps: readonly (readonly [boolean, string])[] = [
    [
      !coneRating,
      "The maker’s cone rating: half of thickness times width is taken in its place, which is a rule of thumb.",
    ],
    [!stop || stop.fitted === false, "A stop for the small edge: without one it rolls no cones."],
    [
      !!stop && stop.fitted !== false && !stop.range,
      "The reach of the stop: it is taken to come right up to the drop end.",
    ],
    [
      !!stop && stop.clearRoom === undefined,
      "The clear room beyond the stop: measure it before a wide small end is rolled.",
    ],
    [
      turned && !!stop && stop.fitted !== false && stop.clearRoomFixedEnd === undefined,
      "The clear room at the fixed end, where the second pass needs a stop: look before you begin.",
    ],
    [
      arrangement === undefined,
      "How the rolls stand to each other: no setting can be worked out, and the plan is that of an initial-pinch roll.",
    ],
    [
      roll.rating.yieldMPa === undefined,
      "The yield strength that the rating is for: within it nothing is sure, and it is shown as near the limit.",
    ],
    [pinches && rolls.bendingDiameter === undefined, "The diameter of the bending roll."],
    [pinches && !slide, "The slide of the bending roll: no setting can be worked out and no section drawn."],
    [!!slide && slide.greatestTilt === undefined, "The greatest tilt of the bending roll."],
    [
      pinches && rolls.pinchDiameter === undefined,
      "The diameter of the pinch roll: sections are drawn without it.",
    ],
    [
      turned && !!stop && stop.fitted !== false && roll.dropEnd === undefined,
      "At which hand the drop end is (dropEnd): the sheet cannot name the seam edge that leads.",
    ],
    [pinches && !bearings, "The bearings: a tilt is told at the plate’s edges only."],
    [
      arrangement !== "pyramid" && roll.pinchTrim === undefined,
      "Whether the pinch roll can be set out of parallel.",
    ],
    [roll.smallestDiameter === undefined, "The smallest inside diameter that it closes."],
    [roll.smallestRadius === undefined, "The smallest radius that it bends to."],
  ];
  return gaps.flatMap(([missing, words]) => (missing ? [words] : []));
}

/** A brake as its file gives it. */
export function brakeFacts(brake: PressBrake, say: Numbers): Fact[] {
  return [
    { name: "Bed length", value: say.length(brake.bedLength) },
    { name: "Force", value: say.force(brake.forceKN) },
    ...given(
      brake.dies,
      "Die openings",
      (dies) =>
        `${dies
          .toSorted((a, b) => a - b)
          .map((die) => say.bare(die))
          .join(", ")} ${say.unit}`,
    ),
    ...given(brake.throat, "Throat", (throat) => say.length(throat)),
  ];
}

export const brakeGaps = ({ throat, dies }: PressBrake): string[] => [
  ...(throat === undefined
    ? ["The throat: how deep the plate can reach behind the bend line before it meets the frame."]
    : []),
  ...(dies === undefined
    ? ["The dies of the rack: the least opening that each thickness wants is taken in their place."]
    : []),
];

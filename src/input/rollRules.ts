import type { PlateRoll } from "../forming/machine.ts";
import { sayIn } from "../forming/say.ts";
import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import type { Loose } from "../shapes/loose.ts";
import type { FieldProblem } from "./plainTree.ts";
import type { Units } from "./units.ts";

/** What the numbers of a plate roll have to do with each other. */
export function rollRules(roll: Loose<PlateRoll>, units: Units = "mm"): FieldProblem[] {
  const lies = slideBelow(roll);
  return [
    ...rangeInOrder(roll),
    ...(lies.length > 0 ? lies : slideTouches(roll, units)),
    ...slideRises(roll),
  ];
}

function rangeInOrder({ coneAttachment }: Loose<PlateRoll>): FieldProblem[] {
  const [from, to] = coneAttachment?.range ?? [];
  if (from === undefined || to === undefined || from <= to) return [];
  return [
    {
      path: ["coneAttachment", "range"],
      problem: "runs backwards",
      remedy: "give the end nearest the drop end first, then the farthest",
    },
  ];
}

/**
 * The bending roll lies below the top roll and on its bending side, and the two cannot overlap. Nought and nought is the
 * centre of the top roll itself.
 */
function slideBelow({ arrangement, slide, rolls }: Loose<PlateRoll>): FieldProblem[] {
  const [across, up] = slide?.origin ?? [];
  if (across === undefined || up === undefined) return [];
  const apart = ((rolls?.topDiameter ?? 0) + (rolls?.bendingDiameter ?? 0)) / 2;
  // Under the same flat plate, radii p and b touch where their centres are 2√(p b) apart along it.
  const pinch = arrangement === "initial-pinch" ? (rolls?.pinchDiameter ?? 0) : 0;
  const besidePinch = Math.sqrt(pinch * (rolls?.bendingDiameter ?? 0));
  const why =
    across === 0 && up === 0
      ? "is the centre of the top roll itself"
      : up >= 0
        ? "lies no lower than the centre of the top roll"
        : across <= 0
          ? "is not on the bending side of the top roll"
          : Math.hypot(across, up) < apart
            ? "puts the bending roll into the top roll"
            : across < besidePinch
              ? "puts the bending roll into the pinch roll, which is under the same plate"
              : undefined;
  if (why === undefined) return [];
  return [
    {
      path: ["slide", "origin"],
      problem: why,
      remedy:
        "give the centre of the bending roll where it touches a flat plate from below, measured from the centre of the top roll: [towards the bending side, up], with a minus for down, as in [150, -129]",
    },
  ];
}

/** A tape from the centre of one roll to that of another is no nearer than this. [mm] */
const TAPED_MM = 5;

/**
 * Where the bending roll touches a flat plate from below is known from the rolls: half the top roll, the plate and half the
 * bending roll lie above each other. A manual's drawing may have another plate in it than the rated one, or none, and a tape
 * has its own play; further off than that it is a slip, and would shift all settings by more than their own band.
 */
function slideTouches({ arrangement, slide, rolls, rating }: Loose<PlateRoll>, units: Units): FieldProblem[] {
  const [across, up] = slide?.origin ?? [];
  const [top, bending] = [rolls?.topDiameter, rolls?.bendingDiameter];
  const thick = rating?.thickness;
  if (arrangement !== "initial-pinch" || across === undefined || up === undefined) return [];
  if (top === undefined || bending === undefined || thick === undefined) return [];
  const touchMm = -(top / 2 + thick + bending / 2);
  if (Math.abs(up - touchMm) <= Math.max(thick, TAPED_MM) + SAME_POINT_MM) return [];
  const say = sayIn(units);
  return [
    {
      path: ["slide", "origin", 1],
      problem: `is ${say.bare(up)} up, but the bending roll touches a flat plate of the rated thickness at about ${say.bare(touchMm)} (half the top roll, ${say.bare(top / 2)}, the plate, ${say.bare(thick)}, and half the bending roll, ${say.length(bending / 2)})`,
      remedy: `give ${say.bare(touchMm)}, or measure the rolls and the slide again`,
    },
  ];
}

function slideRises({ slide }: Loose<PlateRoll>): FieldProblem[] {
  if (slide?.angle !== 0) return [];
  return [
    {
      path: ["slide", "angle"],
      problem: "is level, and a level slide never bends the plate",
      remedy: "give its rise above level in degrees, 90 for straight up",
    },
  ];
}

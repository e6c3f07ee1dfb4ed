import type { PlateRoll } from "../forming/machine.ts";
import type { Loose } from "../shapes/loose.ts";
import type { FieldProblem } from "./plainTree.ts";

/** What the numbers of a plate roll have to do with each other. */
export function rollRules(roll: Loose<PlateRoll>): FieldProblem[] {
  return [...rangeInOrder(roll), ...slideBelow(roll), ...slideRises(roll)];
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
function slideBelow({ slide, rolls }: Loose<PlateRoll>): FieldProblem[] {
  const [across, up] = slide?.origin ?? [];
  if (across === undefined || up === undefined) return [];
  const apart = ((rolls?.topDiameter ?? 0) + (rolls?.bendingDiameter ?? 0)) / 2;
  const why =
    across === 0 && up === 0
      ? "is the centre of the top roll itself"
      : up >= 0
        ? "lies no lower than the centre of the top roll"
        : across <= 0
          ? "is not on the bending side of the top roll"
          : Math.hypot(across, up) < apart
            ? "puts the bending roll into the top roll"
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

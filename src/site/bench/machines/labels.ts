import type { FieldPath } from "../../../input/problem.ts";

/** What a field of a machine or a plate is called. */
const LABELS: Readonly<Record<string, string>> = {
  name: "Name",
  handLift: "Lifted by machine above, with its unit",
  arrangement: "Arrangement of the rolls",
  workingWidth: "Working width",
  "rating.thickness": "Rated thickness at full width",
  "rating.yield": "Rated for yield strength",
  "coneRating.thickness": "Cone rating, thickness",
  "coneRating.slant": "Cone rating, slant height",
  "rolls.topDiameter": "Top roll, diameter",
  "rolls.pinchDiameter": "Pinch roll, diameter",
  "rolls.bendingDiameter": "Bending roll, diameter",
  "slide.origin.0": "Slide, from the top roll towards the bending side",
  "slide.origin.1": "Slide, from the top roll up",
  "slide.angle": "Slide, rise above level, degrees",
  "slide.travel": "Slide, travel up",
  "slide.below": "Slide, goes down below that by",
  "slide.greatestTilt": "Greatest tilt, degrees",
  dropEnd: "Drop end, seen from where the plate goes in: left or right hand",
  "bearings.0": "To the bearing at the drop end",
  "bearings.1": "To the bearing at the fixed end",
  "coneAttachment.fitted": "Stop for cones",
  "coneAttachment.range.0": "Stop, nearest to the drop end",
  "coneAttachment.range.1": "Stop, farthest",
  "coneAttachment.clearRoom": "Clear room beyond the stop",
  "coneAttachment.clearRoomFixedEnd": "Clear room beyond the stop at the fixed end",
  pinchTrim: "Pinch roll can be trimmed",
  smallestDiameter: "Smallest inside diameter closed",
  smallestRadius: "Smallest radius bent",
  bedLength: "Length of the bed",
  force: "Greatest force, with its unit",
  dies: "Die openings, with commas",
  throat: "Throat depth",
  material: "Material",
  thickness: "Thickness",
  length: "Length",
  width: "Width",
  grain: "Lines across its length",
  spacing: "Between two blanks",
  edge: "Along the edges of the plate",
};

/** @returns of a pair as a whole the name of its first size, the key itself where it has no name yet */
export function machineLabel(path: FieldPath): string {
  const key = path.slice(path[0] === "cutting" ? 1 : path.length > 1 ? 2 : 0).join(".");
  // A key may be any word that somebody typed, "constructor" too, to which every object answers.
  const own = [key, `${key}.0`].find((one) => Object.hasOwn(LABELS, one));
  return (own === undefined ? undefined : LABELS[own]) ?? key;
}

import type { FieldPath } from "../../input/problem.ts";

/** What a field of the form is called; where it depends on its group, with the group's name in front. */
const LABELS: Readonly<Record<string, string>> = {
  title: "Title",
  units: "Units of the drawing",
  material: "Material",
  thickness: "Plate thickness",
  largeEnd: "Large end, below",
  smallEnd: "Small end, above",
  rectangularEnd: "Rectangular end, below",
  roundEnd: "Round end, above",
  diameter: "Diameter",
  measured: "Measured to",
  "offset.0": "Offset to the right",
  "offset.1": "Offset away",
  "rectangularEnd.length": "Length, to the right",
  "rectangularEnd.width": "Width, away",
  height: "Height between the ends",
  slant: "Slant height",
  halfAngle: "Half angle, degrees",
  edges: "Edges at the ends",
  seam: "Seam",
  at: "Where it lies, degrees",
  joint: "Joint",
  gap: "Gap for the weld",
  lap: "Lap",
  pieces: "Pieces round the part",
  quantity: "How many",
  mirror: "Pattern outside face up",
  divisions: "Divisions for layout by hand",
  neutral: "Neutral surface, 0 inside … 1 outside",
  trimAllowance: "Allowance for dressing the edges",
  facetError: "Flats off the curve, at most",
  notes: "Notes",
  certificate: "Mill certificate",
  yieldMPa: "Yield strength",
  tolerance: "Tolerance class, ISO 13920",
};

/** @returns the last key itself where it has no name yet */
export function fieldLabel(path: FieldPath): string {
  const keys = path.map(String);
  const [last = "", before = ""] = [keys.at(-1), keys.at(-2)];
  // A key may be any word that somebody typed, "constructor" too, to which every object answers.
  const own = [`${before}.${last}`, last].find((key) => Object.hasOwn(LABELS, key));
  return (own === undefined ? undefined : LABELS[own]) ?? last;
}

/** A field's key in the description of the file: places of a pair belong to the pair. */
export const fieldKey = (path: FieldPath): string =>
  path.filter((step) => typeof step === "string").join(".");

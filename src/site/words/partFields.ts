/** What each key of a part file means. A test compares this list with the schemas. */
export const PART_FIELDS: Readonly<Record<string, string>> = {
  shape: "Which shape it is.",
  title:
    "What the part is called on the drawing, and what heads its sheets. Its files and its report have the name of the part file instead.",
  units: "How numbers without a unit are read: millimetres or inches. Angles are degrees in both.",
  material:
    "A name from the table of materials: its id, name or one of its aliases, in small letters or capitals.",
  thickness:
    "Thickness of the plate: a number, or a sheet gauge such as “10 ga”, which depends on the metal.",

  largeEnd: "The large round end, at height nought.",
  "largeEnd.diameter": "Across the large round end, to the face of the wall that “measured” names.",
  "largeEnd.measured":
    "The face of the wall that the diameter is measured to: inside (clear width), outside (over all), or middle (half-way through the plate).",
  smallEnd: "The small round end, at the full height.",
  "smallEnd.diameter":
    "Across the small round end, to the face of the wall that “measured” names; nought is a cone to a point.",
  "smallEnd.measured":
    "The face of the wall that the diameter is measured to: inside, outside or middle; it may differ from the large end’s. Not needed at a point.",
  "smallEnd.offset":
    "From the centre of the large end to the centre of the small end, seen from above: [to the right, away]. With a minus it goes the other way: to the left, or towards you.",
  rectangularEnd: "The rectangular end, at height nought, laid out with sharp corners.",
  "rectangularEnd.length": "Its size along x, to the right in plan.",
  "rectangularEnd.width": "Its size along y, away in plan.",
  "rectangularEnd.measured":
    "The face of the wall that length and width are measured to: inside, outside or middle.",
  roundEnd: "The round end, at the full height.",
  "roundEnd.diameter": "Across the round end, to the face of the wall that “measured” names.",
  "roundEnd.measured": "The face of the wall that the diameter is measured to: inside, outside or middle.",
  "roundEnd.offset":
    "From the centre of the rectangular end to the centre of the round end, seen from above: [to the right, away]. With a minus it goes the other way: to the left, or towards you. Left out: none.",
  height:
    "Between the end planes; with square edges over all. A right cone takes exactly one of height, slant and halfAngle.",
  slant: "Slant height, along the middle of the wall.",
  halfAngle: "Between the axis and the wall.",

  edges:
    "How the plate edges are left at the ends: “level”, dressed or bevelled to the end planes (the default), or “square” to the plate as cut, for right cones.",
  seam: "Where the seam lies and how it is joined. Left out: the usual place for the shape, butt, no gap.",
  "seam.at":
    "Where the seam lies, seen from above: the direction in which the outside of the wall faces there. Degrees counter-clockwise from the right, or right (0), back (90), left (180), front (270, towards you). The short side of a leaning part is the one towards which the upper end is offset: an offset to the right has it at 0. Left out: there, or where the shape usually has it.",
  "seam.joint":
    "“butt” (the default): the edges meet without lying on each other, and are welded. “lap”: the plate runs on past the seam, and lies on the other edge there, as thin sheet that is riveted, spot-welded or folded does.",
  "seam.gap": "Butt joint: the opening left for the weld; half of it is taken off each edge.",
  "seam.lap": "Lap joint: how far the plate runs on past the seam.",
  pieces: "Equal number of blanks round the part, where it must be split.",
  quantity: "How many to make.",
  mirror: "Draws the pattern with the outside face up, for marking from the other side.",
  divisions: "Divisions of the round for layout by hand; even, 12 if left out.",
  neutral: "Where the neutral surface lies: 0 at the inside face, 1 at the outside face, 0.5 if left out.",
  trimAllowance: "Adds the height that is lost when an edge cut square to the plate is dressed level.",
  facetError:
    "On a brake: how far the flat between two bends may stand off the true curve; the fewer bends, the more. Left out: half the thickness, at least 0.5 mm.",
  notes: "Free text for the page.",
  certificate: "From the mill certificate of the plate.",
  "certificate.yieldMPa":
    "Its yield strength, in place of the nominal one: MPa; or under the key yield with its unit, as in 45 ksi.",
  tolerance:
    "Tolerance class for lengths of welded parts, ISO 13920: from A, the closest, to D, the widest. A length of 1000 mm may be off by 2, 3, 6 or 9 mm either way. The drawing or the customer says which. Left out: no limits are given.",
};

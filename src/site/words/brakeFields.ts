/** What the report's plan of a press brake holds. */
export const BRAKE_FIELDS: Readonly<Record<string, { readonly unit?: string; readonly means: string }>> = {
  "forming.plans[].brake": { means: "Press brakes: lines, angles and hits; null on a roll." },
  "forming.plans[].brake.dieMm": {
    unit: "mm",
    means: "Opening of the V die; the least for this thickness where no shop file was given.",
  },
  "forming.plans[].brake.leastDieMm": { unit: "mm", means: "Least opening for this thickness." },
  "forming.plans[].brake.insideRadiusMm": {
    unit: "mm",
    means: "Inside radius that air bending over this die leaves by itself, about a sixth of the opening.",
  },
  "forming.plans[].brake.leastInsideRadiusMm": {
    unit: "mm",
    means: "Smallest inside radius to bend this plate to.",
  },
  "forming.plans[].brake.leastInsideRadiusBasis": { means: "Where that comes from." },
  "forming.plans[].brake.permittedFacetMm": {
    unit: "mm",
    means:
      "Facet error that the hits are chosen for: the part’s facetError, else half the thickness, at least 0.5 mm.",
  },
  "forming.plans[].brake.zones": { means: "The curved stretches between flats and seam edges." },
  "forming.plans[].brake.zones[].piece": { means: "The piece it lies on." },
  "forming.plans[].brake.zones[].zone": { means: "Its number on the piece, from seam 1." },
  "forming.plans[].brake.zones[].spaces": { means: "Equal spaces that it is shared in." },
  "forming.plans[].brake.zones[].hits": { means: "Bend lines, its borders with flats included." },
  "forming.plans[].brake.zones[].turnDeg": {
    unit: "°",
    means: "Turning of the stretch: the sum of its bends.",
  },
  "forming.plans[].brake.zones[].flatsDeg": {
    unit: "°",
    means:
      "Angle between the two flats beside it, inside and square to the corner; null where a seam edge adjoins.",
  },
  "forming.plans[].brake.zones[].seamDeg": {
    unit: "°",
    means: "What is left to seam edges that lie on the curve.",
  },
  "forming.plans[].brake.zones[].spacingMm": { means: "Distance between lines along the edges." },
  "forming.plans[].brake.zones[].spacingMm.wide": {
    unit: "mm",
    means: "Where the lines lie farthest apart: at the round end, or a cone’s large end.",
  },
  "forming.plans[].brake.zones[].spacingMm.narrow": {
    unit: "mm",
    means: "Where they run together; nought at the tip of a corner.",
  },
  "forming.plans[].brake.zones[].facetMm": {
    unit: "mm",
    means: "Height of a facet’s middle under the true curve where the lines lie farthest apart.",
  },
  "forming.plans[].brake.zones[].roomForAll": {
    means: "Does the die leave room for as many hits as the facet error asks?",
  },
  "forming.plans[].brake.lines": { means: "Bend lines, piece by piece from seam 1." },
  "forming.plans[].brake.lines[].piece": { means: "The piece it lies on." },
  "forming.plans[].brake.lines[].number": { means: "Its number on the piece, from seam 1." },
  "forming.plans[].brake.lines[].zone": { means: "The stretch it belongs to." },
  "forming.plans[].brake.lines[].kind": { means: "“border” beside a flat, else “inner”." },
  "forming.plans[].brake.lines[].bendDeg": { unit: "°", means: "What to bend it by, after springback." },
  "forming.plans[].brake.lines[].planDeg": {
    unit: "°",
    means: "Direction of the outward normal there, in plan.",
  },
  "forming.plans[].brake.lines[].lengthMm": { unit: "mm", means: "True length from end to end." },
  "forming.plans[].brake.lines[].stopsShortMm": {
    unit: "mm",
    means: "How far it stops short of the end where the lines run together.",
  },
  "forming.plans[].brake.lines[].alongMm": {
    means: "Where it meets the edges, from seam edge 1 of the plate.",
  },
  "forming.plans[].brake.lines[].alongMm.a": { unit: "mm", means: "Along end A." },
  "forming.plans[].brake.lines[].alongMm.b": { unit: "mm", means: "Along end B." },
  [`forming.plans[].brake.lines[].from`]: { unit: "mm", means: "Its point [x, y] on the pattern at end A." },
  "forming.plans[].brake.lines[].to": { unit: "mm", means: "Its point [x, y] on the pattern at end B." },
  "forming.plans[].brake.lines[].order": { means: "In which place it is hit, on each piece." },
  "forming.plans[].brake.lines[].depth": { means: "Letter of the ram depth that it is bent by." },
  "forming.plans[].brake.lines[].forceKN": { unit: "kN", means: "Force of its hit." },
  "forming.plans[].brake.depths": {
    means:
      "The different angles of the lines, rising: each is tried on a strip and has a ram depth of its own.",
  },
  "forming.plans[].brake.depths[].letter": { means: "Its letter, from A." },
  "forming.plans[].brake.depths[].fromDeg": { unit: "°", means: "Least angle of its lines." },
  "forming.plans[].brake.depths[].toDeg": { unit: "°", means: "Greatest angle of its lines." },
  "forming.plans[].brake.depths[].kind": { means: "“border”, “inner” or “both”: which lines these are." },
  "forming.plans[].brake.depths[].lines": { means: "How many lines." },
  "forming.plans[].brake.depths[].beginMm": {
    unit: "mm",
    means: "Depth from touching at which plate that springs back by nothing has the least of these angles.",
  },
  "forming.plans[].brake.depths[].perDegreeMm": {
    unit: "mm",
    means: "How much deeper a degree more is, about.",
  },
  "forming.plans[].brake.tensileMPa": {
    unit: "MPa",
    means: "Tensile strength that forces are reckoned with: the least of the grade.",
  },
  "forming.plans[].brake.tensileMostMPa": {
    unit: "MPa",
    means:
      "Greatest tensile strength that the grade allows, or null where its source says none for this thickness.",
  },
  "forming.plans[].brake.forceConstant": { means: "Constant of the force formula." },
  "forming.plans[].brake.forceConstant.used": { means: "The one used." },
  "forming.plans[].brake.forceConstant.least": { means: "The least in print." },
  "forming.plans[].brake.forceConstant.greatest": { means: "The greatest in print." },
  "forming.plans[].brake.greatestForceKN": { unit: "kN", means: "Force of the strongest hit." },
  "forming.plans[].brake.brakeForceKN": { unit: "kN", means: "What the brake has, or null." },
  "forming.plans[].brake.longestHitMm": { unit: "mm", means: "Longest length that one hit bends." },
  "forming.plans[].brake.forceLimitKN": {
    unit: "kN",
    means:
      "What to set the brake’s force limit to: the strongest hit at the greatest constant in plate of the grade’s least tensile strength, no more than the brake has.",
  },
  "forming.plans[].brake.forceLimitMostKN": {
    unit: "kN",
    means:
      "What that limit may be raised to where the plate proves to be the strongest of its grade, no more than the brake has; null where the greatest strength is not known.",
  },
  "forming.plans[].brake.forceKNPerM": {
    unit: "kN/m",
    means:
      "What a metre of punch and die takes at the greatest constant, in the strongest plate of the grade where that is known.",
  },
  "forming.plans[].brake.turnDeg": { unit: "°", means: "Turning of the whole part." },
  "forming.plans[].brake.piecesToComeOff": {
    means: "Pieces it has to be in to come off the punch, where a number is known; else those that it is in.",
  },
  "forming.plans[].brake.closes": {
    means: "What is done where a piece closes round the punch; null where each comes off.",
  },
  "forming.plans[].brake.closes.turnDeg": {
    unit: "°",
    means: "What the piece that is bent most turns by.",
  },
  "forming.plans[].brake.closes.better": {
    means: "The fewest pieces that each come off; null where no number is known.",
  },
  "forming.plans[].brake.closes.better.pieces": { means: "How many." },
  "forming.plans[].brake.closes.better.keys": {
    means: "What the part file is to say for that: pieces, and seam.at where the seam as drawn does not go.",
  },
  "forming.plans[].brake.closes.better.turnDeg": { unit: "°", means: "What one of them turns by at most." },
  "forming.plans[].brake.closes.left": {
    means: "As drawn: the lines hit last, which the brake leaves out so that the seam stays open.",
  },
  "forming.plans[].brake.closes.left[].piece": { means: "The piece of such a line." },
  "forming.plans[].brake.closes.left[].line": { means: "Its number." },
  "forming.plans[].brake.closes.openMm": {
    unit: "mm",
    means: "How far the seam edges then stand apart, about.",
  },
  "forming.plans[].brake.closes.openAt": { means: "At which end." },
  "forming.plans[].brake.behind": {
    means:
      "Plate behind the punch, at the hit where it is most; null where nothing is hit. The piece is turned so that its shallower side is behind.",
  },
  "forming.plans[].brake.behind.depthMm": {
    unit: "mm",
    means: "The shallower side: the outline’s greatest distance square to the line, measured flat.",
  },
  "forming.plans[].brake.behind.otherMm": {
    unit: "mm",
    means: "The most on the deeper side of any line: what would lie behind the wrong way round.",
  },
  "forming.plans[].brake.behind.piece": { means: "The piece of that hit." },
  "forming.plans[].brake.behind.line": { means: "Its number." },
  "forming.plans[].brake.behind.inOrder": {
    means:
      "The most that is behind in the order of hits: the side of the seam edge that is come from, bent by three quarters of its angles.",
  },
  "forming.plans[].brake.behind.inOrder.depthMm": { unit: "mm", means: "How deep it reaches, about." },
  "forming.plans[].brake.behind.inOrder.piece": { means: "The piece of that hit." },
  "forming.plans[].brake.behind.inOrder.line": { means: "Its number." },
  "forming.plans[].brake.behind.turned": {
    means:
      "Lines at which the piece is turned the other way round: that side would reach deeper than depthMm.",
  },
  "forming.plans[].brake.behind.turned[].piece": { means: "The piece of such a line." },
  "forming.plans[].brake.behind.turned[].line": { means: "Its number." },
  "forming.plans[].brake.throatMm": {
    unit: "mm",
    means: "Depth behind the bend line that the brake has, or null where the shop file does not say.",
  },
  "forming.plans[].brake.tips": {
    means: "The folds at the tips of corners, where they want a wider die than the lines; else null.",
  },
  "forming.plans[].brake.tips.leastDieMm": {
    unit: "mm",
    means: "Least opening for the least inside radius advised.",
  },
  "forming.plans[].brake.tips.dieMm": {
    unit: "mm",
    means: "The rack’s narrowest die that opens so far; null where no rack is known, or none does.",
  },
  "forming.plans[].brake.tips.longestMm": {
    unit: "mm",
    means: "The longest fold: what the lines leave at a tip.",
  },
  "forming.plans[].brake.tips.forceLimitKN": {
    unit: "kN",
    means: "What to set the force limit to for it, no more than the brake has.",
  },
  "forming.plans[].brake.tips.forceLimitMostKN": {
    unit: "kN",
    means: "What that may be raised to for the strongest plate of the grade; null where that is not known.",
  },
  "forming.plans[].brake.tips.throughout": { means: "Why this die does not serve the lines too." },
  "forming.plans[].brake.tips.throughout.stopsShortMm": {
    unit: "mm",
    means: "How far lines would stop short over it, at most.",
  },
  "forming.plans[].brake.tips.throughout.facetMm": {
    unit: "mm",
    means: "How far its facets would stand off the true curve, at most.",
  },
  "forming.plans[].brake.remarks": { means: "What has to be looked at before the first hit, worst first." },
  "forming.plans[].brake.remarks[].id": {
    means: "“throat”, “off-the-punch”, “facets”, “sharp-fold”, “seam-edge” or “others”.",
  },
  "forming.plans[].brake.remarks[].step": {
    means: "The step at which it bites: “tooling”, “bend”, “tips” or “shut”.",
  },
  "forming.plans[].brake.remarks[].text": { means: "In sentences." },
  "forming.plans[].brake.remarks[].atStep": {
    means: "What that step says of it: the same, or that it is to be looked at first.",
  },
  "forming.plans[].brake.basis": { means: "A source of the list, or “derived here”." },
  "forming.plans[].brake.rule": { means: "The rules in words." },
};

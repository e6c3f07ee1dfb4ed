import { BRAKE_FIELDS } from "./brakeFields.ts";
import { PLAN_FIELDS, PLAN_REPEATED } from "./planFields.ts";
import { SPRINGBACK_FIELDS } from "./springbackFields.ts";

/** One field of a file as the reference tells it; the unit is part of the name where there is one. */
export interface FieldWords {
  readonly unit?: string;
  readonly means: string;
}

/** Lists that repeat the fields of another; they are named here and opened there. */
export const REPEATED: readonly string[] = [
  "part",
  "forming.machines[].checks",
  "forming.closure[].small",
  "solid.b",
  ...PLAN_REPEATED,
];

/** Every field of the report, in the order of the file. A test compares this list with the code. */
export const REPORT_FIELDS: Readonly<Record<string, FieldWords>> = {
  part: {
    means:
      "The part file as read, lengths in mm and angles in degrees whatever its own units were, and its name.",
  },

  shape: { means: "The part as a solid body, before any plate is cut." },
  "shape.areaMm2": { unit: "mm²", means: "Area of the skin as laid out, all round." },
  "shape.volumeMm3": { unit: "mm³", means: "Volume within the laid surface, between the end planes." },
  "shape.contentsMm3": {
    unit: "mm³",
    means: "Volume within the inside faces: what it holds when filled level.",
  },
  "shape.rims": { means: "Girth of each end of the laid surface." },
  "shape.rims.a": {
    unit: "mm",
    means: "Girth of end A, the end at height nought: the large or the rectangular end.",
  },
  "shape.rims.b": { unit: "mm", means: "Girth of end B: the small or the round end; nought at a point." },
  "shape.heightMm": { unit: "mm", means: "Height between the end planes." },
  "shape.elementMm": { means: "Element lines from end to end, all round." },
  "shape.elementMm.shortest": { unit: "mm", means: "The shortest." },
  "shape.elementMm.longest": { unit: "mm", means: "The longest." },
  "shape.seamDeg": {
    unit: "°",
    means: "Where the seam lies: direction of the outward normal in plan, counter-clockwise from +x.",
  },
  "shape.turningDeg": {
    unit: "°",
    means:
      "Turning over the whole skin: the sum of all bends. For a right cone 360° times the cosine of the half angle.",
  },

  "shape.edgeLossMm": {
    means:
      "What an edge cut square to the plate lacks of the end plane at one face: half the thickness times the tangent of the lean. Nought where edges stay square.",
  },
  "shape.edgeLossMm.least": { unit: "mm", means: "The least round the part." },
  "shape.edgeLossMm.greatest": { unit: "mm", means: "The greatest round the part." },

  blanks: { means: "The plates to cut, one for each piece, after gap and lap." },
  "blanks[].piece": { means: "Number of the piece, from 1, counter-clockwise from the seam." },
  "blanks[].sameAs": { means: "An earlier piece with the very same outline, or null." },
  "blanks[].faceUp": { means: "Which face is towards the reader: “inside” or “outside”." },
  "blanks[].areaMm2": { unit: "mm²", means: "Area of the plate." },
  "blanks[].massKg": { unit: "kg", means: "Mass of the plate from its area, thickness and nominal density." },
  "blanks[].asDrawn": { means: "The upright rectangle that holds it as drawn." },
  "blanks[].asDrawn.xMm": { unit: "mm", means: "Its width, as x is measured." },
  "blanks[].asDrawn.yMm": { unit: "mm", means: "Its height, as y is measured." },
  "blanks[].box": { means: "The rectangle of least area that holds it, at any angle." },
  "blanks[].box.lengthMm": { unit: "mm", means: "Its longer side." },
  "blanks[].box.widthMm": { unit: "mm", means: "Its shorter side." },
  "blanks[].box.turnDeg": {
    unit: "°",
    means:
      "How far the drawn pattern is turned for it, so that the longer side lies level; counter-clockwise is positive.",
  },
  "blanks[].cutLengthMm": { unit: "mm", means: "Length of the outline: the way of the torch." },
  "blanks[].outline": {
    unit: "mm",
    means:
      "Points [x, y] of the outline, counter-clockwise from where seam 1 meets end A; the first is not repeated and none is negative.",
  },
  "blanks[].edges": { means: "The edges of the outline, in its order." },
  "blanks[].edges[].name": {
    means: "“large end”, “small end”, “rectangular end”, “round end”, “seam 1” or “seam 2”.",
  },
  "blanks[].edges[].lengthMm": { unit: "mm", means: "Length of the edge on the exact skin." },
  "blanks[].edges[].start": {
    means: "Index into outline where the edge begins; it runs to where the next begins.",
  },
  "blanks[].lines": { means: "Straight lines to mark on the plate, from end A to end B." },
  "blanks[].lines[].kind": {
    means: "“element” for a line of the layout, “bend” for a line that the brake bends.",
  },
  // In backticks: a quote after the word would read as an import to the test of the layers.
  [`blanks[].lines[].from`]: { unit: "mm", means: "Its point [x, y] at end A." },
  "blanks[].lines[].to": { unit: "mm", means: "Its point [x, y] at end B." },
  "blanks[].lines[].lengthMm": { unit: "mm", means: "Its true length." },
  "blanks[].lines[].planDeg": { unit: "°", means: "Direction of the outward normal there, in plan." },
  "blanks[].lines[].bendDeg": {
    unit: "°",
    means: "What this line turns the plate by: the turning between the middles of the zones on either side.",
  },

  massKg: { unit: "kg", means: "Mass of one part, all its blanks." },

  cone: {
    means: "Only for right cones: the figures that a pattern is struck with, of the middle of the wall.",
  },
  "cone.halfAngleDeg": { unit: "°", means: "Angle between the axis and the wall." },
  "cone.slantMm": { unit: "mm", means: "Slant height: from end to end along the wall." },
  "cone.outerRadiusMm": {
    unit: "mm",
    means: "Radius that strikes the large edge of the pattern; null for a pipe.",
  },
  "cone.innerRadiusMm": {
    unit: "mm",
    means: "Radius that strikes the small edge; nought at a point, null for a pipe.",
  },
  "cone.sectorDeg": {
    unit: "°",
    means: "Angle between the seam edges at the centre of those radii, before gap and lap.",
  },

  hand: { means: "Layout by hand with few divisions, and what it loses against the exact pattern." },
  "hand.divisions": { means: "Divisions of the round." },
  "hand.shortfallMm": { means: "Girth lost by stepping off chords in place of arcs." },
  "hand.shortfallMm.a": { unit: "mm", means: "At end A." },
  "hand.shortfallMm.b": { unit: "mm", means: "At end B." },
  "hand.pointMm": {
    unit: "mm",
    means: "Greatest distance between a point laid out by hand and where it belongs.",
  },
  "hand.rows": { means: "The marking table: one row for each element line." },
  "hand.rows[].piece": { means: "The piece that the line lies on." },
  "hand.rows[].number": { means: "Number of the line, from seam 1." },
  "hand.rows[].planDeg": { unit: "°", means: "Direction of the outward normal there, in plan." },
  "hand.rows[].a": { unit: "mm", means: "Its point [x, y] on the pattern at end A." },
  "hand.rows[].b": { unit: "mm", means: "Its point [x, y] on the pattern at end B." },
  "hand.rows[].trueMm": { unit: "mm", means: "True length of the element line." },
  "hand.rows[].bendDeg": {
    unit: "°",
    means:
      "What the plate turns there: the turning between the middles of the zones on either side; at a seam that of half a zone.",
  },
  "hand.rows[].planMm": {
    unit: "mm",
    means: "Its length in plan: the base of its true-length triangle, whose upright is the height.",
  },
  "hand.rows[].next": {
    means:
      "To the next line: straight distances in space, as the true-length diagram gives them; null on the last.",
  },
  "hand.rows[].next.flat": { means: "The same on the flat pattern: what dividers span there." },
  "hand.rows[].next.flat.aMm": { unit: "mm", means: "Chord along end A." },
  "hand.rows[].next.flat.bMm": { unit: "mm", means: "Chord along end B." },
  "hand.rows[].next.flat.diagonalMm": { unit: "mm", means: "Diagonal from end A to end B." },
  "hand.rows[].next.aMm": { unit: "mm", means: "Chord along end A to the next line." },
  "hand.rows[].next.bMm": { unit: "mm", means: "Chord along end B to the next line." },
  "hand.rows[].next.diagonalMm": {
    unit: "mm",
    means: "From this line’s point at end A to the next line’s point at end B.",
  },

  solid: {
    means: "What the views are drawn from: points [x, y, z] in space, x right in plan, y away, z up.",
  },
  "solid.heightMm": { unit: "mm", means: "Height between the end planes." },
  "solid.a": { means: "The rims of the wall at end A, one closed curve for each face." },
  "solid.a.inside": { unit: "mm", means: "Rim of the inside face; empty where there is none." },
  "solid.a.middle": { unit: "mm", means: "Rim of the middle of the wall." },
  "solid.a.outside": { unit: "mm", means: "Rim of the outside face." },
  "solid.b": { means: "The same at end B; one point at an apex." },
  "solid.elements": { means: "The element lines of the layout by hand, from the seam round to the seam." },
  "solid.elements[].planDeg": { unit: "°", means: "Direction of the outward normal there, in plan." },
  "solid.elements[].a": { unit: "mm", means: "Its point at end A." },
  "solid.elements[].b": { unit: "mm", means: "Its point at end B." },
  "solid.seams": { means: "The seam line of every piece." },
  "solid.seams[].planDeg": { unit: "°", means: "Direction of the outward normal there, in plan." },
  "solid.seams[].a": { unit: "mm", means: "Its point at end A." },
  "solid.seams[].b": { unit: "mm", means: "Its point at end B." },

  accuracy: { means: "How far the figures can be trusted; nothing here is bound to come out small." },
  "accuracy.outlineMm": {
    unit: "mm",
    means:
      "Largest move of an outline point at the last halving of the divisions, new points against the chord they replace included.",
  },
  "accuracy.rimMm": { unit: "mm", means: "Developed ends against the exact girth." },
  "accuracy.areaRel": { unit: "share", means: "Flat area against the exact area of the skin." },
  "accuracy.wallMm": {
    unit: "mm",
    means:
      "Greatest departure of the laid surface from the exact parallel surface of the wall. Nought for smooth skins; for skins with corners the trade’s rule is used.",
  },
  "accuracy.lengthMm": {
    unit: "mm",
    means: "Flat lengths against lengths in space: a check of rounding only.",
  },
  "accuracy.closureMm": {
    unit: "mm",
    means: "How well the seam closes on itself: a check of rounding only.",
  },
  "accuracy.stations": { means: "Element lines that the pattern was laid out with." },

  forming: { means: "Whether and how the blank can be formed." },
  "forming.route": {
    means: "“roll” or “brake”: on the best machine that takes it, or the usual way for the shape.",
  },
  "forming.machine": { means: "The machine chosen, or null where no shop was given or none takes it." },
  "forming.verdict": { means: "The worst verdict of checks: “pass”, “caution” or “fail”." },
  "forming.checks": {
    means:
      "The checks that need no machine, then those of the chosen machine, or of the nearest miss where none takes it.",
  },
  "forming.checks[].id": { means: "Fixed word for the question." },
  "forming.checks[].title": { means: "The question in words." },
  "forming.checks[].value": {
    means: "What this part asks for, in unit; null where the question has no number.",
  },
  "forming.checks[].limit": { means: "What the machine or the rule allows, in unit." },
  "forming.checks[].sense": {
    means: "“at most” or “at least”: which way the limit holds; null where there is none.",
  },
  "forming.checks[].ofShop": {
    means:
      "Which of the numbers the shop file gives in other units than the part’s: it is told in those first. Not present elsewhere.",
  },
  "forming.checks[].ofShop.which": { means: "“value” or “limit”." },
  "forming.checks[].ofShop.units": { means: "Units of the shop file, “mm” or “in”." },
  "forming.checks[].unit": { means: "Unit of value and limit." },
  "forming.checks[].margin": {
    unit: "share",
    means: "Share of the limit still free: 0.2 is a fifth; negative is beyond it.",
  },
  "forming.checks[].verdict": {
    means: "“pass” (goes), “caution” (goes with care) or “fail” (does not go here).",
  },
  "forming.checks[].advice": { means: "What to do about it, in one sentence." },
  "forming.checks[].basis": {
    means: "A source of the list, “common practice, no source”, or “derived here”.",
  },
  "forming.checks[].rule": { means: "The rule behind the number." },
  "forming.machines": { means: "Every machine of the shop file and its own answer." },
  "forming.machines[].machine": { means: "Its name in the shop file." },
  "forming.machines[].kind": { means: "“plate roll” or “press brake”." },
  "forming.machines[].verdict": {
    means: "The part on this machine: the worst verdict of its checks and of those that need no machine.",
  },
  "forming.machines[].checks": { means: "Its checks, with the fields of forming.checks." },
  "forming.closure": {
    means:
      "Right cones: what template and tape show while the blank closes. The last row is the closed cone.",
  },
  "forming.closure[].closed": {
    unit: "share",
    means: "Share of the full turn that the blank sweeps about the axis.",
  },
  "forming.closure[].mark": { means: "Why the row is there, such as “cap of the first pass”, or null." },
  "forming.closure[].share": {
    unit: "share",
    means: "Share of the final bend; null where the flat blank is already this far closed.",
  },
  "forming.closure[].leadMm": {
    unit: "mm",
    means:
      "What the first pass on forming.machine leaves straight at one seam edge: the gaps of the row are reckoned with it. 0 where nothing is known of it, and where the cone is closed.",
  },
  "forming.closure[].large": { means: "At the large end; null where there are no numbers." },
  "forming.closure[].large.levelRadiusMm": {
    unit: "mm",
    means: "Radius of the middle of the wall in the end plane.",
  },
  "forming.closure[].large.squareRadiusMm": {
    unit: "mm",
    means: "Radius of the middle of the wall square to an element line.",
  },
  "forming.closure[].large.gapMm": { unit: "mm", means: "Gap between the seam edges, middle of the wall." },
  "forming.closure[].large.insideLevelRadiusMm": {
    unit: "mm",
    means: "Radius of a template held level in the end.",
  },
  "forming.closure[].large.insideSquareRadiusMm": {
    unit: "mm",
    means: "Radius of a template held square to an element line.",
  },
  "forming.closure[].large.insideGapMm": { unit: "mm", means: "Gap from inside corner to inside corner." },
  "forming.closure[].small": { means: "The same at the small end; null at a point too." },
  ...SPRINGBACK_FIELDS,
  ...PLAN_FIELDS,
  ...BRAKE_FIELDS,

  notes: { means: "Remarks on how the part was laid out, in sentences." },
};

import { BY_HAND_FIELDS } from "./byHandFields.ts";

/** Fields of the report's plans; they repeat one another and are named here. */
export const PLAN_REPEATED: readonly string[] = [
  "forming.plans[].settings.zones[].passes[].middle",
  "forming.plans[].settings.zones[].passes[].small",
];

const PASS = "forming.plans[].settings.zones[].passes[]";

/** Plans: what the operator works by. */
export const PLAN_FIELDS: Readonly<Record<string, { readonly unit?: string; readonly means: string }>> = {
  "forming.plans": {
    means:
      "How each machine of the shop that takes the part makes it, in the shop’s order; empty where none does. Without a shop file one plan for the usual way.",
  },
  "forming.plans[].machine": { means: "Its name in the shop file; null where no shop file was given." },
  "forming.plans[].route": { means: "“roll” or “brake”." },
  "forming.plans[].settings": {
    means: "Where to set the bending roll of an initial-pinch roll that gives its slide; else null.",
  },
  "forming.plans[].settings.stopMm": {
    unit: "mm",
    means: "From the end of the roll face to the small edge on its stop; null for a pipe.",
  },
  "forming.plans[].settings.flat": { means: "Where the bending roll touches the flat plate." },
  "forming.plans[].settings.flat.acrossMm": { unit: "mm", means: "Level distance from the pinch line." },
  "forming.plans[].settings.flat.upMm": { unit: "mm", means: "Up the slide from its origin." },
  "forming.plans[].settings.travelMm": { unit: "mm", means: "From the flat plate to the end of the slide." },
  "forming.plans[].settings.lying": {
    means:
      "How the flat blank is laid on the rolls; null for a pipe, and for a skin that is curved unevenly.",
  },
  "forming.plans[].settings.lying.by": {
    means:
      "What it is laid straight by: the leading seam edge in the bending roll’s “groove”, or the “element” line at the pinch.",
  },
  "forming.plans[].settings.lying.turnedDeg": {
    unit: "°",
    means: "The leading seam edge from parallel to the rolls, its large end ahead.",
  },
  "forming.plans[].settings.lying.parallelAfterMm": {
    unit: "mm",
    means: "Large edge that goes through the pinch until the element line there is parallel to the rolls.",
  },
  "forming.plans[].settings.lying.cornerInMm": {
    unit: "mm",
    means: "The small end’s corner at the leading seam edge, further in than the stop.",
  },
  "forming.plans[].settings.lying.pastMm": {
    unit: "mm",
    means: "How far the flat blank reaches past the stop, at most.",
  },
  "forming.plans[].settings.lying.beforeMm": {
    unit: "mm",
    means: "That place before the pinch; below 0 behind it.",
  },
  "forming.plans[].settings.zones": {
    means:
      "Stretches of the skin that are rolled with one setting: one for a right cone or a pipe, several from the seam round where the curvature is uneven.",
  },
  "forming.plans[].settings.zones[].fromDeg": {
    unit: "°",
    means: "Plan angle of its first element, counter-clockwise.",
  },
  "forming.plans[].settings.zones[].toDeg": {
    unit: "°",
    means: "Plan angle of its last element; it may pass 360.",
  },
  "forming.plans[].settings.zones[].largeRadiusMm": {
    unit: "mm",
    means: "Middle radius square to the element at the large end that it is set for.",
  },
  "forming.plans[].settings.zones[].smallRadiusMm": { unit: "mm", means: "The same at the small end." },
  "forming.plans[].settings.zones[].slantMm": { unit: "mm", means: "Mean length of its elements." },
  "forming.plans[].settings.zones[].spread": {
    means: "Slackest over tightest radius within the zone, at the worse end.",
  },
  "forming.plans[].settings.zones[].begins": {
    means:
      "Where the zone begins on the plate, to be marked; null for the first, which begins at seam edge 1, and where the blanks are not known.",
  },
  "forming.plans[].settings.zones[].begins.piece": { unit: "-", means: "On which piece." },
  "forming.plans[].settings.zones[].begins.largeMm": {
    unit: "mm",
    means: "Along the edge of the large end, from seam edge 1.",
  },
  "forming.plans[].settings.zones[].begins.smallMm": {
    unit: "mm",
    means: "Along the edge of the small end, from seam edge 1.",
  },
  "forming.plans[].settings.zones[].passes": {
    means:
      "A first trial from below, start, middle and end of the first pass’s window, and the finished bend.",
  },
  [`${PASS}.id`]: { means: "“trial”, “start”, “aim”, “end” or “finished”." },
  [`${PASS}.label`]: { means: "The same in words." },
  [`${PASS}.closed`]: {
    unit: "share",
    means: "Share of the turn that the blank sweeps then; null where the curvature is uneven.",
  },
  [`${PASS}.share`]: { unit: "share", means: "Share of the final bend." },
  [`${PASS}.large`]: { means: "What the large end asks by itself." },
  [`${PASS}.large.freeMm`]: {
    unit: "mm",
    means: "Middle radius square to the element that the plate is to spring back to.",
  },
  [`${PASS}.large.lowMm`]: {
    unit: "mm",
    means: "Raise from the flat plate, as if the plate had sprung back already; null where refused.",
  },
  [`${PASS}.large.bestMm`]: { unit: "mm", means: "Raise to start with: two thirds from low to high." },
  [`${PASS}.large.highMm`]: { unit: "mm", means: "Raise as if the plate still were fully bent." },
  [`${PASS}.large.refused`]: { means: "Why the roll cannot bend it so, or null." },
  [`${PASS}.middle`]: { means: "The same at half the slant." },
  [`${PASS}.small`]: { means: "The same at the small end." },
  [`${PASS}.start`]: {
    means:
      "Where to set the straight roll; null where an end is refused. Not to be set where one of problems stops it.",
  },
  [`${PASS}.start.largeMm`]: { unit: "mm", means: "Raise at the large edge." },
  [`${PASS}.start.middleMm`]: { unit: "mm", means: "Raise at half the slant." },
  [`${PASS}.start.smallMm`]: { unit: "mm", means: "Raise at the small edge." },
  [`${PASS}.start.middleOverbend`]: {
    means:
      "How many times too high a straight roll set for both ends by themselves would stand at half the slant; both ends are started lower by it.",
  },
  [`${PASS}.start.tiltDeg`]: { unit: "°", means: "Tilt of the roll, the small end higher." },
  [`${PASS}.start.smallBearingMm`]: {
    unit: "mm",
    means: "Raise at the bearing beyond the small edge; null where the shop file gives no bearings.",
  },
  [`${PASS}.start.largeBearingMm`]: { unit: "mm", means: "Raise at the bearing beyond the large edge." },
  [`${PASS}.lessTilt`]: {
    means:
      "The most tilt that goes on this machine, the raise at the large edge kept, where that of the start does not; else null.",
  },
  [`${PASS}.lessTilt.largeMm`]: { unit: "mm", means: "Raise at the large edge." },
  [`${PASS}.lessTilt.smallMm`]: { unit: "mm", means: "Raise at the small edge, which stays open." },
  [`${PASS}.lessTilt.tiltDeg`]: { unit: "°", means: "Tilt of the roll, the small end higher." },
  [`${PASS}.lessTilt.smallBearingMm`]: {
    unit: "mm",
    means: "Raise at the bearing beyond the small edge; null where the shop file gives no bearings.",
  },
  [`${PASS}.lessTilt.largeBearingMm`]: { unit: "mm", means: "Raise at the bearing beyond the large edge." },
  [`${PASS}.travelLeftMm`]: { unit: "mm", means: "Travel that is left at the higher end." },
  [`${PASS}.pinchClearMm`]: {
    unit: "mm",
    means:
      "Least clear distance between bending roll and pinch roll on the way up; null where no pinch roll is given.",
  },
  [`${PASS}.problems`]: { means: "What stands in the way of these settings on this machine." },
  [`${PASS}.problems[].id`]: { means: "“refused”, “travel”, “origin”, “tilt” or “pinch”." },
  [`${PASS}.problems[].stops`]: {
    means:
      "What it stops: “part”, the part on this machine; “setting”, this setting as it stands; “nothing known” where it has to be found out.",
  },
  [`${PASS}.problems[].by`]: {
    unit: "mm",
    means: "By how much (of a tilt its degrees); 0 where it is a matter of yes or no.",
  },
  [`${PASS}.problems[].words`]: { means: "In a sentence." },
  "forming.plans[].settings.rule": { means: "What the settings mean and what they are worth." },
  "forming.plans[].settings.basis": { means: "A source of the list, or “derived here”." },
  "forming.plans[].care": { means: "Titles of this machine’s checks that ask for care." },
  "forming.plans[].noSettings": {
    means: "Why a plate roll has no settings; null where it has them, and on a brake.",
  },

  "forming.plans[].steps": { means: "The numbered work sheet for this part on this machine." },
  "forming.plans[].steps[].number": { means: "Its place in the order of the work, from 1." },
  "forming.plans[].steps[].id": { means: "Fixed word for the step, such as “align”." },
  "forming.plans[].steps[].phase": {
    means:
      "“set-up”, “first pass”, “turning the job round”, “second pass”, “closing”, “bending”, “tack and re-round” or “inspection”.",
  },
  "forming.plans[].steps[].title": { means: "The step in a few words." },
  "forming.plans[].steps[].text": { means: "What to do, in sentences with this part’s own numbers." },
  "forming.plans[].steps[].figures": { means: "The step’s numbers." },
  "forming.plans[].steps[].figures[].label": { means: "What the number is." },
  "forming.plans[].steps[].figures[].value": { means: "The number, in unit." },
  "forming.plans[].steps[].figures[].unit": { means: "Unit of the value." },
  "forming.plans[].steps[].figures[].basis": {
    means: "A source of the list, “common practice, no source”, “as drawn” or “derived here”.",
  },
  "forming.plans[].steps[].figures[].read": {
    means:
      "“scale” for a setting on the machine’s scale, “tape” for what a tape or a template tells. Not present for others.",
  },
  "forming.plans[].steps[].figures[].inShop": {
    means:
      "Units of the shop file where the number is one of the shop’s, as a die, and the part has others: it is told in them first. Not present elsewhere.",
  },
  "forming.plans[].steps[].cautions": { means: "What can hurt or spoil at this very step." },
  ...BY_HAND_FIELDS,
  "forming.plans[].steps[].toNote": { means: "Boxes to write down what was really set or measured." },
  "forming.plans[].steps[].toNote[].label": { means: "What goes into the box." },
  "forming.plans[].steps[].toNote[].unit": { means: "Its unit." },
  "forming.plans[].steps[].toNote[].planned": {
    means: "What the plan has there, in unit. Not present where the plan has no one number.",
  },
  "forming.plans[].steps[].toNote[].inShop": { means: "As of a figure." },
  "forming.plans[].steps[].toNote[].onto": {
    means: "“reading at 0” where the scale shows that reading plus what is planned. Not present elsewhere.",
  },
  "forming.plans[].steps[].toNote[].carried": {
    means:
      "true where what the first pass taught comes on top of what is planned, or off it. Not present elsewhere.",
  },
  "forming.plans[].steps[].example": {
    means:
      "An example with the part’s own numbers, printed below the table of settings. Not present at other steps.",
  },
  "forming.plans[].steps[].overruled": {
    means:
      "Zones, counted from 1, whose setting by the plan the part’s own trials overrule at this step. Not present where none are kept.",
  },
  "forming.plans[].steps[].basis": { means: "Where the way of doing it comes from." },
  "forming.plans[].batch": {
    means: "In which order a lot goes through, in sentences; empty for a single blank.",
  },

  "forming.evenness": {
    means:
      "Skins that are curved unevenly, such as eccentric cones: how much, and what to do about it; else null.",
  },
  "forming.evenness.spread": { means: "Slackest over tightest radius square to the element, all round." },
  "forming.evenness.spread.large": { means: "At the large end." },
  "forming.evenness.spread.small": { means: "At the small end; null at a point." },
  "forming.evenness.zones": {
    means: "Zones of one setting each that it takes; 0 where it cannot be rolled.",
  },
  "forming.evenness.recommendation": { means: "“roll”, “roll in zones” or “brake”." },
  "forming.evenness.reason": { means: "Why, in a sentence." },
  "forming.evenness.samples": { means: "Radius against plan angle, from the seam round, for plotting." },
  "forming.evenness.samples[].planDeg": { unit: "°", means: "Direction of the outward normal in plan." },
  "forming.evenness.samples[].largeRadiusMm": {
    unit: "mm",
    means: "Middle radius square to the element at the large end.",
  },
  "forming.evenness.samples[].smallRadiusMm": { unit: "mm", means: "The same at the small end." },
  "forming.evenness.basis": { means: "A source of the list, or “derived here”." },
  "forming.inspection": { means: "The inspection sheet of the finished part." },
  "forming.inspection.toleranceClass": { means: "Class of ISO 13920 that the part names, or null." },
  "forming.inspection.note": { means: "What the limits are, in a sentence." },
  "forming.inspection.rows": { means: "What to measure, in order." },
  "forming.inspection.rows[].id": {
    means:
      "“diameter”, “side”, “diagonal”, “out-of-round”, “girth”, “height”, “tape”, “edge-offset”, “template” or “corner”.",
  },
  "forming.inspection.rows[].what": { means: "What to measure and where." },
  "forming.inspection.rows[].nominalMm": {
    unit: "mm",
    means: "What it should be; nought for a fault that should not be there, and where the row is an angle.",
  },
  "forming.inspection.rows[].nominalDeg": {
    unit: "°",
    means: "The angle that it should be between two flats; null where a length is measured.",
  },
  "forming.inspection.rows[].withinMm": {
    unit: "mm",
    means: "Allowed to either side; null where nothing says.",
  },
  "forming.inspection.rows[].withinDeg": {
    unit: "°",
    means: "The same for an angle; null where a length is measured.",
  },
  "forming.inspection.rows[].basis": {
    means: "Where the limit comes from, else the size: a source of the list, “as drawn” or “derived here”.",
  },
  "forming.inspection.rows[].readings": { means: "How many readings to write down." },
};

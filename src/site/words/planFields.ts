/** Fields of the report's plans; they repeat one another and are named here. */
export const PLAN_REPEATED: readonly string[] = [
  "forming.plans[].settings.zones[].passes[].middle",
  "forming.plans[].settings.zones[].passes[].small",
];

const PASS = "forming.plans[].settings.zones[].passes[]";

/** Springback and plans: what the operator works by. */
export const PLAN_FIELDS: Readonly<Record<string, { readonly unit?: string; readonly means: string }>> = {
  "forming.springback": {
    means:
      "What springback asks of the part: the radius to bend to under load. Null where the skin is folded, not bent round.",
  },
  "forming.springback.yieldMPa": { unit: "MPa", means: "Yield strength reckoned with." },
  "forming.springback.yieldFrom": { means: "“certificate” or “grade”: where that strength comes from." },
  "forming.springback.strongYieldMPa": {
    unit: "MPa",
    means: "Upper end of the band: 1.4 times the grade’s; null where a certificate gives the yield.",
  },
  "forming.springback.flatFromMm": {
    unit: "mm",
    means: "Bent no tighter than this under load, the plate springs back flat.",
  },
  "forming.springback.strongFlatFromMm": {
    unit: "mm",
    means: "The same for plate at the upper end of the band, or null.",
  },
  "forming.springback.places": { means: "The places that stand for the whole skin." },
  "forming.springback.places[].place": { means: "Which place, such as “small end”." },
  "forming.springback.places[].freeMm": {
    unit: "mm",
    means: "Middle radius square to the element that it is to have.",
  },
  "forming.springback.places[].loadedMm": { unit: "mm", means: "What it has to be bent to under load." },
  "forming.springback.places[].ratio": { unit: "share", means: "Loaded over free radius." },
  "forming.springback.places[].strongLoadedMm": {
    unit: "mm",
    means: "What plate at the upper end of the band has to be bent to, or null.",
  },
  "forming.springback.places[].strongFreeMm": {
    unit: "mm",
    means: "What such plate springs back to from loadedMm; null where it springs back flat.",
  },
  "forming.springback.curve": { means: "Free against loaded radius about the part’s own, for plotting." },
  "forming.springback.curve[].loadedMm": { unit: "mm", means: "Radius under load." },
  "forming.springback.curve[].freeMm": {
    unit: "mm",
    means: "Radius when free; null where the plate springs back flat.",
  },
  "forming.springback.curve[].strongFreeMm": { unit: "mm", means: "The same at the upper end of the band." },
  "forming.springback.basis": { means: "A source of the list." },
  "forming.springback.rule": { means: "The formula in words." },

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
  "forming.plans[].settings.zones[].middleOverbend": {
    means:
      "How many times too high a straight roll set for both ends stands in the middle; both ends are started lower by it.",
  },
  "forming.plans[].settings.zones[].passes": {
    means: "Start, middle and end of the first pass’s window, and the finished bend.",
  },
  [`${PASS}.id`]: { means: "“start”, “aim”, “end” or “finished”." },
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
  [`${PASS}.start`]: { means: "Where to set the straight roll; null where an end is refused." },
  [`${PASS}.start.largeMm`]: { unit: "mm", means: "Raise at the large edge." },
  [`${PASS}.start.middleMm`]: { unit: "mm", means: "Raise at half the slant." },
  [`${PASS}.start.smallMm`]: { unit: "mm", means: "Raise at the small edge." },
  [`${PASS}.start.tiltDeg`]: { unit: "°", means: "Tilt of the roll, the small end higher." },
  [`${PASS}.start.smallBearingMm`]: {
    unit: "mm",
    means: "Raise at the bearing beyond the small edge; null where the shop file gives no bearings.",
  },
  [`${PASS}.start.largeBearingMm`]: { unit: "mm", means: "Raise at the bearing beyond the large edge." },
  [`${PASS}.travelLeftMm`]: { unit: "mm", means: "Travel that is left at the higher end." },
  [`${PASS}.pinchClearMm`]: {
    unit: "mm",
    means: "Clear distance between bending roll and pinch roll; null where no pinch roll is given.",
  },
  [`${PASS}.problems`]: { means: "What stands in the way of these settings on this machine, in sentences." },
  "forming.plans[].settings.rule": { means: "What the settings mean and what they are worth." },
  "forming.plans[].settings.basis": { means: "A source of the list, or “derived here”." },
  "forming.plans[].noSettings": {
    means: "Why a plate roll has no settings; null where it has them, and on a brake.",
  },
};

import type { FormingPlan } from "../../forming/plan.ts";
import type { Report } from "../../report/report.ts";

/** Stands on every page and sheet that leads to work at a machine. */
export const CAUTION =
  "Plate rolls and brakes draw in hands, sleeves and gloves; plate is heavy and sharp. The machine’s manual, local codes and licensed practice come before this sheet.";

/** After the caution: where to read on, the middle of it a link where there is something to follow it with. */
export const READ_FIRST = { before: "Read", what: "safety in plate work", after: "first." } as const;

/** What the steps below rest on: they hold for every part, and no source is known for them. */
export const COMMON_PRACTICE = "Common practice, no source. The machine’s manual comes first.";

/** Before the first piece goes into a plate roll with a cone attachment. */
export const ROLL_SET_UP: readonly string[] = [
  "Dress the edges free of dross and burrs.",
  "Scribe the element lines on the inside face; hold them to the roll line at every step.",
  "Grease the stop and set it as close to the drop end as the closing of the yoke allows.",
  "Lay the blank square in the aligning groove, its small edge tight on the stop.",
  "Pinch only as hard as drives the large edge, so that with the rolls stopped the blank can still be moved by hand.",
  "Bring the bending roll down and square it; then tilt it for the cone.",
];

/** While the first pass runs. */
export const ROLL_FIRST_PASS: readonly string[] = [
  "Raise in small steps while the plate travels towards the bending roll.",
  "Measure with the piece released and supported, and note the length of the straight lead.",
  "Stop where the piece can still pass over the top roll; it makes the next loading quick.",
];

/** What creases plate or hurts people on a roll with an initial pinch. */
const PINCH_NEVER: readonly string[] = [
  "Never make a large raise under standing plate, never roll backwards at setting.",
  "Lower the bending roll before reversing. Do not draw the piece out under pinch pressure.",
  "Never let an overlap enter the pinch. Support the rising end.",
];

/** The same where plate is rolled to and fro. */
const TO_AND_FRO_NEVER: readonly string[] = [
  "Never set the rolls much closer on standing plate.",
  "Ease the rolls before the direction is changed. Do not draw the piece out while they hold it.",
  "Never let an overlap enter between the rolls. Support the rising end.",
];

/** By which way a part is formed, and how; without steps as most rolls do. */
interface Formed {
  readonly route: Report["forming"]["route"];
  readonly steps?: FormingPlan["steps"] | undefined;
}

/** Is it rolled to and fro by its templates, without passes and settings? */
export const isByTemplate = ({ steps = [] }: Pick<Formed, "steps">): boolean =>
  steps.some(({ id }) => id === "by-template");

/** What is never done on a roll; nothing of the brake, whose steps say it. */
export function neverOn(formed: Formed): readonly string[] {
  if (formed.route !== "roll") return [];
  return isByTemplate(formed) ? TO_AND_FRO_NEVER : PINCH_NEVER;
}

/** Behind the machine's name at the head of a sheet for a roll; what to look at first on a brake stands on its own sheet. */
export const withCare = ({ route, care }: Pick<FormingPlan, "route" | "care">): string =>
  route === "roll" && care.length > 0 ? "With care: first read its checks on the part’s card." : "";

export const ROLL_SECOND_PASS: readonly string[] = [
  "Move the stop to the other end. Bring the bending roll down and square it again; tilt it the other way.",
  "Set a little tighter and close from the other seam edge until the edges meet: this pass undoes the skew and bends the straight lead.",
  "In a lot make all first passes before the stop is moved.",
];

/** Before the first piece goes into a press brake. */
export const BRAKE_SET_UP: readonly string[] = [
  "Dress the edges free of dross and burrs.",
  "Scribe every bend line on the face that is up, with its number and angle; mark both ends of the line on the edges.",
  "Make a template of the finished ends, and an angle gauge for the borders of the flats.",
  "Bend a trial strip of the same plate to learn its springback before the blank is touched.",
];

/** How much is bent where; the lines of the layout by hand are too few for a smooth curve. */
export const BRAKE_ANGLES =
  "The angle beside a line is the whole bend of its zone, half way to the lines on either side: share it over several hits.";

const BRAKE_BENDS: readonly string[] = [
  "Lay each line under the punch by its two ends; the lines are not parallel.",
  "Underbend at first; a line bent too far is hard to open again.",
];

const CORNER_BENDS =
  "All lines of a corner meet at its tip: end a line where the spacing falls below half the die opening.";
const CONE_BENDS =
  "The hits run together towards the small end: where their spacing there falls below half the die opening, end every other one short.";

/** Bending on the brake, for ends with corners and for round ones. */
export const brakeBends = (corners: boolean): readonly string[] => [
  ...BRAKE_BENDS,
  corners ? CORNER_BENDS : CONE_BENDS,
];

export const CHECK_ROLL: readonly string[] = [
  "Gauge each end with an inside template; a flat place at the small end is usual.",
  "Flat place: sound tacks, bead ground flush, then re-round with light pinch over several turns.",
];

export const CHECK_ALL: readonly string[] = [
  "Measure each end across two directions square to each other.",
  "Measure the height at four places; set the ends on a flat floor and look for rocking.",
  "Check that the seam lies where the drawing has it before it is welded.",
];

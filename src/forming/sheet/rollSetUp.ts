import { COMMON_PRACTICE, DERIVED } from "../judge.ts";
import { setting } from "../rollPlaces.ts";
import { number } from "../say.ts";
import { seamOrder } from "../seamOrder.ts";
import { isPipe } from "../skin.ts";
import { isTurnedRound } from "../stopRoom.ts";
import { zonesOf } from "../zones.ts";
import { alikeZones } from "../zoneWords.ts";
import type { RollSheetAsked } from "./asked.ts";
import { coneStop } from "./coneStop.ts";
import { GUARDS, heaviestKg, isHeavy, liftCautions, SHARP } from "./lifting.ts";
import { ROLL_ENDS } from "./rollEnds.ts";
import { isAskew, laidBy } from "./keptParallel.ts";
import { dressingFigures, dressingWords } from "./dressing.ts";
import { startAllRound } from "./startAllRound.ts";
import { type Figure, mm, type PlanStep, taped } from "./step.ts";
import { templateFigures } from "./touch.ts";
import { isBoxed } from "./windowRadii.ts";

const step = (one: Omit<PlanStep, "phase" | "basis" | "toNote"> & Partial<PlanStep>): PlanStep => ({
  phase: "set-up",
  basis: COMMON_PRACTICE,
  toNote: [],
  ...one,
});

/**
 * Templates of both passes: half way and finished, and where no gap tells how far the first pass may go those that tell it;
 * of the finished part alone where there is one pass. Zones that are curved alike share theirs.
 */
function templatesAtHand(asked: RollSheetAsked): number {
  const { item, roll } = asked;
  const zones = zonesOf(item);
  const each = templateFigures(item, 1).length / Math.max(1, zones.length);
  const sets = !isTurnedRound(roll?.arrangement) ? 1 : item.cone ? 2 : isBoxed(asked) ? 3 : 5;
  return sets * each * alikeZones(zones).length;
}

function zoneMarks(asked: RollSheetAsked): string {
  const { settings } = asked;
  const zones = settings?.zones ?? [];
  if (zones.length < 2) return "";
  return ` Mark the ${zones.length} zones by a line across the blank where each begins, by the measures under its picture; write its number in each.`;
}

/** Where each further zone begins; in words that is told under the picture of the blank. */
function zoneFigures({ settings }: RollSheetAsked): Figure[] {
  const zones = settings?.zones ?? [];
  return zones.flatMap((zone, i) =>
    zone.begins
      ? [
          taped(`zone ${i + 1} begins, along the large edge`, zone.begins.largeMm, DERIVED),
          taped(`zone ${i + 1} begins, along the small edge`, zone.begins.smallMm, DERIVED),
        ]
      : [],
  );
}

export function edges(asked: RollSheetAsked): PlanStep {
  const { item, say } = asked;
  const slide = (item.rimsMm.large - item.rimsMm.small) / item.pieces;
  const pipe = isPipe(item);
  return step({
    id: "edges",
    title: "Dress and mark",
    text: `Measure the blank against its card. ${bevel(asked)}Dress all edges: no dross, no burrs.${pipe ? "" : ` Smooth the small edge, which the stop holds back: in one pass the large one runs ${say.length(slide)} further.`} Mark seam edges 1 and 2 and scribe the element lines on the inside face, as on the picture of the blank.${zoneMarks(asked)} At hand: the inside templates of ${isTurnedRound(asked.roll?.arrangement) ? "first pass and closing" : "the finished part"} (${templatesAtHand(asked)}), tape, straightedge${(item.seamGapMm ?? 0) > 0 ? ", feeler blade" : ""}.`,
    figures: [
      ...dressingFigures(item),
      ...zoneFigures(asked),
      ...(pipe ? [] : [mm("large edge runs further than the small one in a pass", slide, COMMON_PRACTICE)]),
    ],
    cautions: [SHARP, ...liftCautions(asked, "roll")],
  });
}

/** A square cut leaves one face of an end short of its plane, and the other over it. */
function bevel(asked: RollSheetAsked): string {
  const dressing = dressingWords(asked);
  return dressing === "" ? "" : `Bevel ${dressing}, so that the ends lie level. `;
}

/** Where the slant takes more than half the rolls: by trim, if the machine has any. */
function trimWords(trim: boolean | undefined): string {
  const wide = "the slant takes more than half the rolls";
  if (trim === true) return `Trim the pinch roll out of parallel until it grips the large end only: ${wide}.`;
  return trim === false
    ? `This machine has no pinch trim, and ${wide}.`
    : `If the pinch roll can be trimmed out of parallel, trim it until it grips the large end only: ${wide}.`;
}

function pinch({ item, roll }: RollSheetAsked): PlanStep {
  const half = roll && item.slantMm.longest > roll.workingWidth / 2;
  const pipe = isPipe(item);
  const trim = pipe
    ? "Set the pinch parallel."
    : half
      ? trimWords(roll.pinchTrim)
      : "Set the pinch parallel: the slant takes no more than half the rolls.";
  return step({
    id: "pinch",
    title: "Set the pinch",
    text: `${trim} Pinch only as hard as drives the ${pipe ? "plate" : "large edge"}, no harder.`,
    figures: [],
    cautions: ["Move the blank by hand only with the rolls stopped."],
    toNote: [
      { label: "pinch pressure or setting", unit: "-" },
      ...(half && !pipe && roll.pinchTrim !== false
        ? [{ label: "pinch trim, drop end lower by", unit: "mm" }]
        : []),
    ],
  });
}

/** Is every zone set by raises at the bearings? */
const boxed = ({ settings }: RollSheetAsked): boolean => {
  const starts = settings?.zones.map(({ passes }) => passes.find(({ id }) => id === "trial")?.start) ?? [];
  return starts.length > 1 && starts.every((start) => start != null && start.smallBearingMm !== null);
};

/** How much the bending roll is tilted, and on what that is set: scales stand at the bearings. */
function tiltWords(asked: RollSheetAsked): string {
  const start = startAllRound(asked, "trial");
  if (isPipe(asked.item)) return "";
  const lower = " Then lower it clear";
  if (!start && !boxed(asked)) return `${lower} and tilt it for the cone, small end higher.`;
  if (!start)
    return `${lower}: the tilt of each zone (small end higher) follows from the raises of both bearings.`;
  const by = `${number(start.tiltDeg, 1)}°`;
  if (start.smallBearingMm !== null)
    return `${lower}: the tilt (${by}, small end higher) follows from the raises of both bearings.`;
  const higher = setting(start.smallMm - start.largeMm, asked.say);
  return `${lower} and tilt it by ${by}, small end higher: the small edge ${higher} above the large one.`;
}

function zero(asked: RollSheetAsked): PlanStep {
  const { item, roll } = asked;
  const tilt = tiltWords(asked);
  const two = roll?.bearings !== undefined && !isPipe(item);
  return step({
    id: "zero",
    title: "Find 0 (nought)",
    text: `Pinch the blank so that it lies flat. Bring the bending roll up, parallel to the top roll, until it just touches the plate ${isAskew(asked) ? "at its corner ahead" : "along its whole length"}. This is 0${two ? ", at both ends of the roll: write down both readings" : ": write down the reading"}. Every raise here counts from it, up the slide${two ? "; a scale shows its reading at 0 plus the raise" : ""}.${tilt}`,
    figures: [],
    cautions: [],
    toNote: two
      ? ROLL_ENDS.map(({ name }) => ({ label: `reading at 0, ${name}`, unit: "mm" }))
      : [{ label: "scale reading at 0", unit: "mm" }],
  });
}

function align(asked: RollSheetAsked): PlanStep {
  const { item, say } = asked;
  const heaviest = heaviestKg(asked);
  const { leads, first } = seamOrder(asked);
  const laid = laidBy(asked);
  const askew = isAskew(asked) ? "the large end of " : "";
  const pipe = isPipe(item);
  const which =
    leads === null
      ? " One of its two seam edges then lies ahead, by the hand of the machine: chalk “first” on it and “second” on the other. Never turn the blank over to make seam edge 1 lead."
      : pipe
        ? ""
        : ` So ${first} lies ahead: never turn the blank over to make the other one lead.`;
  return step({
    id: "align",
    title: "Load and align",
    text: `Lower the bending roll and open the pinch. Lay the blank in (${say.mass(heaviest)}), inside face up towards the top roll${pipe ? "" : ", its small edge tight on the stop"}.${which} Push it through the open pinch until ${askew}${leads === null ? "the first edge" : first} lies over the bending roll. ${laid.text} Have the yoke closed and locked.`,
    figures: [
      { label: "mass of the heaviest blank", value: heaviest, unit: "kg", basis: DERIVED },
      ...laid.figures,
    ],
    cautions: [GUARDS, `${isHeavy(asked) ? "Crane or hoist; support" : "Support the blank"} on both sides.`],
  });
}

/** Set-up of a plate roll with an initial pinch: nought is found with the blank in the pinch, so that is loaded first. */
export function rollSetUp(asked: RollSheetAsked): (PlanStep | null)[] {
  return [edges(asked), coneStop(asked), align(asked), pinch(asked), zero(asked)];
}

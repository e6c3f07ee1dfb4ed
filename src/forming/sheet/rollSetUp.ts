import { COMMON_PRACTICE, DERIVED } from "../judge.ts";
import { openReach, reachBeyondStopMm } from "../openReach.ts";
import { setting } from "../rollPlaces.ts";
import { number } from "../say.ts";
import { isPipe } from "../skin.ts";
import type { RollZone } from "../zones.ts";
import type { RollSheetAsked } from "./asked.ts";
import { heaviestKg, isHeavy, liftBrief, liftCautions, SHARP } from "./lifting.ts";
import { ROLL_ENDS } from "./rollEnds.ts";
import { dressingFigures, dressingWords } from "./dressing.ts";
import { mm, type PlanStep } from "./step.ts";

const step = (one: Omit<PlanStep, "phase" | "basis" | "toNote"> & Partial<PlanStep>): PlanStep => ({
  phase: "set-up",
  basis: COMMON_PRACTICE,
  toNote: [],
  ...one,
});

const GUARDS =
  "The rolls draw in hands, sleeves and gloves: gloves off before they turn; every stop button and emergency stop tried before the first plate, nobody within reach of the nip while they turn. The machine's manual comes first.";

/** Where one setting does not serve all round: where each begins. */
function beginning({ item, say }: RollSheetAsked, { begins, fromDeg }: RollZone): string {
  const deg = `plan ${Math.round(fromDeg % 360)}°`;
  if (!begins) return deg;
  const piece = item.pieces > 1 ? ` of piece ${begins.piece}` : "";
  return `${say.length(begins.largeMm)} and ${say.length(begins.smallMm)}${piece} (${deg})`;
}

function zoneMarks(asked: RollSheetAsked): string {
  const { settings } = asked;
  const zones = settings?.zones ?? [];
  if (zones.length < 2) return "";
  const marks = zones.map((zone, i) => `${i + 1} from ${beginning(asked, zone)}`).join("; ");
  return ` Mark the ${zones.length} zones by a line across the blank where each begins, along the large and the small edge from seam edge 1: ${marks}. Each has its own setting and template.`;
}

function zoneBrief({ item, settings, say }: RollSheetAsked): string {
  const zones = settings?.zones ?? [];
  if (zones.length < 2) return "";
  const marks = zones.slice(1).map(({ begins, fromDeg }, i) => {
    const at = begins
      ? `${say.length(begins.largeMm)} and ${say.length(begins.smallMm)}${item.pieces > 1 ? ` of piece ${begins.piece}` : ""}`
      : `plan ${Math.round(fromDeg % 360)}°`;
    return `${i + 2} at ${at}`;
  });
  return ` Mark where zones begin, along large and small edge from seam edge 1: ${marks.join("; ")}.`;
}

function edges(asked: RollSheetAsked): PlanStep {
  const { item, say } = asked;
  const slide = (item.rimsMm.large - item.rimsMm.small) / item.pieces;
  const pipe = isPipe(item);
  const dressing = dressingWords(asked);
  return step({
    id: "edges",
    title: "Dress and mark",
    text: `${bevel(asked)}Dress all edges free of dross and burrs${pipe ? "" : `, the small edge smooth: it slides ${say.length(slide)} along the stop in one pass`}. Mark seam edges 1 and 2 as the picture of the blank has them, and scribe the element lines on the inside face; at every step the line at the pinch is held parallel to the rolls.${zoneMarks(asked)}`,
    brief: `${dressing === "" ? "Dress all edges" : `No burrs; dress both ends level: ${dressing}`}${pipe ? "" : `. Small edge smooth: it slides ${say.length(slide)} on the stop`}. Mark seam edges (picture: last sheet) and element lines inside.${zoneBrief(asked)}`,
    beware: liftBrief(asked),
    figures: [
      ...dressingFigures(item),
      ...(pipe ? [] : [mm("small edge slides along the stop", slide, COMMON_PRACTICE)]),
    ],
    cautions: [SHARP, ...liftCautions(asked, "roll")],
  });
}

/** A square cut leaves one face of an end short of its plane, and the other over it. */
function bevel(asked: RollSheetAsked): string {
  const dressing = dressingWords(asked);
  return dressing === ""
    ? ""
    : `Bevel the edges of both ends level with their planes. Cut square, one corner of an edge stands over its plane: take ${dressing} end${asked.item.cone ? "" : "; where the wall leans outwards, off the other face"}. `;
}

/** Does the far side come further past the stop than there is clear room, while the piece is still open? */
function isTight(asked: RollSheetAsked): boolean {
  const room = asked.roll?.coneAttachment?.clearRoom;
  const open = openReach(asked.item);
  return room !== undefined && open !== null && open.pastMm > room;
}

const YOKE =
  "The piece must not strike the yoke: watch the first turn by hand jog. The longer it stays open, the further it reaches.";

function yoke(asked: RollSheetAsked): string {
  const open = openReach(asked.item);
  const room = asked.roll?.coneAttachment?.clearRoom;
  if (!open || room === undefined || !isTight(asked)) return YOKE;
  return `${YOKE} While still open its far side reaches ${asked.say.length(open.pastMm)} past the stop, at ${asked.say.length(open.highMm)} over the pinch; the clear room is ${asked.say.length(room)}: look whether the yoke is as high as that before the plate goes in.`;
}

function stop(asked: RollSheetAsked): PlanStep | null {
  const { item, settings, roll, say } = asked;
  if (isPipe(item)) return null;
  const reach = reachBeyondStopMm({
    diameterMm: item.rimsMm.small / Math.PI,
    leanRad: item.leanRad,
    pieces: item.pieces,
  });
  const open = openReach(asked.item);
  const given = roll?.coneAttachment?.range ? (settings?.stopMm ?? null) : null;
  const where =
    given === null
      ? "Set the stop for the small edge as close to the drop end as the closing of the yoke allows"
      : `Set the stop for the small edge ${say.length(given)} from the drop end of the roll face, as near as it goes`;
  const clear = roll?.coneAttachment?.clearRoom;
  const room = clear === undefined ? "" : `; clear room ${say.length(clear)}`;
  const derived = (label: string, value: number) => mm(label, value, DERIVED);
  return step({
    id: "stop",
    title: "Set the cone stop",
    text: `${where}, and grease it. The far side of the small end reaches ${say.length(reach)} past it when closed${open ? `, and ${say.length(open.pastMm)} at ${say.length(open.highMm)} over the pinch while the piece is still open at the first trial` : ""}${room}. The second pass needs a stop at the other end of the rolls too: look before you begin, and where there is none ask the machine's manual.`,
    brief: `${given === null ? "Stop as close to the drop end as the yoke allows" : `Stop ${say.length(given)} from the drop end`}, greased. The small end reaches ${say.length(reach)} past it closed${open ? `, ${say.length(open.pastMm)} while open (${say.length(open.highMm)} over the pinch)` : ""}${room}. Second pass: stop and room at the fixed end too.`,
    beware: `${isTight(asked) ? "While open it may strike the yoke: look how high it is. " : ""}First turn by hand jog (short taps).`,
    figures: [
      ...(given === null ? [] : [derived("stop from the drop end of the roll face", given)]),
      derived("reach past the stop when closed", reach),
      ...(open
        ? [
            derived("reach past the stop while open", open.pastMm),
            derived("height of that place over the pinch", open.highMm),
          ]
        : []),
    ],
    cautions: [yoke(asked)],
    toNote: [{ label: "stop from drop end", unit: "mm", ...(given === null ? {} : { planned: given }) }],
  });
}

/** Where the slant takes more than half the rolls: by trim, if the machine has any. */
function trimWords(trim: boolean | undefined): string {
  const wide = "The slant takes more than half the rolls:";
  if (trim === true) return `${wide} trim the pinch roll out of parallel until it grips the large end only.`;
  return trim === false
    ? `${wide} this machine has no pinch trim, so pinch no harder than the large edge needs.`
    : `${wide} if the pinch roll can be trimmed out of parallel, until it grips the large end only; else pinch no harder than the large edge needs.`;
}

function pinch({ item, roll }: RollSheetAsked): PlanStep {
  const half = roll && item.slantMm.longest > roll.workingWidth / 2;
  const pipe = isPipe(item);
  const trim = pipe
    ? "Set the pinch parallel."
    : half
      ? trimWords(roll.pinchTrim)
      : "The slant takes no more than half the rolls: set the pinch parallel, their crown usually lets the small end go free.";
  return step({
    id: "pinch",
    title: "Set the pinch",
    text: `${trim} Pinch only as hard as drives the ${pipe ? "plate" : "large edge"}: with the rolls stopped the blank can still be moved by hand.`,
    brief: `${pipe || !half ? "Pinch parallel" : roll.pinchTrim === false ? "No pinch trim here" : "Pinch trimmed to grip the large end only"}, as light as drives the ${pipe ? "plate" : "large edge"}.`,
    beware: "Gloves off; hands and sleeves clear of the nip; try the stop buttons.",
    figures: [],
    cautions: [GUARDS, "Move the blank by hand only with the rolls stopped."],
    toNote: [
      { label: "pinch pressure or setting", unit: "-" },
      ...(half && !pipe && roll.pinchTrim !== false
        ? [{ label: "pinch trim, drop end lower by", unit: "mm" }]
        : []),
    ],
  });
}

/** Start of the first trial, where one setting serves all round; null where it does not or is not known. */
function startOf({ settings }: RollSheetAsked) {
  const [zone, other] = settings?.zones ?? [];
  return (!other && zone?.passes.find(({ id }) => id === "trial")?.start) || null;
}

/** How much the bending roll is tilted, and on what that is set: scales stand at the bearings. */
function tiltWords(asked: RollSheetAsked): { text: string; brief: string } {
  const start = startOf(asked);
  if (isPipe(asked.item)) return { text: "", brief: "" };
  if (!start) return both("tilt it for the cone, small end higher");
  const by = `${number(start.tiltDeg, 1)}°`;
  if (start.smallBearingMm !== null)
    return both(`the tilt (${by}, small end higher) follows from the raises of its two bearings`);
  const higher = setting(start.smallMm - start.largeMm, asked.say);
  return both(`tilt it by ${by}, small end higher: the small edge ${higher} above the large one`);
}
const both = (words: string) => ({
  text: ` Then lower it clear; ${words}.`,
  brief: ` Lower it clear; ${words}.`,
});

function zero(asked: RollSheetAsked): PlanStep {
  const { item, roll } = asked;
  const tilt = tiltWords(asked);
  const two = roll?.bearings !== undefined && !isPipe(item);
  return step({
    id: "zero",
    title: "Find 0 (nought)",
    text: `Bring the bending roll up square to the top roll, the blank pinched and lying flat, until it just touches the plate along its whole length: this is 0${two ? ", at both ends of the roll: write down both readings" : ""}. Every raise on this sheet is counted from here up the slide${two ? "; a scale then shows its reading at 0 plus the raise" : ""}.${tilt.text}`,
    brief: `Blank flat in the pinch: bending roll up, square, until it just touches all along: 0${two ? " at both ends" : ""}. Raises count up the slide from here${two ? "; a scale shows its reading at 0 plus the raise" : ""}.${tilt.brief}`,
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
  return step({
    id: "align",
    title: "Load and align",
    text: `Bending roll down, pinch open. Lay the blank in with seam edge 1 square in the aligning groove${isPipe(item) ? "" : ", its small edge tight on the stop"}, inside face towards the top roll. A blank weighs ${say.mass(heaviest)} and its longest element is ${say.length(item.slantMm.longest)}.`,
    brief: `Bending roll down, pinch open: seam edge 1 square in the groove${isPipe(item) ? "" : ", small edge tight on the stop"}, inside towards the top roll. ${say.mass(heaviest)} a blank.`,
    ...(isHeavy(asked) && { beware: "Crane; support both sides." }),
    figures: [{ label: "mass of the heaviest blank", value: heaviest, unit: "kg", basis: DERIVED }],
    cautions: isHeavy(asked)
      ? liftCautions(asked, "roll")
      : ["Support the blank on both sides of the rolls."],
  });
}

/** Set-up of a plate roll with an initial pinch: nought is found with the blank in the pinch, so that is loaded first. */
export function rollSetUp(asked: RollSheetAsked): (PlanStep | null)[] {
  return [edges(asked), stop(asked), align(asked), pinch(asked), zero(asked)];
}

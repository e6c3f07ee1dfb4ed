import { edgeOfBearings } from "../rollPlaces.ts";
import { byHand } from "../byHand.ts";
import { isGapTold } from "../gapTold.ts";
import { DERIVED } from "../judge.ts";
import { seamOrder } from "../seamOrder.ts";
import { isPipe } from "../skin.ts";
import { listed } from "../words.ts";
import type { RollSheetAsked } from "./asked.ts";
import { apartExample } from "./apartExample.ts";
import { startAllRound } from "./startAllRound.ts";
import { ROLL_ENDS } from "./rollEnds.ts";
import { raisesByTable } from "./raisesByTable.ts";
import { type NoteBox, type PlanStep, stepNamed } from "./step.ts";
import { leadMmOf } from "./touch.ts";
import { type ZoneByHand, zoneByHand } from "../zoneByHand.ts";
import { zoneModels } from "../zoneModel.ts";

/** Whoever has only the paper knows neither what it is nor where. */
const CORRECTION = "the trial correction (on this part's web page, if it has one)";
const ASK = "stop and ask the foreman";
/** In few words what the trial correction says of such a blank. */
export const PAST_CAP = "do not roll on; take the blank out, mark it and set it aside: the foreman decides.";
const LARGE_DECIDES = " The large end decides: closing brings in a small end still open.";
const NO_WAY_BACK = "A blank closed too far is not opened again by rolling on.";

/** What is done with a raise of the table. */
const addTo = ({ item, roll }: RollSheetAsked): string =>
  isPipe(item)
    ? "add its raise to the last"
    : `add its raise to ${roll?.bearings === undefined ? "what both ends were set to last" : "both last scale readings"}`;

/** What a tight blank teaches, where another one comes after it. */
const nextLess = ({ item }: RollSheetAsked): string =>
  item.pieces * item.quantity > 1 ? "; less for the next blank" : "";

/** How a blank gets a further raise. */
const onceMore = (asked: RollSheetAsked): string =>
  `Bending roll lowered, pinch lightly and run the piece back to ${seamOrder(asked).first}; pinch as before, set the answer with the plate moving, roll once more, chalked anew, and measure as in ${stepNamed("first-measure")}.`;

/** What is done after the first pass is measured: wider than the window, narrower, and past the cap. */
export function firstCorrect(asked: RollSheetAsked): PlanStep | null {
  const { item, settings, roll, say } = asked;
  if (!settings) return null;
  if (!item.cone) return zoneCorrect(asked);
  if (!isGapTold(item, leadMmOf(asked))) return byTemplates(asked);
  const table = roll ? byHand({ item, roll, say }) : [];
  const raises = raisesOf(asked);
  return {
    id: "first-correct",
    phase: "first pass",
    title: "Correct the setting",
    text: `Gap wider than the window, templates too open: give the gap and the ${isPipe(item) ? "raise" : "setting at the large edge"} to ${CORRECTION}. ${onceMore(asked)}${table.length > 0 ? ` No screen: find the gap in the table, ${addTo(asked)}, roll again.${careful(raises)}` : ""} Still wider after a ${lastSaid(raises)} raise: ${ASK}. Narrower: no further raise in this pass, unload it${nextLess(asked)}. Below the “never below”: ${PAST_CAP}${isPipe(item) ? "" : LARGE_DECIDES}${atBearings(asked)}`,
    figures: [],
    cautions: [NO_WAY_BACK],
    toNote: raiseBoxes(asked, { after: "gap after it", raises }),
    ...(table.length > 0 && { byHand: table }),
    basis: DERIVED,
  };
}

/** Of a right cone whose gap tells nothing. */
function byTemplates(asked: RollSheetAsked): PlanStep {
  return {
    id: "first-correct",
    phase: "first pass",
    title: "Correct the setting",
    text: `No setting is corrected by trials here: its gap does not tell how far it is bent. More open than the window by the templates: bending roll lowered, pinch lightly and run the piece back to ${seamOrder(asked).first}; pinch as before, set both ends a little higher with the plate moving, roll once more and measure as in ${stepNamed("first-measure")}. Still open after a third raise: ${ASK}. Tighter: no further raise in this pass${nextLess(asked)}. Past the “never tighter”: ${PAST_CAP}${atBearings(asked)}`,
    figures: [],
    cautions: [NO_WAY_BACK],
    toNote: raiseBoxes(asked, { after: AFTER, raises: null }),
    basis: DERIVED,
  };
}

/** Scales stand at the bearings, and what is corrected is told for the large edge. */
function atBearings(asked: RollSheetAsked): string {
  // Where zones have their own settings each has its own shares.
  const words = edgeOfBearings(startAllRound(asked, "trial"));
  return words === "" ? "" : ` ${words}`;
}

/** The same where the skin is curved unevenly: by the templates of both ends, zone by zone. */
function zoneCorrect(asked: RollSheetAsked): PlanStep | null {
  const { item, settings, roll, say } = asked;
  if (!roll || !settings) return null;
  const answer = zoneModels({ item, roll, say });
  const step = {
    id: "first-correct",
    phase: "first pass",
    title: "Correct the setting",
    figures: [],
    basis: DERIVED,
  } as const;
  if (answer.kind === "none")
    return {
      ...step,
      text: `No setting is corrected by trials here: ${answer.why}.`,
      cautions: [],
      toNote: [],
    };
  const table = zoneByHand({ item, roll, say });
  // Trials begin elsewhere than the plan.
  const raises = asked.tried ? null : raisesOf(asked);
  const several = answer.models.length > 1;
  const example = apartExample(asked, table);
  return {
    ...step,
    text: several ? eachZone(asked, table, raises) : oneZone(asked, table, raises),
    cautions: [],
    toNote: several ? zoneBoxes(asked, raises) : raiseBoxes(asked, { after: AFTER, raises }),
    byHandZones: table,
    ...(example !== "" && { example }),
  };
}

/** Where one setting serves all round. */
function oneZone(asked: RollSheetAsked, table: readonly ZoneByHand[], raises: number | null): string {
  const pipe = isPipe(asked.item);
  return `Curve more open than the window: give the inside radius${pipe ? "" : " of both ends"} and the setting at the large edge to ${CORRECTION}. ${onceMore(asked)} No screen: find ${found(table)} at the large end in the table, ${addTo(asked)}, roll again.${careful(raises)} Still open after a ${lastSaid(raises)} raise, or at its most: ${ASK}. Tighter: no further raise in this pass${nextLess(asked)}. At either end past the “never tighter”: ${PAST_CAP}${pipe ? "" : LARGE_DECIDES}${atBearings(asked)}`;
}

/** Which of them is open has been found where they were measured. */
function eachZone(asked: RollSheetAsked, table: readonly ZoneByHand[], raises: number | null): string {
  const both = isPipe(asked.item) ? "" : ", at both ends,";
  return `Give what came out in every zone${both} and its raise at the large edge to ${CORRECTION}. No screen: find its ${table[0]?.chordMm == null ? "radius" : "radius or depth"} at the large end in its lines of the table, ${addTo(asked)}. ${onceMore(asked)}${reaching(raises)} No raise goes past its “never over”. Still open there, or after a ${lastSaid(raises)} raise: ${ASK}.`;
}

/** What is looked for in the table. */
const found = (table: readonly ZoneByHand[]): string =>
  `the radius${table[0]?.chordMm == null ? "" : " (or depth: what it stands off the straightedge's middle inside, square to the element)"}`;

const ORDINALS = ["first", "2nd", "3rd", "4th"];
/** The last of the raises that there are lines for, counting the first trial's: then the foreman is asked. */
const lastRaise = (raises: number | null): number =>
  Math.min(ORDINALS.length, Math.max(3, (raises ?? 0) + 1));
/** The same in words. */
const lastSaid = (raises: number | null): string => (lastRaise(raises) === 3 ? "third" : "fourth");

/** How many raises by the table lead into the window from the plan's start; null where that is not known. */
const raisesOf = ({ item, roll, say }: RollSheetAsked): number | null =>
  roll ? raisesByTable({ item, roll, say }) : null;

/** By which raise the window is to be expected, in few words. */
function reaching(raises: number | null): string {
  const reaches = raises ? ORDINALS[raises] : undefined;
  return reaches === undefined
    ? ""
    : ` By the model, from the plan's start, the ${reaches} raise reaches the window.`;
}

/** What is to be looked for when the table is gone by, so that nobody takes its care for a fault of the machine. */
function careful(raises: number | null): string {
  const reaches = raises ? ORDINALS[raises] : undefined;
  if (raises === null || reaches === undefined) return "";
  if (raises === 1) return reaching(raises);
  const before = `${listed(ORDINALS.slice(1, raises))} ${raises > 2 ? "raises still fall" : "raise still falls"} short`;
  return ` It is careful: by the model, from the plan's start, the ${before} of the window, the ${reaches} reaches it.`;
}

const AFTER = "R after it, large end";

/** Lines for one raise: what was set, at both bearings, where the scales are, and what it left. */
function raiseLine({ item, roll }: RollSheetAsked, which: string, after: string): NoteBox[] {
  const one = (label: string): NoteBox => ({ label, unit: "mm" });
  const pipe = isPipe(item);
  return roll?.bearings === undefined || pipe
    ? [one(`${which} raise${pipe ? "" : ", large edge"}`), one(after)]
    : [
        ...ROLL_ENDS.map(({ name: end }, i) => one(i === 0 ? `${which}: scale, ${end}` : end)),
        one("raise, large edge"),
        one(after),
      ];
}

/** Where the settings after the first one are written down. */
const raiseBoxes = (
  asked: RollSheetAsked,
  { after, raises }: { readonly after: string; readonly raises: number | null },
): NoteBox[] => ORDINALS.slice(1, lastRaise(raises)).flatMap((which) => raiseLine(asked, which, after));

/** The same zone by zone, as they may come out apart; then lines for what some of them need besides, with room for which zone it is. */
function zoneBoxes(asked: RollSheetAsked, raises: number | null): NoteBox[] {
  const [second = "", ...further] = ORDINALS.slice(1, lastRaise(raises));
  const zones = asked.settings?.zones ?? [];
  return [
    ...zones.map((_, i) => raiseLine(asked, `zone ${i + 1}, ${second}`, AFTER)),
    ...further.flatMap((which) =>
      Array.from({ length: Math.ceil(zones.length / 2) }, () => raiseLine(asked, `zone __, ${which}`, AFTER)),
    ),
  ].flat();
}

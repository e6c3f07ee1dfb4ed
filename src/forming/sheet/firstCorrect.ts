import { edgeOfBearings } from "../rollPlaces.ts";
import { byHand } from "../byHand.ts";
import { DERIVED } from "../judge.ts";
import { seamOrder } from "../seamOrder.ts";
import type { Say } from "../say.ts";
import { isPipe } from "../skin.ts";
import { listed } from "../words.ts";
import type { RollSheetAsked } from "./asked.ts";
import { startAllRound } from "./startAllRound.ts";
import { ROLL_ENDS } from "./rollEnds.ts";
import { raisesByTable } from "./raisesByTable.ts";
import { type NoteBox, type PlanStep, stepNamed } from "./step.ts";
import { type ZoneByHand, zoneByHand } from "../zoneByHand.ts";
import { listedZones } from "../zoneWords.ts";
import { zoneModels } from "../zoneModel.ts";

/** Whoever has only the paper knows neither what it is nor where. */
const CORRECTION = "the trial correction (have this sheet's web page opened)";
const ASK = "stop and ask the foreman";
/** In few words what the trial correction says of such a blank. */
const PAST_CAP = "stop: do not roll on, take the blank out, mark it and set it aside. The foreman decides.";
const NO_WAY_BACK = "A blank closed too far is not opened again by rolling on.";

/** How a blank gets a further raise. */
const onceMore = (asked: RollSheetAsked): string =>
  `Lower the bending roll, bring the piece back to ${seamOrder(asked).first} and pinch it again; set the answer with the plate moving, roll once more and measure as in ${stepNamed("first-measure")}.`;

/** What is done after the first pass is measured: wider than the window, narrower, and past the cap. */
export function firstCorrect(asked: RollSheetAsked): PlanStep | null {
  const { item, settings, roll, say } = asked;
  if (!settings) return null;
  if (!item.cone) return zoneCorrect(asked);
  const table = roll ? byHand({ item, roll, say }) : [];
  const raises = raisesOf(asked);
  return {
    id: "first-correct",
    phase: "first pass",
    title: "Correct the setting",
    text: `Gap wider than the window: give it and the ${isPipe(item) ? "raise" : "setting at the large edge"} to ${CORRECTION}. ${onceMore(asked)}${table.length > 0 ? ` Without a screen raise by the table for the gap that came out, from what was set last.${careful(raises)}` : ""} Still wider after a ${lastSaid(raises)} raise: ${ASK}. Narrower: no further raise in this pass, unload it; less for the next blank. Below the “never below”: ${PAST_CAP}${isPipe(item) ? "" : " The large end decides: a small end still open is brought in in the closing."}${atBearings(asked)}`,
    figures: [],
    cautions: [NO_WAY_BACK],
    toNote: raiseBoxes(asked, { name: "", after: "gap after it", raises }),
    ...(table.length > 0 && { byHand: table }),
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
  const each = several ? "Zone by zone. " : "";
  const both = isPipe(item) ? "" : " at both ends";
  return {
    ...step,
    text: `${each}Curve more open than the window: give the inside radius that came out${both}, and the setting at the large edge, to ${CORRECTION}. ${onceMore(asked)}${byTable(asked, table, raises)} ${several ? "Right: its last setting. Tighter: the same, and less for the next blank." : "Tighter: no further raise in this pass, less for the next blank."} Tighter than the “never tighter”: ${PAST_CAP}${atBearings(asked)}`,
    cautions: [],
    toNote: table.flatMap(({ zones }) =>
      raiseBoxes(asked, {
        name: table.length > 1 ? `${listedZones(zones)}, ` : "",
        after: "R after it, large end",
        raises,
      }),
    ),
    byHandZones: table,
  };
}

const ORDINALS = ["first", "2nd", "3rd", "4th"];
/** The last of the raises that there are lines for, counting the first trial's: then the foreman is asked. */
const lastRaise = (raises: number | null): number =>
  Math.min(ORDINALS.length, Math.max(3, (raises ?? 0) + 1));
/** The same in words. */
const lastSaid = (raises: number | null): string => (lastRaise(raises) === 3 ? "third" : "fourth");

/** How many raises by the table lead into the window from the plan's start; null where that is not known. */
const raisesOf = ({ item, roll, say }: RollSheetAsked): number | null =>
  roll ? raisesByTable({ item, roll, say }) : null;

/** What is to be looked for when the table is gone by, so that nobody takes its care for a fault of the machine. */
function careful(raises: number | null): string {
  const reaches = raises ? ORDINALS[raises] : undefined;
  if (raises === null || reaches === undefined) return "";
  if (raises === 1) return ` By the model, from the plan's start, the ${reaches} raise reaches the window.`;
  const before = `${listed(ORDINALS.slice(1, raises))} ${raises > 2 ? "raises still fall" : "raise still falls"} short`;
  return ` It is careful: by the model, from the plan's start, the ${before} of the window, the ${reaches} reaches it.`;
}

/** What a depth of the table is measured by. */
function depthTold([first]: readonly ZoneByHand[], say: Say): string {
  if (first?.chordMm == null) return "";
  return ` (or the depth: what it stands off the middle of a ${say.length(first.chordMm)} straightedge inside, square to the element)`;
}

function byTable(
  { say, tried }: RollSheetAsked,
  table: readonly ZoneByHand[],
  raises: number | null,
): string {
  const alike = table.some(({ zones }) => zones.length > 1)
    ? " Zones in one line are set alike: the one bent most decides."
    : "";
  return ` Without a screen raise by the table, ${tried ? "after this rolling, " : ""}from what was set last, for the radius${depthTold(table, say)} ${table.length > 1 ? "in the middle of the zone" : "past the straight lead"} at the large end.${careful(raises)} Still open after a ${lastSaid(raises)} raise, or at the most that it allows: ${ASK}.${alike}`;
}

/** Where the settings after the first one are written down, and what they left: at both bearings, where the scales are. */
function raiseBoxes(
  { item, roll }: RollSheetAsked,
  { name, after, raises }: { readonly name: string; readonly after: string; readonly raises: number | null },
): NoteBox[] {
  const one = (label: string): NoteBox => ({ label, unit: "mm" });
  const pipe = isPipe(item);
  return ORDINALS.slice(1, lastRaise(raises)).flatMap((which) =>
    roll?.bearings === undefined || pipe
      ? [one(`${name}${which} raise${pipe ? "" : ", large edge"}`), one(after)]
      : [
          ...ROLL_ENDS.map(({ name: end }, i) => one(i === 0 ? `${name}${which}: scale, ${end}` : end)),
          one("raise, large edge"),
          one(after),
        ],
  );
}

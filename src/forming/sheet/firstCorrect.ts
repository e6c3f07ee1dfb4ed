import { edgeOfBearings } from "../rollPlaces.ts";
import { byHand } from "../byHand.ts";
import { DERIVED } from "../judge.ts";
import { seamOrder } from "../seamOrder.ts";
import type { Say } from "../say.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import { startAllRound } from "./startAllRound.ts";
import type { NoteBox, PlanStep } from "./step.ts";
import { type ZoneByHand, zoneByHand } from "../zoneByHand.ts";
import { listedZones } from "../zoneWords.ts";
import { zoneModels } from "../zoneModel.ts";

/** Whoever has only the paper knows neither what it is nor where. */
const CORRECTION = "the trial correction (on the web page with this sheet's title: have it opened)";
const ASK = "stop and ask the foreman";
/** In few words what the trial correction says of such a blank. */
const PAST_CAP =
  "stop: do not roll on. Lower the bending roll, take the blank out, mark it and set it aside: the foreman decides.";
const NO_WAY_BACK = "A blank closed too far is not opened again by rolling on.";

/** How a blank gets a further raise. */
const onceMore = (asked: RollSheetAsked): string =>
  `Lower the bending roll, bring the piece back to ${seamOrder(asked).first} and pinch it again; set the answer with the plate moving, roll once more and measure.`;

/** What is done after the first pass is measured: wider than the window, narrower, and past the cap. */
export function firstCorrect(asked: RollSheetAsked): PlanStep | null {
  const { item, settings, roll, say } = asked;
  if (!settings) return null;
  if (!item.cone) return zoneCorrect(asked);
  const table = roll ? byHand({ item, roll, say }) : [];
  return {
    id: "first-correct",
    phase: "first pass",
    title: "Correct the setting",
    text: `Gap wider than the window: give it and the ${isPipe(item) ? "raise" : "setting at the large edge"} to ${CORRECTION}. ${onceMore(asked)}${table.length > 0 ? " Without a screen raise by the table for the gap that came out, from what was set last: the careful way." : ""} Still wider after a third raise: ${ASK}. Narrower: no further raise in this pass, unload it; less for the next blank. Below the “never below”: ${PAST_CAP}${isPipe(item) ? "" : " The large end decides: a small end still open is brought in in the closing."}${atBearings(asked)}`,
    figures: [],
    cautions: [NO_WAY_BACK],
    toNote: [
      { label: "2nd raise in all, large edge", unit: "mm" },
      { label: "gap after it", unit: "mm" },
      { label: "3rd raise in all, large edge", unit: "mm" },
      { label: "gap after it", unit: "mm" },
    ],
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
  const several = answer.models.length > 1;
  const each = several ? "Zone by zone. " : "";
  const both = isPipe(item) ? "" : " at both ends";
  return {
    ...step,
    text: `${each}Curve more open than the window: give the inside radius that came out${both}, and the setting at the large edge, to ${CORRECTION}. ${onceMore(asked)}${byTable(asked, table)} ${several ? "Right or tighter: its last setting again in this pass; tighter: less for the next blank." : "Tighter: no further raise in this pass, less for the next blank."} Tighter than the “never tighter”: ${PAST_CAP}${atBearings(asked)}`,
    cautions: [],
    toNote: trialBoxes(table),
    byHandZones: table,
  };
}

/** So many settings leave room for lines for a third one. */
const FEW_SETTINGS = 1;

/** What a depth of the table is measured by. */
function depthTold([first]: readonly ZoneByHand[], say: Say): string {
  if (first?.chordMm == null) return "";
  return ` (or the depth: what it stands off the middle of a ${say.length(first.chordMm)} straightedge inside, square to the element)`;
}

function byTable({ say, tried }: RollSheetAsked, table: readonly ZoneByHand[]): string {
  const alike = table.some(({ zones }) => zones.length > 1)
    ? " Zones in one line are set alike: the one bent most decides."
    : "";
  return ` Without a screen raise by the table, ${tried ? "after this rolling, " : ""}from what was set last, for the radius${depthTold(table, say)} ${table.length > 1 ? "in the middle of the zone" : "past the straight lead"} at the large end. Still open after a third raise, or at the most that it allows: ${ASK}.${alike}`;
}

/** Where the settings after the first one are written down, and what they left. */
const trialBoxes = (table: readonly ZoneByHand[]): NoteBox[] =>
  table.flatMap((one) => {
    // That a raise is told at the large edge is in the words; zones are named instead.
    const several = table.length > 1;
    return (table.length > FEW_SETTINGS ? ["2nd"] : ["2nd", "3rd"]).flatMap((which) => [
      {
        label: several ? `${listedZones(one.zones)}: ${which} raise` : `${which} raise, large edge`,
        unit: "mm",
      },
      { label: "R after it, large end", unit: "mm" },
    ]);
  });

import { AS_DRAWN, COMMON_PRACTICE } from "../judge.ts";
import { seamOrder } from "../seamOrder.ts";
import { isPipe } from "../skin.ts";
import { isTurnedRound } from "../stopRoom.ts";
import type { RollSheetAsked } from "./asked.ts";
import { LAPPED } from "./closed.ts";
import { drawnOutline } from "./drawnOutline.ts";
import { type PlanStep, taped } from "./step.ts";
import { feelerWords } from "./touch.ts";

const HOT =
  "Hot work: fire watch, ventilation by local rules; inside a closed piece the shop's rules for confined spaces hold.";

/** Tacking, and bringing a rolled piece round. */
export function finishRolled(asked: RollSheetAsked): PlanStep[] {
  const { item, say, settings } = asked;
  const { seamGapMm: weld = 0, seamLapMm: lap = 0 } = item;
  const gap = weld > 0 ? ` to a gap of ${feelerWords(weld, say)} for the weld (by feeler)` : "";
  const edges =
    lap > 0
      ? `Draw the seam edges over each other by ${say.tape(lap)} and clamp them tight on each other: ${LAPPED}, unless the drawing says otherwise`
      : `Clamp the seam edges together${item.pieces > 1 ? " (edge 1 to edge 2)" : ""}${gap}`;
  const outline = drawnOutline(asked);
  const tack: PlanStep = {
    id: "tack",
    phase: "tack and re-round",
    title: "Tack",
    text: `${edges}${item.pieces === 1 ? "" : `, piece by piece on a level floor${outline === "" ? "" : ` round a drawn circle, ${outline}`}`}, both ends level. Sound tacks, from the middle outwards.`,
    figures: lap > 0 ? [taped("lap", lap, AS_DRAWN)] : [],
    cautions: [HOT, "A sprung seam opens with force when a clamp slips: stand aside."],
    toNote: [],
    basis: COMMON_PRACTICE,
  };
  if (item.pieces > 1) return [tack];
  return [
    tack,
    {
      id: "re-round",
      phase: "tack and re-round",
      title: "Re-round",
      text: `${besideSeam(asked)}${lap > 0 ? "" : "Grind the tacks flush. "}Put it back over the open end${isPipe(item) ? "" : ", small edge on the stop"}; close and lock the yoke. ${isTurnedRound(asked.roll?.arrangement) ? "Pinch lightly; with the piece turning raise to what closed it" : "With the piece turning bring the rolls by small steps to what closed it"}${(settings?.zones.length ?? 0) > 1 ? ", each zone to its own," : ","} no tighter: ${lap > 0 ? "to and fro between both sides of the lap, which never goes between the rolls, eased before each reversing" : "several turns"}, until the template fits. Take it off; weld by the shop's procedure.`,
      figures: [],
      cautions: ["Stop if a tack cracks: a piece that opens on the rolls swings out."],
      toNote: [{ label: "turns, and raise", unit: "-" }],
      basis: COMMON_PRACTICE,
    },
  ];
}

/** Why the part is brought round at all; where the closing has told how far an edge stands off, it has said so. */
function besideSeam(asked: RollSheetAsked): string {
  const zones = asked.settings?.zones.length ?? 0;
  if (zones === 1) return "";
  return `Beside the seam ${isPipe(asked.item) ? "the piece" : "the small end"} is usually flat${zones > 1 ? `, at ${seamOrder(asked).second} still open` : ""}. `;
}

/** Pointing at the inspection sheet, where every size to be found stands. */
export const INSPECT: PlanStep = {
  id: "inspect",
  phase: "inspection",
  title: "Inspect",
  text: "On a level floor, larger end down, go down the inspection sheet.",
  figures: [],
  cautions: ["Secure it against rolling and tipping first."],
  toNote: [{ label: "passed by, date", unit: "-" }],
  basis: COMMON_PRACTICE,
};

import { COMMON_PRACTICE } from "../judge.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import type { PlanStep } from "./step.ts";
import { feelerWords } from "./touch.ts";

const HOT =
  "Hot work: fire watch and ventilation by local rules; inside a closed piece the shop's rules for confined spaces hold.";

/** Tacking, and bringing a rolled piece round. */
export function finishRolled({ item, say, settings }: RollSheetAsked): PlanStep[] {
  const weld = item.seamGapMm ?? 0;
  const gap = weld > 0 ? ` to a gap of ${feelerWords(weld, say)} for the weld (by feeler blade)` : "";
  const tack: PlanStep = {
    id: "tack",
    phase: "tack and re-round",
    title: "Tack",
    text: `Clamp the seam edges together${gap}${item.pieces === 1 ? "" : ", piece by piece on a level floor round a drawn circle"}, both ends level. Set sound tacks from the middle outwards.`,
    figures: [],
    cautions: [HOT, "A sprung seam opens with force when a clamp slips: stand aside of it."],
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
      text: `Beside the seam ${isPipe(item) ? "the piece" : "the small end"} is usually flat. Grind the bead of the tacks flush. Put the piece back over the open end${isPipe(item) ? "" : ", its small edge on the stop as that stands"}; close and lock the yoke. Pinch lightly, and with the piece turning raise to what closed it${(settings?.zones.length ?? 0) > 1 ? ", each zone to its own," : ""} and no tighter: several turns, until the template fits. Take it off as in the closing, and weld by the shop's own procedure.`,
      figures: [],
      cautions: ["Stop if a tack cracks: a piece that opens on the rolls swings out."],
      toNote: [{ label: "turns, and raise", unit: "-" }],
      basis: COMMON_PRACTICE,
    },
  ];
}

/** Pointing at the inspection sheet, where every size to be found stands. */
export const INSPECT: PlanStep = {
  id: "inspect",
  phase: "inspection",
  title: "Inspect",
  text: "Stand the piece on a level floor, larger end down. Go down the inspection sheet.",
  figures: [],
  cautions: ["Secure it against rolling and tipping before anybody measures."],
  toNote: [{ label: "passed by, date", unit: "-" }],
  basis: COMMON_PRACTICE,
};

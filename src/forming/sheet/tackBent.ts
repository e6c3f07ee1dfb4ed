import { brakeEnds } from "../brakeEnds.ts";
import type { PartAsked } from "../asked.ts";
import type { BrakePlan } from "../brakePlan.ts";
import { linesWords } from "../brakeThroat.ts";
import { AS_DRAWN, COMMON_PRACTICE } from "../judge.ts";
import { underLap } from "../lapOver.ts";
import { drawnOutline } from "./drawnOutline.ts";
import { craneOf, type LiftAsked } from "./lifting.ts";
import { type PlanStep, taped } from "./step.ts";
import { feelerWords } from "./touch.ts";

/** A flat lap that lies over a bend: what is done about it. */
function lapWords({ item, say }: PartAsked, plan: BrakePlan): string {
  const under = underLap(plan, item);
  if (under.length === 0) return "";
  const { from, towards } = brakeEnds(item);
  const ends = new Set(under.map(({ end }) => end));
  // Lines of a cone run beside its seam, and lie under the lap from end to end.
  const where =
    item.tightestRadiusMm !== null || ends.size > 1 ? "" : ` next to the ${ends.has("b") ? from : towards}`;
  const most = Math.max(...under.map(({ lengthMm }) => lengthMm));
  return ` The lap lies over ${linesWords(under, item.pieces)}${where}, for about ${say.tape(most)}: dress it down to that bend over a bar.`;
}

/** Seam edges brought together on a drawn outline, and tacked. */
export function tackBent(asked: LiftAsked, plan: BrakePlan): PlanStep {
  const { item, say } = asked;
  const { seamGapMm: gapMm = 0, seamLapMm: lapMm = 0, pieces } = item;
  const edges =
    lapMm > 0
      ? `the seam edges over each other by ${say.tape(lapMm)}: seam edge 1 inside, on the lap line, unless the drawing says otherwise`
      : gapMm > 0
        ? `seam edges together to ${feelerWords(gapMm, say)}, by feeler`
        : "seam edges together";
  const outline = drawnOutline(asked);
  const left = gapMm > 0 ? " The gap is for the weld: leave it the same from end to end." : "";
  return {
    id: "tack",
    phase: "tack and re-round",
    title: "Tack",
    text: `Stand the ${pieces === 1 ? "piece" : "pieces"} on a drawn outline of the larger end${outline === "" ? "" : ` (${outline})`}. Bring ${lapMm > 0 ? "" : "the "}${edges}.${lapWords(asked, plan)} Set sound tacks from the middle outwards.${left}`,
    figures: gapMm > 0 ? [taped("gap between the seam edges", gapMm, AS_DRAWN)] : [],
    cautions: [
      "Hot work: fire watch and ventilation by local rules.",
      ...(pieces === 1 ? craneOf(asked) : []),
    ],
    toNote: gapMm > 0 ? [{ label: "seam gap, measured", unit: "mm", planned: gapMm }] : [],
    basis: COMMON_PRACTICE,
  };
}

import { DERIVED } from "../judge.ts";
import { isPipe } from "../skin.ts";
import { partToParallelMm } from "../turnOnStop.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type PlanStep, taped } from "./step.ts";

/** Undefined where nothing is known of it, null where the stop cannot turn the blank until the elements are parallel. [mm] */
const chalkTo = ({ item, settings }: RollSheetAsked): number | null | undefined =>
  settings ? partToParallelMm(item, settings.flat.acrossMm) : undefined;

/** By what the blank is laid straight: a seam edge in the groove, unless the small edge then does not reach the stop. */
export const laidBy = (asked: RollSheetAsked): string =>
  chalkTo(asked) === null
    ? "Square in that roll's groove its small edge would not lie on the stop: lay it so that the element line at the pinch is parallel to the rolls."
    : "Lay it square in that roll's groove; where it has none, square to the rolls by the manual.";

const STOP = "else stop, lower the roll, open the pinch,";

/**
 * Square in the groove only the seam edge is parallel to the rolls; the stop has to turn the blank before the elements at
 * the pinch are.
 */
export function keptParallel(asked: RollSheetAsked): Pick<PlanStep, "text" | "figures"> {
  if (isPipe(asked.item))
    return { text: `Keep the element lines parallel to the rolls; ${STOP} square the plate.`, figures: [] };
  const stop = "Keep the small edge on the stop";
  const mm = chalkTo(asked);
  if (typeof mm === "number")
    return {
      text: `${stop}: after some ${asked.say.tape(mm)} of chalk it has turned the element line at the pinch parallel to the rolls; ${STOP} turn the blank.`,
      figures: [taped("chalk gone when the elements lie parallel, about", mm, DERIVED)],
    };
  const soon = mm === null ? "" : ", once it bears,";
  return {
    text: `${stop} and${soon} the element lines parallel to the rolls; ${STOP} turn the blank.`,
    figures: [],
  };
}

import { DERIVED } from "../judge.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import { mm, type PlanStep, taped } from "./step.ts";

/** Is it laid by the element at the pinch, its seam edge askew? */
export const isAskew = ({ settings }: Pick<RollSheetAsked, "settings">): boolean =>
  settings?.lying?.by === "element";

/** How the blank is laid straight: by a seam edge in the groove, or by the element at the pinch. */
export function laidBy({ settings, say }: RollSheetAsked): Pick<PlanStep, "text" | "figures"> {
  const lying = settings?.lying ?? null;
  const square = "Lay it square by that roll's groove; without one, by the manual.";
  if (!lying) return { text: square, figures: [] };
  // It is looked at beside a tape, to a tenth.
  const cornerMm = say.units === "mm" ? Math.round(lying.cornerInMm * 10) / 10 : lying.cornerInMm;
  const inMm = say.tape(cornerMm);
  const figures = [taped("corner at the small end further in than the stop", cornerMm, DERIVED)];
  return lying.by === "groove"
    ? {
        text: `${square} The small edge bears at the pinch, its corner ahead ${inMm} further in.`,
        figures,
      }
    : {
        text: `Lay the element line at the pinch parallel to the rolls: the seam edge lies askew, its small end ${inMm} further in than the stop.`,
        figures,
      };
}

/** No nearer than this does anybody see whether a corner is before the pinch or behind it. [mm] */
const LEVEL_MM = 1;

const STOP = "else stop, lower the roll, open the pinch,";

/**
 * Square in the groove only the seam edge is parallel to the rolls; the stop has to turn the blank before the elements at
 * the pinch are.
 */
export function keptParallel({ item, settings, say }: RollSheetAsked): Pick<PlanStep, "text" | "figures"> {
  if (isPipe(item))
    return { text: `Keep the element lines parallel to the rolls; ${STOP} square the plate.`, figures: [] };
  const stop = "Keep the small edge on the stop";
  const after = settings?.lying?.parallelAfterMm ?? 0;
  if (after > 0)
    return {
      text: `${stop}: after some ${say.tape(after)} of chalk it has turned the element line at the pinch parallel to the rolls; ${STOP} turn the blank.`,
      figures: [taped("chalk gone when the elements lie parallel, about", after, DERIVED)],
    };
  const soon = settings?.lying ? "" : ", once it bears,";
  return {
    text: `${stop} and${soon} the element lines parallel to the rolls; ${STOP} turn the blank.`,
    figures: [],
  };
}

/** Where the flat blank comes further past the stop than the piece ever does. */
export function flatFurther(
  { settings, say }: RollSheetAsked,
  { openMm, roomMm = Infinity }: { openMm: number; roomMm?: number | undefined },
): Pick<PlanStep, "text" | "figures"> {
  const lying = settings?.lying;
  if (!lying || lying.pastMm <= openMm) return { text: "", figures: [] };
  const { pastMm, beforeMm } = lying;
  const where =
    Math.abs(beforeMm) < LEVEL_MM
      ? "level with the pinch"
      : beforeMm < 0
        ? `${say.length(-beforeMm)} behind the pinch`
        : `${say.length(beforeMm)} before the rolls`;
  return {
    text: ` Flat, it reaches ${say.length(pastMm)} past it, ${where}${pastMm > roomMm ? ": the yoke must let it by" : ""}.`,
    figures: [
      mm("reach of the flat blank past the stop, at most", pastMm, DERIVED),
      mm("that place before the pinch", beforeMm, DERIVED),
    ],
  };
}

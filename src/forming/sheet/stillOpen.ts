import { endRolled } from "../closure.ts";
import { DERIVED } from "../judge.ts";
import { seamOrder } from "../seamOrder.ts";
import { isPipe } from "../skin.ts";
import { trialModel } from "../trialModel.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type Figure, mm } from "./step.ts";

/** The last of the closing, over which the raise is taken to run straight with the gap. [-] */
const LAST_CLOSED = 0.95;
/** One unit of gap on a tape that a raise is told for: 10 mm, or an inch. [mm] */
const TAPE = { mm: 10, in: 25.4 } as const;

/** How much more to raise for the gap that the second pass has left, and what to do where the edges have passed each other. */
export function stillOpen(asked: RollSheetAsked): {
  readonly text: string;
  readonly brief: string;
  readonly figures: readonly Figure[];
} {
  const { item, roll, say } = asked;
  const { second } = seamOrder(asked);
  const tilt = isPipe(item)
    ? ""
    : " One end closed before the other: a little more tilt towards the open one.";
  const past =
    item.pieces === 1
      ? " Edges past each other: lower the bending roll and take the piece off; they are sprung apart by a spreader, never by rolling on."
      : "";
  const rest = `${tilt}${past}`;
  const fewer =
    past === ""
      ? tilt
      : `${tilt} Edges past each other: bending roll down and off; a spreader springs them apart, never rolling on.`;
  const answer = roll && item.pieces === 1 ? trialModel({ item, roll, say }) : null;
  if (answer?.kind !== "model")
    return {
      text: ` Not there yet: both ends a little more alike, back to ${second} and through again.${rest}`,
      brief: ` Else both ends a little more, from ${second} again.${fewer}`,
      figures: [],
    };
  const { cone, read } = answer.model;
  const modelMm = (closed: number) => read({ settingMm: 0, closed }).modelMm;
  const gap = (closed: number) => endRolled(item, cone, { radiusMm: cone.largeRadiusMm, closed }).insideGapMm;
  const tapeMm = TAPE[item.units ?? "mm"];
  const moreMm = (tapeMm * (modelMm(1) - modelMm(LAST_CLOSED))) / (gap(LAST_CLOSED) - gap(1));
  const by = `${say.length(moreMm)} for every ${say.length(tapeMm)} of gap too much at the large end`;
  return {
    text: ` Not there yet: both ends more alike, by the model about ${by}, half of it first; back to ${second} and through again.${rest}`,
    brief: ` Else both ends more, about ${by}, half of it first; from ${second} again.${fewer}`,
    figures: [mm(`raise for every ${say.length(tapeMm)} of gap too much at the large end`, moreMm, DERIVED)],
  };
}

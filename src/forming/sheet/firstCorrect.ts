import { byHand } from "../byHand.ts";
import { DERIVED } from "../judge.ts";
import { PAST_CAP } from "../trialAdvice.ts";
import type { RollSheetAsked } from "./asked.ts";
import type { PlanStep } from "./step.ts";

/** What is done after the first pass is measured: wider than the window, narrower, and past the cap. */
export function firstCorrect(asked: RollSheetAsked): PlanStep | null {
  const { item, settings, roll, say } = asked;
  if (!settings || !item.cone) return null;
  const table = roll ? byHand({ item, roll, say }) : [];
  return {
    id: "first-correct",
    phase: "first pass",
    title: "Correct the setting",
    text: `Is the gap wider than the window: give the setting at the large edge and the gap to the trial correction, lower the bending roll, bring the piece back to seam edge 1, set what it answers with the plate moving, and roll this blank once more. Is it narrower: no further raise on this blank in this pass, and less for the next one. Is it below the “never below”: ${PAST_CAP.charAt(0).toLowerCase()}${PAST_CAP.slice(1)}${table.length > 0 ? " Without a screen the table says how much more to raise for the gap that came out." : ""}`,
    brief:
      "Wider: trial correction or table, back to seam edge 1, lower first. Narrower: no more raise, next blank less. Under “never below”: set aside.",
    figures: [],
    cautions: ["A blank closed too far cannot be opened again by rolling on."],
    toNote: [
      { label: "second setting, large edge", unit: "mm" },
      { label: "gap after it", unit: "mm" },
      { label: "third setting, large edge", unit: "mm" },
      { label: "gap after it", unit: "mm" },
    ],
    ...(table.length > 0 && { byHand: table }),
    basis: DERIVED,
  };
}

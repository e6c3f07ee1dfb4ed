import type { RollSheetAsked } from "./asked.ts";
import { finishRolled, INSPECT } from "./finish.ts";
import { withLifting } from "./lifting.ts";
import { otherRollSteps } from "./otherRolls.ts";
import { firstPassSteps, secondPassSteps } from "./rollPasses.ts";
import { rollSetUp } from "./rollSetUp.ts";
import { type NumberedStep, numbered, type PlanStep } from "./step.ts";
import { templateFigures } from "./touch.ts";

const wanted = (asked: RollSheetAsked) => templateFigures(asked.item, 1);

/** The other arrangements find no nought and change no ends: their set-up is the dressing, the stop and the loading. */
const OWN_WAY = new Set(["zero", "pinch"]);

/** The numbered work sheet of one part on a plate roll, or on such a roll in general. */
export function rollSheet(asked: RollSheetAsked): NumberedStep[] {
  const arrangement = asked.roll?.arrangement ?? "initial-pinch";
  const setUp = rollSetUp(asked);
  const finish = [...finishRolled(asked), INSPECT];
  if (arrangement === "initial-pinch")
    return withLifting(
      asked,
      numbered([...setUp, ...firstPassSteps(asked), ...secondPassSteps(asked), ...finish]),
    );
  const short: PlanStep[] = otherRollSteps(asked, arrangement).map((step) => ({
    ...step,
    figures: wanted(asked),
  }));
  return withLifting(
    asked,
    numbered([...setUp.filter((step) => !OWN_WAY.has(step?.id ?? "")), ...short, ...finish]),
  );
}

/** What the blanks of a lot are of the parts that they become, and what is written on each. */
function namedBlanks({ pieces, quantity }: RollSheetAsked["item"], blanks: number): string {
  if (pieces === 1) return `${blanks} blanks, one a part: mark them 1 to ${blanks}.`;
  const share = pieces === 2 ? "its halves" : `its ${pieces} pieces`;
  return quantity === 1
    ? `${blanks} blanks for one part, ${share}: mark them piece 1 to piece ${pieces}.`
    : `${blanks} blanks, ${pieces} for each of ${quantity} parts, ${share}: mark them part and piece, 1.1 to ${quantity}.${pieces}.`;
}

/** How a lot goes through: in which order its blanks are rolled. Nothing for a single blank. */
export function rollBatch({ item }: Pick<RollSheetAsked, "item">): string[] {
  const blanks = item.pieces * item.quantity;
  if (blanks === 1) return [];
  return [
    namedBlanks(item, blanks),
    "The first alone through its first pass: correct the setting on it and write it down.",
    `Then all others, ${item.cone ? "the gap" : "the fit of the templates"} of each on its line of the lot's sheet (plate of one delivery may differ).`,
    "Only then move the stop for the second passes.",
    item.pieces > 1
      ? "Try the templates on the first finished piece before the last is rolled."
      : "Inspect the first finished one before the last is closed.",
  ];
}
